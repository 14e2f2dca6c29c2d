package org.ohmloom.workbench;

/** Opens one of the examples. */
final class OpenExample extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Filing filing;
    private final String example;

    OpenExample(Filing filing, Examples.Example example) {
        super("open-example-" + example.name(), example.title(), "Open this example: " + example.about());
        this.filing = filing;
        this.example = example.name();
    }

    @Override
    void run() {
        filing.openExample(example);
    }
}
