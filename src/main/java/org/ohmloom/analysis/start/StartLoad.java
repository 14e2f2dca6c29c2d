package org.ohmloom.analysis.start;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.Optional;
import org.ohmloom.tables.InrushMultiple;

/**
 * A load of a first harness.
 *
 * @param name    what people call it
 * @param kind    what it is
 * @param amps    current it takes at the nominal voltage, A, more than 0
 * @param place   name of the place where it sits
 * @param control what switches it
 */
public record StartLoad(String name, Kind kind, double amps, String place, Control control) {

    /** Kinds of load by how they draw; the ones that start hard name their row of the table of inrush multiples. */
    public enum Kind {
        /** Fans, pumps, winches. */
        MOTOR(Optional.of("motor")),
        /** Lamps with a filament. */
        FILAMENT_LAMP(Optional.of(InrushMultiple.LAMP)),
        /** Heaters, valves, solenoids: a resistance. */
        HEATER_OR_COIL(Optional.empty()),
        /** Radios, chargers, lamps with light-emitting diodes: a power. */
        ELECTRONICS(Optional.empty());

        private final Optional<String> inrush;

        Kind(Optional<String> inrush) {
            this.inrush = inrush;
        }

        /** Name of its kind in the table of inrush multiples. */
        Optional<String> inrush() {
            return inrush;
        }
    }

    /** What switches a load. */
    public enum Control {
        /** Nothing: it is fed whenever its fuse is in. */
        ALWAYS_FED,
        /** A hand switch. */
        SWITCH,
        /** An output of the control unit. */
        CONTROL_UNIT
    }

    public StartLoad {
        notBlank(name, "name of a load");
        positive(amps, "current of %s", name);
        notBlank(place, "place of %s", name);
    }
}
