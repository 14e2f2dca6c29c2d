package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.bundle.section.LabelPlan;
import org.ohmloom.graph.Route;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.review.Evidence;

/** What lies along the segments: splices by their distance, and how many wires are marked where. */
final class AlongRuns {

    private static final double STEP_MM = 20;

    private final Harness harness;
    private final Evidence evidence;
    private final Map<SegmentId, List<Splice>> splices = new TreeMap<>();
    private final Map<SegmentId, SortedMap<Long, Integer>> markings = new TreeMap<>();

    AlongRuns(Harness harness, Evidence evidence) {
        this.harness = harness;
        this.evidence = evidence;
        for (Splice splice : harness.splices().all()) {
            if (splice.place().orElse(null) instanceof Place.OnSegment on) {
                splices.computeIfAbsent(on.segment(), id -> new ArrayList<>()).add(splice);
            }
        }
        harness.wires().all().stream().filter(wire -> !wire.existing()).forEach(this::mark);
    }

    List<Splice> splices(SegmentId segment) {
        return splices.getOrDefault(segment, List.of());
    }

    /** Distance of a splice from the from end of its segment, mm. */
    static double atMm(Splice splice) {
        return splice.place().orElse(null) instanceof Place.OnSegment on ? on.distanceMetres() * 1000 : 0;
    }

    /** How many wires are marked at which distance from the segment's from end, mm. */
    SortedMap<Long, Integer> markings(SegmentId segment) {
        return markings.getOrDefault(segment, new TreeMap<>());
    }

    /** Puts the markings of a wire on its way, each at the share of the way it has of the cut length. */
    private void mark(Wire wire) {
        Route route = evidence.routes().of(wire.id()).orElse(null);
        if (route == null
                || route.segments().isEmpty()
                || evidence.lengths().of(wire.id()).isEmpty()) {
            return;
        }
        double cutMetres = evidence.lengths().of(wire.id()).get().metres();
        LabelPlan plan =
                LabelPlan.of(wire, cutMetres, harness, evidence.tables().fabrication());
        List<Boolean> forwards = senses(route);
        for (double metres : plan.metres()) {
            double left = Math.min(1, metres / cutMetres) * route.lengthMetres();
            for (int k = 0; k < route.segments().size(); k++) {
                double stretch = route.stretchMetres().get(k);
                if (left <= stretch || k == route.segments().size() - 1) {
                    put(route, k, forwards.get(k), Math.min(left, stretch));
                    break;
                }
                left -= stretch;
            }
        }
    }

    private void put(Route route, int k, boolean forward, double metres) {
        BundleSegment segment = harness.segments().get(route.segments().get(k));
        double skipped = k == 0 ? segment.lengthMetres() - route.stretchMetres().get(0) : 0;
        double along = skipped + metres;
        double fromMm = 1000 * (forward ? along : segment.lengthMetres() - along);
        long rounded = Math.round(fromMm / STEP_MM) * (long) STEP_MM;
        markings.computeIfAbsent(segment.id(), id -> new TreeMap<>()).merge(rounded, 1, Integer::sum);
    }

    /** For each segment of a way, whether it is passed from its from end. */
    private List<Boolean> senses(Route route) {
        List<Boolean> forwards = new ArrayList<>();
        List<BundleSegment> segments =
                route.segments().stream().map(harness.segments()::get).toList();
        BreakoutId at = segments.get(0).from();
        if (segments.size() > 1) {
            BundleSegment next = segments.get(1);
            boolean backwards = next.from().equals(at) || next.to().equals(at);
            at = backwards ? segments.get(0).to() : at;
        }
        for (BundleSegment segment : segments) {
            boolean forward = segment.from().equals(at);
            forwards.add(forward);
            at = forward ? segment.to() : segment.from();
        }
        return forwards;
    }
}
