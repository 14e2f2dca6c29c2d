package org.ohmloom.workbench.words;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetLoadCurrent;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;

/**
 * Turns what a person types into edits. Every method throws {@link IllegalArgumentException} with one line for the person
 * when the text is not what is needed.
 */
public final class TypedEdits {
    private static final Words WORDS = Words.of("typed");

    private TypedEdits() {}

    /** A conductor size, "2.5 mm2", "2,5" or "14 AWG"; nothing leaves it to be chosen. A bare number is mm2. */
    public static Edit conductor(List<WireId> wires, String typed) {
        return new SetWireGauge(wires, typed.isBlank() ? Optional.empty() : Optional.of(gauge(typed)));
    }

    /** A length, "1.5", "1,5 m" or "10 ft"; nothing takes its way and the allowances of each end. A bare number is m. */
    public static Edit length(List<WireId> wires, String typed) {
        if (typed.isBlank()) {
            return new SetWireLength(wires, OptionalDouble.empty());
        }
        return new SetWireLength(wires, OptionalDouble.of(positive(typed, Unit.METRE, WORDS.get("typed.a-length"))));
    }

    /** A rated current, "2.5", "2,5 A" or "800 mA". A bare number is A. */
    public static Edit current(List<ComponentId> loads, String typed) {
        return new SetLoadCurrent(loads, positive(typed, Unit.AMP, WORDS.get("typed.a-rated-current")));
    }

    /** The rated current of protective devices. A bare number is A. */
    public static Edit rating(List<ComponentId> devices, String typed) {
        double ratingAmps = positive(typed, Unit.AMP, WORDS.get("typed.a-rated-current"));
        List<Edit> each = devices.stream()
                .map(device -> (Edit) new SetDeviceRating(device, ratingAmps))
                .toList();
        return each.size() == 1
                ? each.get(0)
                : new Compound(WORDS.text("typed.set-rating-of-devices", each.size()), each);
    }

    private static Gauge gauge(String typed) {
        boolean bare = typed.strip().matches("[0-9]*[.,]?[0-9]+");
        return Gauge.parse(bare ? typed.strip() + " mm2" : typed);
    }

    private static double positive(String typed, Unit unit, String what) {
        double value = QuantityParser.parse(typed, unit).canonical();
        if (value <= 0) {
            throw new IllegalArgumentException(WORDS.get("typed.must-be-more-than", what, typed.strip()));
        }
        return value;
    }
}
