package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is known about an alternator beyond its set point and rated current.
 *
 * @param sense                where its regulator senses the voltage; empty means its own terminals
 * @param setPointVoltsPerKelvin change of the set point with temperature, V/K, usually negative; empty means none
 * @param setPointCelsius      temperature the set point holds at, deg C; empty means 25
 * @param speedLimits          most current by speed, slowest first; may be empty
 * @param modeLimitAmps        most current while the engine is in a mode, A, 0 or more
 * @param deratingPerKelvin    share of the current limit lost per kelvin above {@code deratingFromCelsius}, 1/K, 0 or more
 * @param deratingFromCelsius  temperature its limit holds up to, deg C; empty means 25
 */
public record AlternatorModel(
        Optional<WireEnd> sense,
        OptionalDouble setPointVoltsPerKelvin,
        OptionalDouble setPointCelsius,
        List<SpeedLimit> speedLimits,
        SortedMap<OperatingState.EngineMode, Double> modeLimitAmps,
        OptionalDouble deratingPerKelvin,
        OptionalDouble deratingFromCelsius) {

    /** Temperature data sheets usually hold at, deg C. */
    public static final double USUAL_CELSIUS = 25;

    /** Nothing known beyond set point and limit. */
    public static final AlternatorModel NONE = new AlternatorModel(
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(),
            new TreeMap<>(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    public AlternatorModel {
        setPointVoltsPerKelvin.ifPresent(value -> within(value, -1, 1, "change of the set point with temperature"));
        setPointCelsius.ifPresent(value -> within(value, -60, 400, "temperature of the set point"));
        speedLimits = List.copyOf(speedLimits);
        for (int k = 1; k < speedLimits.size(); k++) {
            that(
                    speedLimits.get(k - 1).speedRpm() < speedLimits.get(k).speedRpm(),
                    "the output curve of an alternator must come slowest first");
        }
        modeLimitAmps = Collections.unmodifiableSortedMap(new TreeMap<>(modeLimitAmps));
        modeLimitAmps.values().forEach(value -> notNegative(value, "current limit of an alternator"));
        deratingPerKelvin.ifPresent(value -> notNegative(value, "derating of an alternator"));
        deratingFromCelsius.ifPresent(value -> within(value, -60, 400, "temperature of derating"));
    }
}
