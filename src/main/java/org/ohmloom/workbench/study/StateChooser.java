package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.words.Words;

/** Chooses the operating state whose numbers are shown. */
public final class StateChooser extends JComboBox<StateChooser.Choice> {
    private static final Words WORDS = Words.of("studies");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private boolean quiet;

    /**
     * One choice.
     *
     * @param state the state; empty for the worst of all
     * @param name  what people call it
     */
    record Choice(Optional<StateId> state, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    public StateChooser(Desk desk) {
        this.desk = desk;
        setName("state");
        setMaximumRowCount(16);
        setToolTipText(WORDS.get("state-chooser.operating-state-whose-numbers"));
        getAccessibleContext().setAccessibleName(WORDS.get("state-chooser.operating-state"));
        addActionListener(event -> {
            if (!quiet && getSelectedItem() instanceof Choice choice) {
                desk.choose(choice.state());
            }
        });
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT || topic == Topic.HARNESS || topic == Topic.VIEW) {
                showChoices();
            }
        });
        showChoices();
    }

    private void showChoices() {
        List<Choice> choices =
                new ArrayList<>(List.of(new Choice(Optional.empty(), WORDS.get("state-chooser.worst-of-all-states"))));
        desk.harness().ifPresent(harness -> harness.states()
                .all()
                .forEach(state -> choices.add(new Choice(Optional.of(state.id()), state.name()))));
        quiet = true;
        try {
            Choices.put(this, choices);
            choices.stream()
                    .filter(choice -> choice.state().equals(desk.view().state()))
                    .findFirst()
                    .ifPresent(this::setSelectedItem);
            setEnabled(choices.size() > 1);
        } finally {
            quiet = false;
        }
    }
}
