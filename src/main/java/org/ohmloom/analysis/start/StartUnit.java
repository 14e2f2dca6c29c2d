package org.ohmloom.analysis.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.model.Component;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;

/** The control unit of a first harness: pins for what it switches and reads, in one connector. */
final class StartUnit {

    /** Names of its pins that are always there. */
    private static final String SUPPLY = "SUP", GROUND = "GND", REFERENCE = "REF", SENSOR_RETURN = "SRET";

    private final StartDraft draft;
    private final StartPlaces places;
    private final List<Pin> pins = new ArrayList<>();
    private final ConnectorId connector = new ConnectorId("XU1");
    private double outputAmps;

    StartUnit(StartDraft draft, StartPlaces places) {
        this.draft = draft;
        this.places = places;
        pins.add(Pin.of(SUPPLY, PinRole.SUPPLY));
        pins.add(Pin.of(GROUND, PinRole.GROUND));
    }

    /** A pin that feeds a load of a current, A. */
    String highSide(double amps) {
        outputAmps += amps;
        return output("HS", PinRole.HIGH_SIDE_OUTPUT);
    }

    /** A pin that joins a coil to ground. */
    String lowSide() {
        return output("LS", PinRole.LOW_SIDE_OUTPUT);
    }

    /** A pin that reads a sensor. */
    String input(PinRole role) {
        String name = draft.next(
                switch (role) {
                    case ANALOGUE_INPUT -> "AN";
                    case THERMISTOR_INPUT -> "TH";
                    case FREQUENCY_INPUT -> "FQ";
                    default -> "IN";
                });
        boolean lifted = role != PinRole.ANALOGUE_INPUT;
        pins.add(pin(
                name,
                role,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                lifted ? OptionalDouble.of(StartFigures.REFERENCE_VOLTS) : OptionalDouble.empty(),
                lifted ? OptionalDouble.of(StartFigures.PULL_UP_OHMS) : OptionalDouble.empty()));
        return name;
    }

    /** The end of a wire at a pin. */
    WireEnd end(String pin) {
        for (int k = 0; k < pins.size(); k++) {
            if (pins.get(k).name().equals(pin)) {
                return new WireEnd.AtCavity(connector, String.valueOf(k + 1));
            }
        }
        throw new IllegalArgumentException("the unit has no pin " + pin);
    }

    /** The end of a wire at the reference supply. */
    WireEnd reference() {
        return once(REFERENCE, PinRole.REFERENCE_SUPPLY, OptionalDouble.of(StartFigures.REFERENCE_VOLTS));
    }

    /** The end of a wire at the sensor return. */
    WireEnd sensorReturn() {
        return once(SENSOR_RETURN, PinRole.SENSOR_RETURN, OptionalDouble.empty());
    }

    private WireEnd once(String name, PinRole role, OptionalDouble referenceVolts) {
        if (pins.stream().noneMatch(pin -> pin.name().equals(name))) {
            pins.add(pin(
                    name,
                    role,
                    OptionalDouble.empty(),
                    referenceVolts,
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return end(name);
    }

    /** Makes it, with the feed and the return of its own. */
    void build(StartFuses fuses, StartReturns returns, String place) {
        ControlUnit device = new ControlUnit(
                pins,
                StartFigures.UNIT_AMPS,
                pins.stream().anyMatch(pin -> pin.role() == PinRole.SENSOR_RETURN)
                        ? OptionalDouble.of(StartFigures.SWITCH_OHMS)
                        : OptionalDouble.empty(),
                OptionalDouble.empty());
        Component unit =
                draft.put(StartStates.UNIT, "Control unit", device, Optional.of(places.zone(place)), Optional.empty());
        places.connector(connector, unit, device.terminals(), place);
        String circuit = "control unit";
        draft.wire(
                fuses.circuit("Control unit", StartFigures.UNIT_AMPS + outputAmps),
                end(SUPPLY),
                SignalClass.FEED,
                circuit);
        returns.join(end(GROUND), circuit);
    }

    private String output(String letters, PinRole role) {
        String name = draft.next(letters);
        pins.add(pin(
                name,
                role,
                OptionalDouble.of(StartFigures.OUTPUT_OHMS),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()));
        return name;
    }

    private static Pin pin(
            String name,
            PinRole role,
            OptionalDouble onOhms,
            OptionalDouble referenceVolts,
            OptionalDouble pullUpVolts,
            OptionalDouble pullUpOhms) {
        return new Pin(
                name, role, Set.of(role), OptionalDouble.empty(), onOhms, referenceVolts, pullUpVolts, pullUpOhms);
    }
}
