package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.CopperConstants;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.ShortTimeLimit;
import org.ohmloom.tables.WireTables;

/**
 * How long a conductor stands a current.
 *
 * <p>It starts at its running temperature and must not pass the overload limit of its insulation, nor its short-circuit
 * limit within {@link ShortTimeLimit#SHORT_CIRCUIT_SECONDS}. Up to {@link #ADIABATIC_SECONDS} the copper alone takes up the
 * heat; beyond, the conductor loses heat where it lies as {@link ConductorHeating} says.
 *
 * @param wire             the wire
 * @param size             its conductor size in words
 * @param areaMm2          copper area, mm2
 * @param ampacityAmps     what it may carry for good by the tables of the basis, A
 * @param ambientCelsius   air, deg C
 * @param runningCelsius   conductor temperature it starts from, deg C
 * @param continuousCelsius temperature it may have for good, deg C
 * @param shortTime        how hot its insulation may get for a short time
 * @param heating          how it warms where it lies
 * @param copper           constants of copper
 * @param sources          rows it rests on
 */
public record ConductorLimit(
        WireId wire,
        String size,
        double areaMm2,
        double ampacityAmps,
        double ambientCelsius,
        double runningCelsius,
        double continuousCelsius,
        ShortTimeLimit shortTime,
        ConductorHeating heating,
        CopperConstants copper,
        List<Citation> sources) {

    /** Up to here a lumped model is optimistic and the copper alone counts, s. */
    public static final double ADIABATIC_SECONDS = 10;

    public ConductorLimit {
        sources = List.copyOf(sources);
    }

    /**
     * What a wire with a size stands, by the tables; empty when no table has its insulation or its short-time limit.
     *
     * @param tables         published tables
     * @param wire           the wire
     * @param insulation     its insulation
     * @param row            the size
     * @param ampacity       what it may carry where it lies
     * @param runningCelsius conductor temperature while it carries what it usually does, deg C
     */
    public static Optional<ConductorLimit> of(
            WireTables tables,
            WireId wire,
            String insulation,
            ConductorRow row,
            Ampacity ampacity,
            double runningCelsius) {
        Optional<InsulationType> type = tables.findInsulation(insulation);
        return type.flatMap(found -> tables.findShortTimeLimit(insulation)
                .map(shortTime -> new ConductorLimit(
                        wire,
                        row.gauge().text(),
                        row.copperAreaMm2(),
                        ampacity.limitAmps(),
                        ampacity.ambientCelsius(),
                        Math.min(Math.max(runningCelsius, ampacity.ambientCelsius()), found.maximumCelsius()),
                        ampacity.limitCelsius(),
                        shortTime,
                        LumpedHeating.of(
                                tables.copper(),
                                row.copperAreaMm2(),
                                row.ohmsPerMetreAt20Celsius(),
                                atLimitAmps(ampacity),
                                ampacity.limitCelsius(),
                                ampacity.ambientCelsius()),
                        tables.copper(),
                        List.of(
                                shortTime.overload().citation(),
                                tables.copper().adiabaticK().citation(),
                                ampacity.base().citation()))));
    }

    /** The current that melts its copper within a time from its running temperature, A; after Onderdonk, s up to some 10. */
    public double meltingAmps(double seconds) {
        return Onderdonk.meltingAmps(copper, areaMm2, seconds, runningCelsius);
    }

    /** The lasting current that melts its copper in free air, A; after Preece, as one round wire of its area. */
    public double meltingAmpsForGood() {
        return Preece.ofArea(areaMm2);
    }

    /**
     * The current at which it settles at its limit, A: what it may carry, or more where the heat balance of as many equal
     * wires, all loaded, says that the ampacity keeps a reserve.
     */
    private static double atLimitAmps(Ampacity ampacity) {
        return Math.max(
                ampacity.limitAmps(),
                ampacity.comparison().map(MethodComparison::balanceAmps).orElse(0.0));
    }

    /**
     * This conductor settling at a temperature, deg C, under a current, A, as the heat balance of its bundle gives it; the
     * same when that is no rise.
     */
    public ConductorLimit settlingAt(double celsius, double amps, double ohmsPerMetreAt20Celsius) {
        return celsius <= ambientCelsius || amps <= 0
                ? this
                : new ConductorLimit(
                        wire,
                        size,
                        areaMm2,
                        ampacityAmps,
                        ambientCelsius,
                        runningCelsius,
                        continuousCelsius,
                        shortTime,
                        LumpedHeating.of(copper, areaMm2, ohmsPerMetreAt20Celsius, amps, celsius, ambientCelsius),
                        copper,
                        sources);
    }

    /** This conductor starting no cooler than that, deg C, as far as its insulation's continuous limit. */
    public ConductorLimit startingAt(double celsius) {
        return new ConductorLimit(
                wire,
                size,
                areaMm2,
                ampacityAmps,
                ambientCelsius,
                Math.min(Math.max(runningCelsius, celsius), Math.max(runningCelsius, continuousCelsius)),
                continuousCelsius,
                shortTime,
                heating,
                copper,
                sources);
    }

    /** Time it stands a current, A, in s; empty where it stands it for good as far as the short-time limits go. */
    public OptionalDouble damageSeconds(double amps) {
        if (amps <= 0) {
            return OptionalDouble.empty();
        }
        double shortCircuit = Adiabatic.seconds(
                copper, areaMm2, amps, runningCelsius, shortTime.shortCircuit().value());
        if (shortCircuit <= ShortTimeLimit.SHORT_CIRCUIT_SECONDS) {
            return OptionalDouble.of(shortCircuit);
        }
        double overload = shortTime.overload().value();
        double alone = Adiabatic.seconds(copper, areaMm2, amps, runningCelsius, overload);
        double seconds = alone <= ADIABATIC_SECONDS
                ? alone
                : Math.max(ADIABATIC_SECONDS, heating.seconds(amps, runningCelsius, overload));
        return Double.isInfinite(seconds)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(ShortTimeLimit.SHORT_CIRCUIT_SECONDS, seconds));
    }

    /** Temperature after carrying a current for a time from its running temperature, deg C; infinite when it runs away. */
    public double celsiusAfter(double amps, double seconds) {
        return seconds <= ADIABATIC_SECONDS
                ? Adiabatic.endCelsius(copper, areaMm2, amps, runningCelsius, seconds)
                : heating.celsiusAfter(amps, runningCelsius, seconds);
    }

    /** The factor k between its running temperature and the short-circuit limit, A s^0.5/mm2. */
    public double shortCircuitFactor() {
        return Adiabatic.k(copper, runningCelsius, shortTime.shortCircuit().value());
    }

    /**
     * The limit as a curve from one current to another, A, evenly spaced on a logarithmic axis; currents it stands for
     * good are left out.
     */
    public List<CurvePoint> curve(double fromAmps, double toAmps, int count) {
        List<CurvePoint> points = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double amps = fromAmps * Math.pow(toAmps / fromAmps, k / (count - 1.0));
            damageSeconds(amps).ifPresent(seconds -> points.add(new CurvePoint(amps, seconds)));
        }
        return List.copyOf(points);
    }
}
