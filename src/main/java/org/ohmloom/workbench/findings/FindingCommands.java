package org.ohmloom.workbench.findings;

import java.awt.Component;
import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;
import org.ohmloom.edit.RemoveElements;
import org.ohmloom.model.Waiver;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Calculation;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.words.Words;

/** What can be done about findings besides fixing one: looking first, fixing all of a kind, accepting with a reason. */
public final class FindingCommands {

    private FindingCommands() {}

    /**
     * The commands.
     *
     * @param parent      what their dialogs belong to
     * @param calculation works out copies
     * @param clock       tells the date of what is accepted
     */
    public static List<Command> of(Desk desk, Component parent, Calculation calculation, Clock clock) {
        Supplier<Boolean> chosen = () -> desk.selection().finding().isPresent();
        return List.of(
                new Doing("preview-fix", () -> FixPane.fixOf(desk).isPresent(), () -> FixPane.fixOf(desk)
                        .ifPresent(fix -> FixPane.show(parent, desk, fix, calculation))),
                new Doing("fix-kind", () -> Fixes.ofAKind(desk).isPresent(), () -> Fixes.ofAKind(desk)
                        .ifPresent(fix -> FixPane.show(parent, desk, fix, calculation))),
                new Doing(
                        "accept-finding",
                        () -> chosen.get()
                                && desk.selection()
                                        .finding()
                                        .filter(Finding::isOpen)
                                        .isPresent(),
                        () -> AcceptPane.show(parent, desk, clock)),
                new Doing(
                        "reopen-finding",
                        () -> desk.selection()
                                .finding()
                                .flatMap(Finding::waiver)
                                .isPresent(),
                        () -> desk.selection()
                                .finding()
                                .flatMap(Finding::waiver)
                                .ifPresent(waiver -> reopen(desk, waiver))));
    }

    private static void reopen(Desk desk, Waiver waiver) {
        String what = Words.of("findings").get("reopen-label", waiver.rule(), String.join(", ", waiver.subjects()));
        desk.apply(new RemoveElements(what, List.of(waiver.id())));
    }

    /** A command with its words in the bundle of findings. */
    private static final class Doing extends Command {

        private static final long serialVersionUID = 1L;
        private static final Words WORDS = Words.of("findings");

        private final transient Supplier<Boolean> ready;
        private final transient Runnable task;

        Doing(String id, Supplier<Boolean> ready, Runnable task) {
            super(id, WORDS.get("command." + id), WORDS.get("command." + id + ".about"));
            this.ready = ready;
            this.task = task;
            withMnemonic(WORDS.letter("command." + id));
            refresh();
        }

        @Override
        public void run() {
            task.run();
        }

        @Override
        public void refresh() {
            setReady(ready.get(), WORDS.get("not-ready"));
        }
    }
}
