package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmloom.model.Measured;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** Measured values in words. */
final class ValueText {
    private ValueText() {}

    static String of(Measured measured) {
        if (measured.ohms().isPresent()) {
            return Formats.ohms(measured.ohms().getAsDouble());
        }
        if (measured instanceof Measured.Isolation isolation) {
            String volts = isolation.testVolts().isPresent()
                    ? " at " + Formats.volts(isolation.testVolts().getAsDouble())
                    : "";
            return (isolation.beyondRange() ? "> " : "") + Formats.ohms(isolation.isolationOhms()) + volts;
        }
        if (measured instanceof Measured.Pull pull) {
            return Formats.quantity(pull.lowestNewtons(), Dimension.FORCE);
        }
        if (measured instanceof Measured.CableCheck check) {
            return check.outcome().name().toLowerCase(Locale.ROOT);
        }
        Measured.Powered powered = (Measured.Powered) measured;
        List<String> values = new ArrayList<>();
        powered.loadVolts().ifPresent(volts -> values.add(Formats.volts(volts)));
        powered.dropVolts().ifPresent(volts -> values.add("drop " + Formats.volts(volts)));
        powered.loadAmps().ifPresent(amps -> values.add(Formats.amps(amps)));
        return String.join(", ", values);
    }
}
