package org.ohmloom.size;

import java.util.Optional;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;

/**
 * Voltage drop of a run of one conductor: amps x listed ohms per metre x resistance ratio x metres, and the same solved
 * for the size and for the length. The resistance ratio is 1 at 20 C and (234.5 + T)/254.5 for copper at T in deg C.
 */
public final class VoltageDrop {

    /** Two resistances this close, as a ratio, are the same: a drop that is its limit by rounding still meets it. */
    private static final double SAME = 1e-9;

    private VoltageDrop() {}

    /** Drop of a run, V; the length in m, the current in A, the ratio of resistance to that at 20 C. */
    public static double volts(ConductorRow row, double lengthMetres, double amps, double resistanceRatio) {
        return Math.abs(amps) * row.ohmsPerMetreAt20Celsius() * resistanceRatio * lengthMetres;
    }

    /** The longest run that loses no more than a limit in V, m; infinite when it carries nothing. */
    public static double longestMetres(ConductorRow row, double amps, double limitVolts, double resistanceRatio) {
        return limitVolts / (Math.abs(amps) * row.ohmsPerMetreAt20Celsius() * resistanceRatio);
    }

    /** The thinnest size of a family whose run loses no more than a limit in V; empty when none does. */
    public static Optional<ConductorRow> thinnest(
            ConductorFamily family, double lengthMetres, double amps, double limitVolts, double resistanceRatio) {
        double allowedOhmsPerMetre = limitVolts / (Math.abs(amps) * lengthMetres);
        return family.rows().stream()
                .filter(row -> meets(row.ohmsPerMetreAt20Celsius() * resistanceRatio, allowedOhmsPerMetre))
                .findFirst();
    }

    /** Whether a resistance per metre is no more than allowed, but for rounding. */
    static boolean meets(double ohmsPerMetre, double allowedOhmsPerMetre) {
        return ohmsPerMetre <= allowedOhmsPerMetre * (1 + SAME);
    }
}
