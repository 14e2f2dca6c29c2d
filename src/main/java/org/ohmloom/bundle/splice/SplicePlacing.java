package org.ohmloom.bundle.splice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ohmloom.bundle.ConductorRows;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.graph.Distances;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;

/**
 * Finds for each splice by itself the place of least copper, the others where they are, with the conductors its currents ask for.
 *
 * <p>Copper is the sum over its wires of area times distance. Along a segment every distance is the smaller of a rising and a falling
 * straight line, so the sum is concave between the places where another end lies, and the least of it lies at a breakout, at such a
 * place, or where a distance that must be kept begins (on networks of any form; on a tree this is the weighted median). These
 * places are tried, all of them: exact to the millimetre its place is rounded to.
 *
 * <p>Kept are the clearance from the other ends of its wires in connectors, on terminals and grounds, larger for a splice of two wires
 * than for a joint of several, and the stagger from other splices. Splices that are fixed, existing, without a place, with a wire of
 * entered length or one under a routing rule stay where they are.
 */
public final class SplicePlacing {
    private static final double MILLIMETRE = 1e-3;

    private final Harness harness;
    private final FabricationRules rules;
    private final FabricationTables tables;
    private final ConductorRows rows;
    private final CopperMass copper;
    private final Map<WireEnd, Distances> known = new HashMap<>();
    private final Map<WireEnd, List<Wire>> ending = new HashMap<>();
    private final Map<SegmentId, List<Keep>> staggered = new HashMap<>();
    private boolean isStaggered;

    private SplicePlacing(Harness harness, WireTables tables, ConductorRows rows) {
        this.harness = harness;
        this.rules = harness.rules().fabricationRules();
        this.tables = tables.fabrication();
        this.rows = rows;
        this.copper = new CopperMass(tables.copper().density());
        for (Wire wire : harness.wires().all()) {
            wire.ends().stream().distinct().forEach(end -> ending.computeIfAbsent(end, any -> new ArrayList<>())
                    .add(wire));
        }
    }

    /** Notes for each segment the splices near enough to ask something on it: of thousands only a few are. */
    private void stagger() {
        if (isStaggered) {
            return;
        }
        isStaggered = true;
        double metres = rules.spliceStaggerMetres()
                .orElse(tables.value("splice-stagger").value());
        for (Splice splice : harness.splices().all()) {
            if (splice.place().isPresent()) {
                WireEnd end = new WireEnd.AtSplice(splice.id());
                Keep keep = new Keep(splice.id().value(), distances(end), metres);
                for (BundleSegment segment : harness.segments().all()) {
                    if (asksOn(keep, segment)) {
                        staggered
                                .computeIfAbsent(segment.id(), any -> new ArrayList<>())
                                .add(keep);
                    }
                }
            }
        }
    }

    /** Whether any place along a segment is nearer to an end than is kept from it, or just as near. */
    private static boolean asksOn(Keep keep, BundleSegment segment) {
        double reach = keep.metres() + 2 * MILLIMETRE;
        Distances distances = keep.distances();
        return distances.toBreakouts().getOrDefault(segment.from(), Double.POSITIVE_INFINITY) <= reach
                || distances.toBreakouts().getOrDefault(segment.to(), Double.POSITIVE_INFINITY) <= reach
                || distances.along().containsKey(segment.id());
    }

    /**
     * Advice on every splice that has a place.
     *
     * @param harness the harness
     * @param tables  published tables
     * @param rows    conductors of its wires, those chosen for open sizes among them
     */
    public static SortedMap<SpliceId, SpliceAdvice> of(Harness harness, WireTables tables, ConductorRows rows) {
        SplicePlacing placing = new SplicePlacing(harness, tables, rows);
        SortedMap<SpliceId, SpliceAdvice> advice = new TreeMap<>();
        for (Splice splice : harness.splices().all()) {
            splice.place().ifPresent(place -> advice.put(splice.id(), placing.advise(splice, place)));
        }
        return advice;
    }

    /** Another end of one of its wires. */
    private record Pull(Wire wire, WireEnd end, Distances distances, double kgPerMetre) {}

    /** Something to keep away from. */
    private record Keep(String what, Distances distances, double metres) {}

    private SpliceAdvice advise(Splice splice, Place now) {
        List<Pull> pulls = pulls(splice);
        Optional<String> stays = stays(splice, now, pulls);
        if (stays.isPresent()) {
            return new SpliceAdvice(splice.id(), 0, Optional.empty(), 0, List.of(), stays);
        }
        stagger();
        List<Keep> clear = clearances(pulls);
        Spot present = Spot.of(harness, now);
        double presentKg = kilograms(pulls, present);
        List<String> tooNear = keeps(splice, clear, present.segment())
                .filter(keep -> !kept(keep, present))
                .map(keep -> keep.what() + " (keep " + Formats.metres(keep.metres()) + ")")
                .toList();
        Optional<Spot> best = Optional.empty();
        double bestKg = Double.POSITIVE_INFINITY;
        for (Spot spot : spots(splice, pulls, clear)) {
            double here = kilograms(pulls, spot);
            if (here < bestKg - 1e-12 && keeps(splice, clear, spot.segment()).allMatch(keep -> kept(keep, spot))) {
                best = Optional.of(spot);
                bestKg = here;
            }
        }
        return best.isPresent()
                ? new SpliceAdvice(
                        splice.id(), presentKg, Optional.of(best.get().place()), bestKg, tooNear, Optional.empty())
                : new SpliceAdvice(
                        splice.id(),
                        presentKg,
                        Optional.empty(),
                        presentKg,
                        tooNear,
                        Optional.of("no place keeps all distances"));
    }

    private List<Pull> pulls(Splice splice) {
        WireEnd own = new WireEnd.AtSplice(splice.id());
        List<Pull> pulls = new ArrayList<>();
        for (Wire wire : ending.getOrDefault(own, List.of())) {
            WireEnd other = wire.from().equals(own) ? wire.to() : wire.from();
            double kilograms =
                    rows.of(wire).map(row -> copper.kilograms(row, 1)).orElse(0.0);
            pulls.add(new Pull(wire, other, distances(other), kilograms));
        }
        return pulls;
    }

    private Distances distances(WireEnd end) {
        return known.computeIfAbsent(end, each -> Distances.from(harness, each));
    }

    private Optional<String> stays(Splice splice, Place now, List<Pull> pulls) {
        if (rules.fixedSplices().contains(splice.id())) {
            return Optional.of("it is to stay where it is");
        }
        if (splice.existing()) {
            return Optional.of("it is in the vehicle already");
        }
        if (!Spot.isReached(harness, now)) {
            return Optional.of("no segment reaches it");
        }
        for (Pull pull : pulls) {
            if (pull.wire().lengthMetres().isPresent()) {
                return Optional.of("the length of " + pull.wire().id() + " is entered");
            }
            if (pull.distances().toBreakouts().isEmpty()) {
                return Optional.of("the other end of " + pull.wire().id() + " has no place");
            }
            if (rules.routing().stream().anyMatch(rule -> rule.asks(pull.wire()))) {
                return Optional.of(
                        "a routing rule asks something of " + pull.wire().id());
            }
        }
        return pulls.size() < 2 ? Optional.of("fewer than two wires end in it") : Optional.empty();
    }

    private List<Keep> clearances(List<Pull> pulls) {
        double clearance = rules.spliceClearanceMetres()
                .orElse(tables.value(pulls.size() == 2 ? "splice-clearance" : "splice-clearance-joint")
                        .value());
        return pulls.stream()
                .filter(pull -> !(pull.end() instanceof WireEnd.AtSplice))
                .map(pull -> new Keep(pull.end().text(), pull.distances(), clearance))
                .toList();
    }

    /** All that a splice has to keep away from on a segment. */
    private Stream<Keep> keeps(Splice splice, List<Keep> clear, BundleSegment segment) {
        return Stream.concat(
                clear.stream(),
                staggered.getOrDefault(segment.id(), List.of()).stream()
                        .filter(keep -> !keep.what().equals(splice.id().value())));
    }

    private static boolean kept(Keep keep, Spot spot) {
        return spot.from(keep.distances()) >= keep.metres() - MILLIMETRE;
    }

    private static double kilograms(List<Pull> pulls, Spot spot) {
        return pulls.stream()
                .mapToDouble(pull -> pull.kgPerMetre() * spot.from(pull.distances()))
                .sum();
    }

    private List<Spot> spots(Splice splice, List<Pull> pulls, List<Keep> clear) {
        List<Spot> spots = new ArrayList<>();
        harness.segments().all().forEach(segment -> {
            List<Double> along = new ArrayList<>(List.of(0.0, segment.lengthMetres()));
            pulls.forEach(pull -> {
                Double own = pull.distances().along().get(segment.id());
                if (own != null) {
                    along.add(own);
                }
            });
            keeps(splice, clear, segment)
                    .forEach(keep -> along.addAll(Spot.boundaries(segment, keep.distances(), keep.metres())));
            along.stream()
                    .map(metres -> Math.round(metres / MILLIMETRE) * MILLIMETRE)
                    .filter(metres -> metres >= 0 && metres <= segment.lengthMetres() + MILLIMETRE / 2)
                    .distinct()
                    .sorted()
                    .forEach(metres -> spots.add(new Spot(segment, Math.min(metres, segment.lengthMetres()))));
        });
        return spots;
    }
}
