package org.ohmloom.workbench.channel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.swing.JTextField;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The input a sensor is thought to be read by while it has no channel: range, bits of the converter, pull-up, shunt. */
final class TypedInput {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final Words words;
    private final JTextField full = new JTextField("5 V", 18);
    private final JTextField bits = new JTextField("12", 18);
    private final JTextField pullUp = new JTextField(18);
    private final JTextField shunt = new JTextField(18);

    TypedInput(Words words) {
        this.words = words;
    }

    JTextField full() {
        return full;
    }

    JTextField bits() {
        return bits;
    }

    JTextField pullUp() {
        return pullUp;
    }

    JTextField shunt() {
        return shunt;
    }

    List<JTextField> fields() {
        return List.of(full, bits, pullUp, shunt);
    }

    /**
     * A sensor read by that input.
     *
     * @throws IllegalArgumentException when something does not fit; one sentence says what would be right
     */
    SensorChannel reading(Component component, Sensor sensor) {
        double range = TypedNumbers.needed(full.getText(), Unit.VOLT, words.get("calibrate.full"));
        OptionalDouble pull = TypedNumbers.optional(pullUp.getText(), Unit.OHM);
        InputStage stage = new InputStage(
                NONE,
                NONE,
                NONE,
                NONE,
                Optional.empty(),
                TypedNumbers.optional(shunt.getText(), Unit.OHM),
                Optional.empty(),
                bits.getText().isBlank()
                        ? Optional.empty()
                        : Optional.of(BusText.whole(words, bits.getText(), words.get("calibrate.bits"))));
        Pin pin = new Pin(
                words.get("calibrate.input"),
                PinRole.ANALOGUE_INPUT,
                Set.of(),
                NONE,
                NONE,
                NONE,
                pull.isPresent() ? OptionalDouble.of(range) : NONE,
                pull,
                Optional.empty(),
                Optional.of(stage),
                Optional.of(InputRange.ofVolts(0, range)),
                List.of());
        Pin reference = new Pin(
                words.get("calibrate.reference"),
                PinRole.REFERENCE_SUPPLY,
                Set.of(),
                NONE,
                NONE,
                OptionalDouble.of(range),
                NONE,
                NONE,
                Optional.empty());
        ControlUnit unit = new ControlUnit(List.of(pin, reference), 0, NONE, NONE);
        return new SensorChannel(
                component.name(),
                component,
                sensor,
                Component.of("U", words.get("calibrate.input"), unit),
                unit,
                pin,
                Optional.empty(),
                false,
                false);
    }
}
