package org.ohmloom.workbench.findings;

import java.awt.Component;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.ohmloom.edit.RemoveElements;
import org.ohmloom.model.Waiver;
import org.ohmloom.review.Finding;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.ReadyCommand;
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
        Supplier<Optional<Finding>> chosen = () -> desk.selection().finding();
        Supplier<Optional<Waiver>> accepted = () -> chosen.get().flatMap(Finding::waiver);
        return List.of(
                doing("preview-fix", () -> FixPane.fixOf(desk).isPresent(), () -> FixPane.fixOf(desk)
                        .ifPresent(fix -> FixPane.show(parent, desk, fix, calculation))),
                doing("fix-kind", () -> Fixes.anyOfAKind(desk), () -> Fixes.ofAKind(desk)
                        .ifPresent(fix -> FixPane.show(parent, desk, fix, calculation))),
                doing(
                        "accept-finding",
                        () -> chosen.get().filter(Finding::isOpen).isPresent(),
                        () -> AcceptPane.show(parent, desk, clock)),
                doing("reopen-finding", () -> accepted.get().isPresent(), () -> accepted.get()
                        .ifPresent(waiver -> reopen(desk, waiver))));
    }

    private static Command doing(String id, BooleanSupplier ready, Runnable task) {
        Words words = Words.of("findings");
        return new ReadyCommand(words, id, ready, words.get("not-ready"), task);
    }

    private static void reopen(Desk desk, Waiver waiver) {
        Text what = Words.of("findings").text("reopen-label", waiver.rule(), String.join(", ", waiver.subjects()));
        desk.apply(new RemoveElements(what, List.of(waiver.id())));
    }
}
