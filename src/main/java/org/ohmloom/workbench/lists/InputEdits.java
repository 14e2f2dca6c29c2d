package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Pin;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about how inputs of control units read, as edits. */
final class InputEdits {
    private static final Words WORDS = Words.of("lists");

    private InputEdits() {}

    /** Resistance of the input; nothing when not known. */
    static Edit ohms(List<InputSheet.Row> rows, String typed) {
        OptionalDouble ohms = TypedNumbers.optional(typed, Unit.OHM);
        return all(rows, WORDS.get("input.input-resistance"), input -> input.withInputOhms(ohms));
    }

    /** Corner frequency of its filter; nothing when not known. */
    static Edit filter(List<InputSheet.Row> rows, String typed) {
        OptionalDouble hertz = TypedNumbers.optional(typed, Unit.HERTZ);
        return all(rows, WORDS.get("input.filter-2"), input -> input.withFilterHertz(hertz));
    }

    /** Voltage it reads as high from; nothing when not known. */
    static Edit rising(List<InputSheet.Row> rows, String typed) {
        OptionalDouble volts = TypedNumbers.optional(typed, Unit.VOLT);
        return all(
                rows, WORDS.get("input.rising-threshold"), input -> input.withThresholds(volts, input.fallingVolts()));
    }

    /** Voltage it reads as low from; nothing when not known. */
    static Edit falling(List<InputSheet.Row> rows, String typed) {
        OptionalDouble volts = TypedNumbers.optional(typed, Unit.VOLT);
        return all(
                rows, WORDS.get("input.falling-threshold"), input -> input.withThresholds(input.risingVolts(), volts));
    }

    /** Shunt of a current input; nothing for none. */
    static Edit shunt(List<InputSheet.Row> rows, String typed) {
        OptionalDouble ohms = TypedNumbers.optional(typed, Unit.OHM);
        return all(rows, WORDS.get("input.shunt-2"), input -> input.withShuntOhms(ohms));
    }

    /** What the converter compares with: "ratiometric" or "fixed"; nothing when not known. */
    static Edit scale(List<InputSheet.Row> rows, String typed) {
        Optional<InputStage.Scale> scale =
                switch (typed.strip().toLowerCase(Locale.ROOT)) {
                    case "" -> Optional.empty();
                    case "ratiometric" -> Optional.of(InputStage.Scale.RATIOMETRIC);
                    case "fixed" -> Optional.of(InputStage.Scale.FIXED);
                    default -> throw new IllegalArgumentException(
                            WORDS.get("input.is-nothing-a-converter", typed.strip()));
                };
        return all(rows, WORDS.get("input.scale"), input -> input.withScale(scale));
    }

    private static Edit all(List<InputSheet.Row> rows, String what, UnaryOperator<InputStage> change) {
        List<Edit> edits = rows.stream()
                .map(row -> {
                    InputStage changed = change.apply(row.input());
                    Optional<InputStage> known =
                            changed.equals(InputStage.UNKNOWN) ? Optional.empty() : Optional.of(changed);
                    return (Edit) new ChangeDevice(
                            WORDS.text("input.set-of", what, row.name()),
                            row.component().id(),
                            device -> device instanceof ControlUnit unit
                                    ? unit.withPins(unit.pins().stream()
                                            .map(pin ->
                                                    pin.name().equals(row.pin().name()) ? pin.reading(known) : pin)
                                            .toList())
                                    : device);
                })
                .toList();
        return TypedNumbers.together(WORDS.text("input.set-of-inputs", what, rows.size()), edits);
    }

    /** The input of a pin as it is known. */
    static InputStage of(Pin pin) {
        return pin.input().orElse(InputStage.UNKNOWN);
    }
}
