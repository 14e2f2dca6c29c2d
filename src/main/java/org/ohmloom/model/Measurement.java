package org.ohmloom.model;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a sensor measures.
 *
 * @param quantity     what it measures, as {@code Oil pressure}
 * @param unit         unit of the values, as {@code bar}; degrees Celsius where the calibration is one of temperature
 * @param lowest       lowest value used; 0 for a switch
 * @param highest      highest value used, more than the lowest; 1 for a switch
 * @param calibration  what it gives for it
 * @param allowedError most error, in the unit, more than 0; empty means a share of the span by {@link ReturnRules}
 * @param tolerances   its errors that do not depend on each other
 * @param dissipationWattsPerKelvin power that warms it by 1 K in its medium, W/K, more than 0, if known
 * @param use          what it meets in use and how fast that changes, if entered
 */
public record Measurement(
        String quantity,
        String unit,
        double lowest,
        double highest,
        Calibration calibration,
        OptionalDouble allowedError,
        List<Tolerance> tolerances,
        OptionalDouble dissipationWattsPerKelvin,
        Optional<Use> use) {

    private static final Set<String> DEGREES = Set.of("°C", "degC", "C");

    /**
     * One independent error.
     *
     * @param name  what makes it, as {@code accuracy of the sensor}
     * @param error largest error, in the unit of the measurement, more than 0
     */
    public record Tolerance(String name, double error) {
        public Tolerance {
            notBlank(name, "name of a tolerance");
            positive(error, "tolerance");
        }
    }

    /**
     * What a sensor meets in use.
     *
     * @param lowest              lowest value it must tell, in the unit; empty means the lowest of the measurement
     * @param highest             highest value it must tell, in the unit; empty means the highest of the measurement
     * @param timeConstantSeconds time constant of the fastest credible change of the quantity, s, more than 0
     * @param bandwidthHertz      highest frequency the sensor itself follows, Hz, more than 0
     * @param updateHertz         how often its value is sent, Hz, more than 0; empty means the rate suggested
     */
    public record Use(
            OptionalDouble lowest,
            OptionalDouble highest,
            OptionalDouble timeConstantSeconds,
            OptionalDouble bandwidthHertz,
            OptionalDouble updateHertz) {
        public Use {
            lowest.ifPresent(value -> finite(value, "lowest value in use"));
            highest.ifPresent(value -> finite(value, "highest value in use"));
            if (lowest.isPresent() && highest.isPresent()) {
                that(
                        highest.getAsDouble() > lowest.getAsDouble(),
                        "the highest value in use is above %s, not %s",
                        lowest.getAsDouble(),
                        highest.getAsDouble());
            }
            timeConstantSeconds.ifPresent(value -> positive(value, "time constant of a quantity"));
            bandwidthHertz.ifPresent(value -> positive(value, "bandwidth of a sensor"));
            updateHertz.ifPresent(value -> positive(value, "update rate of a sensor"));
        }
    }

    public Measurement {
        notBlank(quantity, "quantity of a sensor");
        notBlank(unit, "unit of a sensor");
        finite(lowest, "lowest value of a sensor");
        finite(highest, "highest value of a sensor");
        that(highest > lowest, "the highest value of a sensor is above %s, not %s", lowest, highest);
        that(
                !isTemperature(calibration) || DEGREES.contains(unit),
                "a calibration of temperature is in °C, not in '%s'",
                unit);
        allowedError.ifPresent(value -> positive(value, "allowed error of a sensor"));
        tolerances = List.copyOf(tolerances);
        dissipationWattsPerKelvin.ifPresent(value -> positive(value, "dissipation constant of a sensor"));
    }

    /** A measurement of which nothing is said about its use. */
    public Measurement(
            String quantity,
            String unit,
            double lowest,
            double highest,
            Calibration calibration,
            OptionalDouble allowedError,
            List<Tolerance> tolerances,
            OptionalDouble dissipationWattsPerKelvin) {
        this(
                quantity,
                unit,
                lowest,
                highest,
                calibration,
                allowedError,
                tolerances,
                dissipationWattsPerKelvin,
                Optional.empty());
    }

    /** A measurement with a calibration and nothing else said. */
    public static Measurement of(String quantity, String unit, double lowest, double highest, Calibration calibration) {
        return new Measurement(
                quantity,
                unit,
                lowest,
                highest,
                calibration,
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty());
    }

    private static boolean isTemperature(Calibration calibration) {
        return calibration instanceof Calibration.Beta
                || calibration instanceof Calibration.SteinhartHart
                || calibration instanceof Calibration.Thermocouple
                || calibration instanceof Calibration.AmplifiedThermocouple;
    }

    /** Highest less lowest value. */
    public double span() {
        return highest - lowest;
    }

    /** Values from the lowest to the highest, both among them, evenly apart. */
    public List<Double> spread(int count) {
        return spread(lowest, highest, count);
    }

    /** Values from one to another, both among them, evenly apart. */
    public static List<Double> spread(double lowest, double highest, int count) {
        return IntStream.range(0, count)
                .mapToObj(each -> lowest + (highest - lowest) * each / (count - 1))
                .toList();
    }

    /** This measurement told over another range. */
    public Measurement over(double low, double high) {
        return new Measurement(
                quantity, unit, low, high, calibration, allowedError, tolerances, dissipationWattsPerKelvin, use);
    }

    /** This measurement with another allowed error; empty for the share of the span. */
    public Measurement allowing(OptionalDouble changed) {
        return with(changed, tolerances, dissipationWattsPerKelvin, use);
    }

    /** This measurement with these tolerances. */
    public Measurement with(List<Tolerance> changed) {
        return with(allowedError, changed, dissipationWattsPerKelvin, use);
    }

    /** This measurement with another dissipation constant, W/K; empty when not known. */
    public Measurement dissipating(OptionalDouble changed) {
        return with(allowedError, tolerances, changed, use);
    }

    /** This measurement in another use; empty when none is said. */
    public Measurement used(Optional<Use> changed) {
        return with(allowedError, tolerances, dissipationWattsPerKelvin, changed);
    }

    /** This measurement sent at a rate, Hz, more than 0; what else is said of its use stays. */
    public Measurement sentAt(double updateHertz) {
        return used(Optional.of(new Use(
                use.map(Use::lowest).orElse(OptionalDouble.empty()),
                use.map(Use::highest).orElse(OptionalDouble.empty()),
                use.map(Use::timeConstantSeconds).orElse(OptionalDouble.empty()),
                use.map(Use::bandwidthHertz).orElse(OptionalDouble.empty()),
                OptionalDouble.of(updateHertz))));
    }

    private Measurement with(
            OptionalDouble error, List<Tolerance> errors, OptionalDouble wattsPerKelvin, Optional<Use> inUse) {
        return new Measurement(quantity, unit, lowest, highest, calibration, error, errors, wattsPerKelvin, inUse);
    }
}
