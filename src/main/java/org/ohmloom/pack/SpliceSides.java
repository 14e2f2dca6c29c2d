package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** From which side each wire comes into a splice, told from its way over the segments. */
final class SpliceSides {
    private static final String UNKNOWN = "way unknown";

    /** A wire whose ends both lie where the splice lies. */
    private static final String HERE = "from there";

    private final Harness harness;
    private final Routes routes;

    SpliceSides(Harness harness, Routes routes) {
        this.harness = harness;
        this.routes = routes;
    }

    /**
     * Wires that come from one side.
     *
     * @param from  where from: "B1", the breakout the segment leads to
     * @param wires the wires
     */
    record Side(String from, List<Wire> wires) {
        Side {
            wires = List.copyOf(wires);
        }

        double areaMm2() {
            return wires.stream()
                    .flatMap(wire -> wire.gauge().stream())
                    .mapToDouble(gauge -> gauge.nominalAreaMm2())
                    .sum();
        }
    }

    /** The sides of a splice with these wires, the one with most copper first. */
    List<Side> of(Splice splice, List<Wire> wires) {
        Map<String, List<Wire>> bySide = new TreeMap<>(NaturalOrder.INSTANCE);
        for (Wire wire : wires) {
            bySide.computeIfAbsent(from(splice, wire), key -> new ArrayList<>()).add(wire);
        }
        List<Side> sides = new ArrayList<>();
        bySide.forEach((from, members) -> sides.add(new Side(from, members)));
        sides.sort(Comparator.comparingDouble((Side side) -> -side.areaMm2()));
        return sides;
    }

    /** How the wires meet: as entered, otherwise end where all come from one side; empty while ways are unknown. */
    static Optional<Splice.Form> form(Splice splice, List<Side> sides) {
        if (splice.form().isPresent()) {
            return splice.form();
        }
        boolean known =
                !sides.isEmpty() && sides.stream().noneMatch(side -> side.from().equals(UNKNOWN));
        return known ? Optional.of(sides.size() == 1 ? Splice.Form.END : Splice.Form.IN_LINE) : Optional.empty();
    }

    private String from(Splice splice, Wire wire) {
        Route route = routes.of(wire.id()).orElse(null);
        if (route == null || route.segments().isEmpty()) {
            return route == null ? UNKNOWN : HERE;
        }
        WireEnd here = new WireEnd.AtSplice(splice.id());
        boolean starts = wire.from().equals(here);
        int count = route.segments().size();
        SegmentId first = route.segments().get(starts ? 0 : count - 1);
        Optional<SegmentId> next =
                count > 1 ? Optional.of(route.segments().get(starts ? 1 : count - 2)) : Optional.empty();
        if (splice.place().orElse(null) instanceof Place.OnSegment on
                && on.segment().equals(first)) {
            double stretch = route.stretchMetres().get(starts ? 0 : count - 1);
            return along(on, next, starts ? wire.to() : wire.from(), stretch).value();
        }
        return splice.place().orElse(null) instanceof Place.AtBreakout at
                ? other(harness.segments().get(first), at.breakout()).value()
                : first.value();
    }

    /** The end of the splice's own segment that a wire leaves by. */
    private BreakoutId along(Place.OnSegment on, Optional<SegmentId> next, WireEnd there, double stretchMetres) {
        BundleSegment segment = harness.segments().get(on.segment());
        if (next.isPresent()) {
            BundleSegment beyond = harness.segments().get(next.get());
            return beyond.from().equals(segment.from()) || beyond.to().equals(segment.from())
                    ? segment.from()
                    : segment.to();
        }
        if (there instanceof WireEnd.AtSplice other
                && harness.splices().get(other.splice()).place().orElse(null) instanceof Place.OnSegment at
                && at.segment().equals(on.segment())) {
            return at.distanceMetres() < on.distanceMetres() ? segment.from() : segment.to();
        }
        double toEnd = segment.lengthMetres() - on.distanceMetres();
        return Math.abs(stretchMetres - on.distanceMetres()) <= Math.abs(stretchMetres - toEnd)
                ? segment.from()
                : segment.to();
    }

    private static BreakoutId other(BundleSegment segment, BreakoutId end) {
        return segment.from().equals(end) ? segment.to() : segment.from();
    }
}
