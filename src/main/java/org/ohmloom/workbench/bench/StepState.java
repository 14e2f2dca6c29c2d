package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Shows the next or the previous operating state; before the first stands the worst of all. */
public final class StepState extends Command {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final int by;

    private StepState(Desk desk, int by) {
        super(
                by > 0 ? "next-state" : "previous-state",
                by > 0
                        ? WORDS.get("step-state.next-operating-state")
                        : WORDS.get("step-state.previous-operating-state"),
                WORDS.get(
                        "step-state.show-the-numbers-of",
                        by > 0 ? WORDS.get("step-state.next") : WORDS.get("step-state.previous")));
        this.desk = desk;
        this.by = by;
    }

    public static Command next(Desk desk) {
        return new StepState(desk, 1).withKeys(Keys.alt(KeyEvent.VK_PAGE_DOWN)).withMnemonic('E');
    }

    public static Command previous(Desk desk) {
        return new StepState(desk, -1).withKeys(Keys.alt(KeyEvent.VK_PAGE_UP)).withMnemonic('V');
    }

    @Override
    public void run() {
        List<Optional<StateId>> all = new ArrayList<>(List.of(Optional.empty()));
        desk.harness().ifPresent(harness -> harness.states().ids().forEach(id -> all.add(Optional.of(id))));
        int at = all.indexOf(desk.view().state());
        desk.choose(all.get(Math.floorMod(at + by, all.size())));
    }

    @Override
    public void refresh() {
        setReady(
                desk.harness().filter(harness -> !harness.states().isEmpty()).isPresent(),
                WORDS.get("step-state.there-are-no-states"));
    }
}
