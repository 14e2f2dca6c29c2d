package org.ohmloom.draw;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;

/**
 * One kind of number of wires and bundles, in one state or the worst of all: current A, drop V, temperature deg C, margin as
 * a fraction, area mm2 or diameter mm. Keeps what it found; for one thread.
 */
final class Readings {

    private final Harness harness;
    private final Optional<Analysis> analysis;
    private final Optional<StateId> state;
    private final SceneOptions.Numbers numbers;
    private final Optional<Diameters> diameters;
    private final Map<WireId, Optional<Double>> known = new HashMap<>();

    Readings(Harness harness, Optional<Analysis> analysis, Optional<StateId> state, SceneOptions.Numbers numbers) {
        this.harness = harness;
        this.analysis = analysis;
        this.state = state;
        this.numbers = numbers;
        this.diameters = analysis.map(results -> {
            ConductorResistance resistance = new ConductorResistance(
                    results.evidence().tables(), results.evidence().basis());
            return new Diameters(results.evidence().tables(), harness.rules(), wire -> gauge(wire.id())
                    .map(gauge -> resistance.row(wire, gauge)));
        });
    }

    SceneOptions.Numbers numbers() {
        return numbers;
    }

    /** The number of one wire. */
    Optional<Double> ofWire(WireId wire) {
        return known.computeIfAbsent(wire, this::find);
    }

    /** The number of a bundle: its own diameter, otherwise that of the wire that counts. */
    Optional<Double> ofBundle(String id, Collection<WireId> wires) {
        return numbers == SceneOptions.Numbers.DIAMETER
                ? diameterMm(id)
                : decisive(wires).flatMap(this::ofWire);
    }

    /** The wire of a bundle with the largest number, or with the smallest margin. */
    Optional<WireId> decisive(Collection<WireId> wires) {
        Comparator<WireId> byNumber =
                Comparator.comparingDouble(wire -> ofWire(wire).orElse(0.0));
        return wires.stream()
                .filter(wire -> ofWire(wire).isPresent())
                .max(numbers == SceneOptions.Numbers.MARGIN ? byNumber.reversed() : byNumber);
    }

    /** A number as it is written; the size of a wire is written by its gauge instead. */
    static String text(SceneOptions.Numbers numbers, double value, ShownUnits units) {
        return switch (numbers) {
            case CURRENT -> units.quantity(value, Dimension.CURRENT);
            case DROP -> units.quantity(value, Dimension.VOLTAGE);
            case TEMPERATURE -> units.celsius(value);
            case MARGIN -> units.quantity(value, Dimension.RATIO);
            case SIZE -> units.quantity(value, Dimension.AREA);
            case DIAMETER -> "Ø " + units.millimetres(value);
            case NONE -> "";
        };
    }

    /** The size of a wire: its own, otherwise the one it was solved with. */
    Optional<Gauge> gauge(WireId wire) {
        return harness.wires().find(wire).flatMap(Wire::gauge).or(() -> rating(wire)
                .map(WireRating::gauge));
    }

    private Optional<Double> find(WireId wire) {
        return switch (numbers) {
            case CURRENT -> amps(wire);
            case DROP -> flow(wire).map(flow -> Math.abs(flow.onDropVolts())).or(() -> worst(wire)
                    .map(WireRating::worstDropVolts));
            case TEMPERATURE -> celsius(wire).or(() -> worst(wire).map(WireRating::celsius));
            case MARGIN -> rating(wire)
                    .flatMap(WireRating::ampacity)
                    .map(Ampacity::limitAmps)
                    .filter(limit -> limit > 0)
                    .flatMap(limit -> amps(wire).map(amps -> 1 - amps / limit));
            case SIZE -> gauge(wire).map(Gauge::nominalAreaMm2);
            case DIAMETER -> harness.wires()
                    .find(wire)
                    .flatMap(found -> diameters.flatMap(all -> all.of(found)))
                    .map(Diameters.Known::millimetres);
            case NONE -> Optional.empty();
        };
    }

    private Optional<Double> amps(WireId wire) {
        return flow(wire).map(BranchFlow::rmsAmps).or(() -> worst(wire).map(WireRating::worstAmps));
    }

    private Optional<Double> diameterMm(String id) {
        return analysis.flatMap(results -> results.evidence().bundles().of(new SegmentId(id)))
                .map(SegmentSection::finishedMm)
                .filter(millimetres -> millimetres > 0);
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
