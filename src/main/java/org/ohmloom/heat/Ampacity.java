package org.ohmloom.heat;

import static org.ohmloom.units.Require.notBlank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What a conductor may carry where it lies: a table value and the factors it is multiplied by.
 *
 * @param limitAmps      the result: base value times all factors, A
 * @param base           table value, A, with its row
 * @param factors        ambient, bundle and other factors in order, each named and cited
 * @param ambientCelsius hottest ambient along the wire, deg C
 * @param limitCelsius   temperature the insulation stands, deg C
 * @param loadedCount    current-carrying conductors in the fullest bundle segment along the wire
 * @param comparison     what table and heat balance each say; empty where only one was asked
 */
public record Ampacity(
        double limitAmps,
        CitedValue base,
        List<Factor> factors,
        double ambientCelsius,
        double limitCelsius,
        int loadedCount,
        Optional<MethodComparison> comparison) {

    /** An ampacity that was not compared. */
    public Ampacity(
            double limitAmps,
            CitedValue base,
            List<Factor> factors,
            double ambientCelsius,
            double limitCelsius,
            int loadedCount) {
        this(limitAmps, base, factors, ambientCelsius, limitCelsius, loadedCount, Optional.empty());
    }

    /** A base value times factors. */
    static Ampacity of(
            CitedValue base, List<Factor> factors, double ambientCelsius, double limitCelsius, int loadedCount) {
        double amps = base.value();
        for (Factor factor : factors) {
            amps *= factor.ratio();
        }
        return new Ampacity(amps, base, factors, ambientCelsius, limitCelsius, loadedCount);
    }

    /** The same, compared. */
    Ampacity compared(MethodComparison with) {
        return new Ampacity(limitAmps, base, factors, ambientCelsius, limitCelsius, loadedCount, Optional.of(with));
    }

    public Ampacity {
        factors = List.copyOf(factors);
    }

    /** The calculation in one line: "36.6 A x 0.775 (ambient 60 °C) x 0.7 (3 loaded conductors together) = 19.8 A". */
    public String words() {
        return calculation().english();
    }

    /** The same in any language. */
    public Text calculation() {
        List<Text> parts = new ArrayList<>(List.of(Text.of(Formats.amps(base.value()))));
        for (Factor factor : factors) {
            parts.add(Text.of(" x " + Formats.number(factor.ratio()) + " ("));
            parts.add(factor.name());
            parts.add(Text.of(")"));
        }
        parts.add(Text.of(" = " + Formats.amps(limitAmps)));
        return Text.joined("", parts);
    }

    /**
     * One factor.
     *
     * @param name     what it corrects for, for example "ambient 60 deg C"
     * @param ratio    the factor
     * @param citation where it comes from
     */
    public record Factor(Text name, double ratio, Citation citation) {
        public Factor {
            notBlank(name.english(), "name of a factor");
        }
    }
}
