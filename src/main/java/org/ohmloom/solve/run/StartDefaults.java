package org.ohmloom.solve.run;

import java.util.Comparator;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.InrushMultiple;
import org.ohmloom.tables.WireTables;

/**
 * What is taken where a load does not say how it starts.
 *
 * @param lampPeakRatio       current of a cold filament over its running current
 * @param lampDecaySeconds    time constant in which a filament gets hot, s
 * @param motorDecaySeconds   time constant in which the start current of a motor falls, s
 * @param capacitorOhms       series resistance of the input capacitor of a control unit, ohm
 */
record StartDefaults(
        CitedValue lampPeakRatio, double lampDecaySeconds, double motorDecaySeconds, double capacitorOhms) {

    /** Common practice, no source: a small filament is hot within some 0.1 s. */
    private static final double LAMP_DECAY_SECONDS = 0.03;

    /** Common practice, no source: small fans and pumps are at speed within about a second. */
    private static final double MOTOR_DECAY_SECONDS = 0.3;

    /** Common practice, no source: an electrolytic capacitor and what stands before it. */
    private static final double CAPACITOR_OHMS = 0.05;

    /** The defaults, with the lowest published multiple of a lamp. */
    static StartDefaults of(WireTables tables) {
        return new StartDefaults(
                tables.inrushMultiples().stream()
                        .filter(each -> each.load().equals(InrushMultiple.LAMP))
                        .map(InrushMultiple::low)
                        .min(Comparator.comparingDouble(CitedValue::value))
                        .orElseThrow(),
                LAMP_DECAY_SECONDS,
                MOTOR_DECAY_SECONDS,
                CAPACITOR_OHMS);
    }
}
