package org.ohmloom.workbench.states;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.solve.EnergyBalance;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.workbench.words.Words;

/**
 * What two operating states come to, side by side.
 *
 * @param lines the numbers of both
 */
record StateComparison(List<Line> lines) {

    /**
     * One number in both states.
     *
     * @param what  what it is
     * @param unit  its unit
     * @param one   in the first state
     * @param other in the second
     */
    record Line(String what, String unit, OptionalDouble one, OptionalDouble other) {

        /** The second less the first; empty where either is missing. */
        OptionalDouble difference() {
            return one.isPresent() && other.isPresent()
                    ? OptionalDouble.of(other.getAsDouble() - one.getAsDouble())
                    : OptionalDouble.empty();
        }
    }

    StateComparison {
        lines = List.copyOf(lines);
    }

    /** Compares two solutions of a harness. */
    static StateComparison of(Harness harness, Optional<Solution> one, Optional<Solution> other, Words words) {
        List<Line> lines = new ArrayList<>();
        lines.add(line(words.get("from-sources"), "A", one, other, StateComparison::given));
        lines.add(line(words.get("loads-take"), "W", one, other, found -> EnergyBalance.of(found)
                .loadsWatts()));
        lines.add(line(words.get("in-conductors"), "W", one, other, found -> EnergyBalance.of(found)
                .conductorsWatts()));
        lines.add(line(words.get("in-devices"), "W", one, other, found -> EnergyBalance.of(found)
                .devicesWatts()));
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Load) {
                String name = component.id() + ", " + component.name();
                Line volts = loadLine(words.get("volts-at", name), "V", component, one, other, LoadVolts::volts);
                Line amps = loadLine(words.get("current-of", name), "A", component, one, other, LoadVolts::amps);
                if (draws(amps.one()) || draws(amps.other())) {
                    lines.add(volts);
                    lines.add(amps);
                }
            }
        }
        return new StateComparison(lines);
    }

    private static boolean draws(OptionalDouble amps) {
        return amps.isPresent() && amps.getAsDouble() != 0;
    }

    private static double given(Solution solution) {
        return solution.flows().values().stream()
                .filter(flow -> flow.branch().kind() == BranchKind.SOURCE && flow.amps() > 0)
                .mapToDouble(flow -> flow.amps())
                .sum();
    }

    private static Line line(
            String what,
            String unit,
            Optional<Solution> one,
            Optional<Solution> other,
            Function<Solution, Double> value) {
        return new Line(what, unit, number(one.map(value)), number(other.map(value)));
    }

    private static Line loadLine(
            String what,
            String unit,
            Component load,
            Optional<Solution> one,
            Optional<Solution> other,
            Function<LoadVolts, Double> value) {
        Function<Solution, Optional<Double>> found =
                solution -> Optional.ofNullable(solution.loads().get(load.id())).map(value);
        return new Line(what, unit, number(one.flatMap(found)), number(other.flatMap(found)));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
