package org.ohmloom.analysis;

import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Supplier;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.SizingInput;

/** What each wire needs by itself, chosen once for one set of solved states, whoever asks for it; for one thread. */
final class ChosenAlone {

    private Optional<ConductorChooser> chooser = Optional.empty();
    private Optional<SortedMap<WireId, ConductorChoice>> choices = Optional.empty();

    ConductorChooser chooser(Supplier<SizingInput> input) {
        if (chooser.isEmpty()) {
            chooser = Optional.of(new ConductorChooser(input.get()));
        }
        return chooser.get();
    }

    SortedMap<WireId, ConductorChoice> choices(Supplier<SizingInput> input) {
        if (choices.isEmpty()) {
            choices = Optional.of(chooser(input).chooseAll());
        }
        return choices.get();
    }
}
