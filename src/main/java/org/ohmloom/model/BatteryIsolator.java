package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.List;

/**
 * A battery isolator: one input feeding several batteries, each through a diode of its own.
 * Terminals {@code in}, {@code out1}, {@code out2} and so on.
 *
 * @param outputs      count of outputs, 1 to 8
 * @param forwardVolts threshold of each path, V, 0 or more
 * @param forwardOhms  slope resistance of each path, ohm, more than 0
 * @param limitAmps    most continuous current of each path, A, more than 0
 */
public record BatteryIsolator(int outputs, double forwardVolts, double forwardOhms, double limitAmps)
        implements Device {

    /** Name of the input terminal. */
    public static final String IN = "in";

    public BatteryIsolator {
        that(outputs >= 1 && outputs <= 8, "a battery isolator has 1 to 8 outputs, not %s", outputs);
        notNegative(forwardVolts, "isolator threshold");
        positive(forwardOhms, "isolator slope resistance");
        positive(limitAmps, "isolator current limit");
    }

    /** Names of the outputs in order. */
    public List<String> outputTerminals() {
        List<String> names = new ArrayList<>();
        for (int k = 1; k <= outputs; k++) {
            names.add("out" + k);
        }
        return List.copyOf(names);
    }

    @Override
    public List<String> terminals() {
        List<String> names = new ArrayList<>(List.of(IN));
        names.addAll(outputTerminals());
        return List.copyOf(names);
    }
}
