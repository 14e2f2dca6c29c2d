package org.ohmloom.workbench.findings;

import java.awt.event.KeyEvent;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Selects the next or the previous finding. */
public final class StepFinding extends Command {
    private static final Words WORDS = Words.of("findings");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final FindingsPane findings;
    private final int by;

    private StepFinding(Desk desk, FindingsPane findings, int by) {
        super(
                by > 0 ? "next-finding" : "previous-finding",
                by > 0 ? WORDS.get("step-finding.next-finding") : WORDS.get("step-finding.previous-finding"),
                WORDS.get(
                        "step-finding.select-the-finding-and",
                        by > 0 ? WORDS.get("step-finding.next") : WORDS.get("step-finding.previous")));
        this.desk = desk;
        this.findings = findings;
        this.by = by;
    }

    public static Command next(Desk desk, FindingsPane findings) {
        return new StepFinding(desk, findings, 1)
                .withKeys(Keys.plain(KeyEvent.VK_F8))
                .withMnemonic('N')
                .withIcon("next");
    }

    public static Command previous(Desk desk, FindingsPane findings) {
        return new StepFinding(desk, findings, -1)
                .withKeys(Keys.shift(KeyEvent.VK_F8))
                .withMnemonic('P')
                .withIcon("previous");
    }

    @Override
    public void run() {
        findings.step(by);
    }

    @Override
    public void refresh() {
        setReady(!desk.findings().isEmpty(), WORDS.get("step-finding.there-are-no-findings"));
    }
}
