package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** Selects the next or the previous finding. */
final class StepFinding extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final FindingsPane findings;
    private final int by;

    private StepFinding(Desk desk, FindingsPane findings, int by) {
        super(
                by > 0 ? "next-finding" : "previous-finding",
                by > 0 ? "Next finding" : "Previous finding",
                "Select the " + (by > 0 ? "next" : "previous") + " finding and show what it is about");
        this.desk = desk;
        this.findings = findings;
        this.by = by;
    }

    static Command next(Desk desk, FindingsPane findings) {
        return new StepFinding(desk, findings, 1)
                .withKeys(Keys.plain(KeyEvent.VK_F8))
                .withMnemonic('N')
                .withIcon("next");
    }

    static Command previous(Desk desk, FindingsPane findings) {
        return new StepFinding(desk, findings, -1)
                .withKeys(Keys.shift(KeyEvent.VK_F8))
                .withMnemonic('P')
                .withIcon("previous");
    }

    @Override
    void run() {
        findings.step(by);
    }

    @Override
    void refresh() {
        setReady(!desk.findings().isEmpty(), "there are no findings");
    }
}
