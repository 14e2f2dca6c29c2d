package org.ohmloom.workbench.bench;

import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.words.Words;

/** Opens one of the examples. */
public final class OpenExample extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Filing filing;
    private final String example;

    public OpenExample(Filing filing, Examples.Example example) {
        super(
                "open-example-" + example.name(),
                example.title(),
                WORDS.get("open-example.open-this-example", example.about()));
        this.filing = filing;
        this.example = example.name();
    }

    @Override
    public String listed() {
        return WORDS.get("open-example.listed", name());
    }

    @Override
    public void run() {
        filing.openExample(example);
    }
}
