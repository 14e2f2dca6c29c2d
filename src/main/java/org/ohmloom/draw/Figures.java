package org.ohmloom.draw;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/** The numbers that stand on wires and bundles, as far as there are any. */
final class Figures {

    private final Harness harness;
    private final Optional<Analysis> analysis;
    private final Optional<StateId> state;
    private final SceneOptions.Numbers numbers;

    Figures(Harness harness, Optional<Analysis> analysis, Optional<StateId> state, SceneOptions.Numbers numbers) {
        this.harness = harness;
        this.analysis = analysis;
        this.state = state;
        this.numbers = numbers;
    }

    /** The number on one wire. */
    Optional<String> ofWire(WireId wire) {
        if (numbers == SceneOptions.Numbers.SIZE) {
            return gauge(wire).map(Words::size);
        }
        return measured(wire);
    }

    /** The current, drop or temperature of one wire, when that is asked for. */
    Optional<String> measured(WireId wire) {
        return value(wire).map(this::text);
    }

    /** The number on a bundle: the largest of its wires, with the wire it belongs to, or the span of sizes. */
    Optional<String> ofBundle(Collection<WireId> wires) {
        if (numbers == SceneOptions.Numbers.SIZE) {
            return sizes(wires);
        }
        return wires.stream()
                .filter(wire -> value(wire).isPresent())
                .max(Comparator.comparing((WireId wire) -> value(wire).orElse(0.0)))
                .map(wire -> (wires.size() > 1 ? "max " : "") + text(value(wire).orElse(0.0)) + " in " + wire);
    }

    /** The span of the sizes of a bundle. */
    Optional<String> sizes(Collection<WireId> wires) {
        Optional<Gauge> least =
                wires.stream().flatMap(wire -> gauge(wire).stream()).min(Comparator.naturalOrder());
        Optional<Gauge> most =
                wires.stream().flatMap(wire -> gauge(wire).stream()).max(Comparator.naturalOrder());
        return least.flatMap(small -> most.map(
                large -> small.equals(large) ? Words.size(small) : Words.size(small) + " to " + Words.size(large)));
    }

    /** The size of a wire: its own, otherwise the one it was solved with. */
    Optional<Gauge> gauge(WireId wire) {
        return harness.wires().find(wire).flatMap(Wire::gauge).or(() -> rating(wire)
                .map(WireRating::gauge));
    }

    private Optional<Double> value(WireId wire) {
        return switch (numbers) {
            case CURRENT -> flow(wire).map(BranchFlow::rmsAmps).or(() -> worst(wire)
                    .map(WireRating::worstAmps));
            case DROP -> flow(wire).map(flow -> Math.abs(flow.onDropVolts())).or(() -> worst(wire)
                    .map(WireRating::worstDropVolts));
            case TEMPERATURE -> celsius(wire).or(() -> worst(wire).map(WireRating::celsius));
            case SIZE, NONE -> Optional.empty();
        };
    }

    private String text(double value) {
        return switch (numbers) {
            case CURRENT -> Formats.amps(value);
            case DROP -> Formats.volts(value);
            case TEMPERATURE -> Formats.celsius(value);
            case SIZE, NONE -> "";
        };
    }

    private Optional<Double> celsius(WireId wire) {
        return state.flatMap(each -> analysis.map(results -> results.wireCelsius(each, wire)))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble);
    }

    private Optional<BranchFlow> flow(WireId wire) {
        return state.flatMap(each -> analysis.flatMap(results -> results.solution(each)))
                .flatMap(solution -> solution.flow(new BranchId(wire.value())));
    }

    /** The worst case of all states; empty while one state is asked for. */
    private Optional<WireRating> worst(WireId wire) {
        return state.isPresent() ? Optional.empty() : rating(wire);
    }

    private Optional<WireRating> rating(WireId wire) {
        return analysis.flatMap(results -> Optional.ofNullable(results.ratings().get(wire)));
    }
}
