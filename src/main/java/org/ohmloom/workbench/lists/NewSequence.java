package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.words.Words;

/** Makes a timed sequence that begins with the state shown; its steps are then typed in the list of sequences. */
public final class NewSequence extends Command {
    private static final Words WORDS = Words.of("lists");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    public NewSequence(Desk desk) {
        super(
                "new-sequence",
                WORDS.get("new-sequence.new-sequence-of-states"),
                WORDS.get("new-sequence.new-sequence-of-states.about"));
        this.desk = desk;
        withMnemonic('S');
        refresh();
    }

    @Override
    public void run() {
        desk.harness().ifPresent(harness -> first().ifPresent(state -> {
            PutElements edit = SequenceEdits.create(harness, state);
            desk.apply(edit);
            desk.select(Selection.of(List.of(edit.elements().get(0).id().value())));
        }));
    }

    @Override
    public void refresh() {
        setReady(first().isPresent(), WORDS.get("new-sequence.there-are-no-states"));
    }

    private Optional<StateId> first() {
        return desk.view().state().or(() -> desk.harness().stream()
                .flatMap(harness -> harness.states().ids().stream())
                .findFirst());
    }
}
