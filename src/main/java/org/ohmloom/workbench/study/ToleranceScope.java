package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.words.Words;

/** Which results a study of tolerances looks at: all or those of one load, in the worst state of each or in one. */
final class ToleranceScope {
    private static final Words WORDS = Words.of("tolerance");

    private final JComboBox<Choice<ComponentId>> load = new JComboBox<>();
    private final JComboBox<Choice<StateId>> state = new JComboBox<>();

    /** One thing, or all of them. */
    private record Choice<T>(Optional<T> id, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    JComboBox<?> loads() {
        return load;
    }

    JComboBox<?> states() {
        return state;
    }

    /** Offers what a harness has. */
    void show(Harness harness) {
        offer(
                load,
                WORDS.get("load.all"),
                harness.components().all().stream().filter(each -> each.device() instanceof Load),
                Component::id,
                each -> each.id() + " " + each.name());
        offer(state, WORDS.get("in.worst"), harness.states().all().stream(), OperatingState::id, OperatingState::name);
    }

    private static <E, T> void offer(
            JComboBox<Choice<T>> box, String all, Stream<E> each, Function<E, T> id, Function<E, String> name) {
        List<Choice<T>> choices = new ArrayList<>(List.of(new Choice<>(Optional.empty(), all)));
        each.forEach(one -> choices.add(new Choice<>(Optional.of(id.apply(one)), name.apply(one))));
        Choices.put(box, choices);
    }

    /** The only load looked at. */
    Optional<ComponentId> load() {
        return chosen(load);
    }

    /** The only state looked at. */
    Optional<StateId> state() {
        return chosen(state);
    }

    private static <T> Optional<T> chosen(JComboBox<Choice<T>> box) {
        @Nullable Choice<T> choice = box.getItemAt(box.getSelectedIndex());
        return choice == null ? Optional.empty() : choice.id();
    }
}
