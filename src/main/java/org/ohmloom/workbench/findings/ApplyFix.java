package org.ohmloom.workbench.findings;

import java.awt.event.KeyEvent;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Applies the fix of the selected finding as one step that can be undone. */
public final class ApplyFix extends Command {
    private static final Words WORDS = Words.of("findings");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    public ApplyFix(Desk desk) {
        super("apply-fix", WORDS.get("apply-fix.fix"), WORDS.get("apply-fix.fix.about"));
        this.desk = desk;
        withKeys(Keys.menu(KeyEvent.VK_PERIOD)).withMnemonic('X').withIcon("fix");
        refresh();
    }

    @Override
    public void run() {
        fix().ifPresent(desk::apply);
    }

    @Override
    public void refresh() {
        Optional<Finding> finding = desk.selection().finding();
        String whyNot = finding.isEmpty()
                ? WORDS.get("apply-fix.select-a-finding-first")
                : desk.isCurrent()
                        ? WORDS.get("apply-fix.there-is-no-obvious")
                        : WORDS.get("apply-fix.wait-for-the-calculation");
        setReady(fix().isPresent(), whyNot);
        if (fix().isPresent()) {
            putValue(SHORT_DESCRIPTION, desk.units().text(Words.said(fix().get().label())));
        }
    }

    private Optional<Edit> fix() {
        return desk.isCurrent() ? desk.selection().finding().flatMap(Finding::fix) : Optional.empty();
    }
}
