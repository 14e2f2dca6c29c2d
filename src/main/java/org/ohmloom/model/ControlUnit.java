package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A control unit, expansion module or remote node on a data bus: its pins are its terminals.
 *
 * @param pins                  pins in order, names unique
 * @param drawAmps              current the unit itself takes from its supply pins to its ground pins, A, 0 or more
 * @param groundToSensorReturnOhms resistance inside between supply ground and sensor return, ohm; empty when isolated
 * @param groundToCaseOhms         resistance inside between supply ground and case, ohm; empty when isolated
 */
public record ControlUnit(
        List<Pin> pins, double drawAmps, OptionalDouble groundToSensorReturnOhms, OptionalDouble groundToCaseOhms)
        implements Device {

    public ControlUnit {
        pins = List.copyOf(pins);
        notNegative(drawAmps, "supply current of a control unit");
        groundToSensorReturnOhms.ifPresent(value -> positive(value, "ground to sensor return resistance"));
        groundToCaseOhms.ifPresent(value -> positive(value, "ground to case resistance"));
        that(!pins.isEmpty(), "a control unit needs at least one pin");
        List<String> names = pins.stream().map(Pin::name).toList();
        that(names.stream().distinct().count() == names.size(), "pin names repeat: %s", names);
    }

    /** The pin of that name. */
    public Optional<Pin> pin(String name) {
        return pins.stream().filter(pin -> pin.name().equals(name)).findFirst();
    }

    /** Pins that have the role, in order. */
    public Stream<Pin> pinsOf(PinRole role) {
        return pins.stream().filter(pin -> pin.role() == role);
    }

    @Override
    public List<String> terminals() {
        return pins.stream().map(Pin::name).toList();
    }
}
