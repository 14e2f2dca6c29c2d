package org.ohmloom.workbench.command;

import java.util.function.BooleanSupplier;
import org.ohmloom.workbench.words.Words;

/** A command that does one thing handed in, whenever what it needs is there; its words stand in a bundle. */
public final class ReadyCommand extends Command {

    private static final long serialVersionUID = 1L;

    private final transient BooleanSupplier ready;
    private final transient String whyNot;
    private final transient Runnable task;

    /**
     * A command.
     *
     * @param words  the bundle in which its name, {@code .about} and {@code .letter} stand under {@code command.} and its id
     * @param ready  whether what it needs is there; asked after every change at the desk
     * @param whyNot what is missing when it is not
     */
    public ReadyCommand(Words words, String id, BooleanSupplier ready, String whyNot, Runnable task) {
        super(id, words.get("command." + id), words.get("command." + id + ".about"));
        this.ready = ready;
        this.whyNot = whyNot;
        this.task = task;
        withMnemonic(words.letter("command." + id));
        refresh();
    }

    @Override
    public void run() {
        task.run();
    }

    @Override
    public void refresh() {
        setReady(ready.getAsBoolean(), whyNot);
    }
}
