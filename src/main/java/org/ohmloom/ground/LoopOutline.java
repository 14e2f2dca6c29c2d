package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Position;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * The outline of a loop on the layout board: along the breakouts its wires pass and the ground points of its joints and straps,
 * straight from one to the next, so straight through chassis too. Its area by the shoelace formula, scaled by the square of the
 * length of the segments over their length on the board.
 *
 * <p>Only breakouts a person gave a position count. Empty when a wire of the loop has no way, or a breakout or ground point no
 * position.
 */
final class LoopOutline {

    private static final double METRES_PER_MM = 1e-3;

    private final Harness harness;
    private final Routes routes;

    /**
     * The outline of one loop.
     *
     * @param squareMetres its area
     * @param how          in words
     */
    record Outline(double squareMetres, Text how) {}

    LoopOutline(Harness harness, Routes routes) {
        this.harness = harness;
        this.routes = routes;
    }

    /** Corners in order, and the length of wires between them as entered and as drawn, m. */
    private static final class Walk {
        private final List<Position> corners = new ArrayList<>();
        private double entered;
        private double drawn;
    }

    /** The outline of a loop; empty when not all of it has a position. */
    Optional<Outline> of(ReturnLoop loop, List<Branch> branches) {
        Walk walk = new Walk();
        for (int k = 0; k < branches.size(); k++) {
            Branch branch = branches.get(k);
            boolean forward = branch.from().equals(loop.points().get(k));
            if (!add(walk, branch, forward)) {
                return Optional.empty();
            }
        }
        int last = walk.corners.size() - 1;
        if (last < 1) {
            return Optional.empty();
        }
        if (walk.corners.get(last).equals(walk.corners.get(0))) {
            walk.corners.remove(last);
        }
        double scale = walk.drawn > 0 ? walk.entered / walk.drawn : 1;
        return Optional.of(new Outline(
                shoelace(walk.corners) * scale * scale, ReturnTexts.text("area.outline", walk.corners.size())));
    }

    /** Area within a polygon, m2, of corners in mm: half the sum of x(k) y(k+1) - x(k+1) y(k). */
    static double shoelace(List<Position> corners) {
        double sum = 0;
        for (int k = 0; k < corners.size(); k++) {
            Position here = corners.get(k);
            Position next = corners.get((k + 1) % corners.size());
            sum += here.xMm() * next.yMm() - next.xMm() * here.yMm();
        }
        return Math.abs(sum) / 2 * METRES_PER_MM * METRES_PER_MM;
    }

    private boolean add(Walk walk, Branch branch, boolean forward) {
        return switch (branch.kind()) {
            case WIRE, SHIELD -> addWire(walk, (WireId) branch.element().orElseThrow(), forward);
            case STRAP -> addStrap(walk, (StrapId) branch.element().orElseThrow(), forward);
            case JOINT -> branch.element()
                    .filter(GroundPointId.class::isInstance)
                    .map(id -> addAll(walk, List.of(at((GroundPointId) id)), true))
                    .orElse(true);
            default -> true;
        };
    }

    private boolean addStrap(Walk walk, StrapId id, boolean forward) {
        Strap strap = harness.straps().get(id);
        return addAll(walk, List.of(at(strap.from()), at(strap.to())), forward);
    }

    private boolean addWire(Walk walk, WireId id, boolean forward) {
        Wire wire = harness.wires().get(id);
        Optional<Route> route = routes.of(id);
        if (route.isEmpty()) {
            return false;
        }
        List<Optional<Position>> corners = new ArrayList<>(List.of(at(wire.from())));
        List<SegmentId> segments = route.get().segments();
        for (int k = 0; k + 1 < segments.size(); k++) {
            corners.add(shared(segments.get(k), segments.get(k + 1)).flatMap(this::at));
        }
        corners.add(at(wire.to()));
        if (!addAll(walk, corners, forward)) {
            return false;
        }
        walk.entered += route.get().lengthMetres();
        for (int k = 0; k + 1 < corners.size(); k++) {
            walk.drawn += METRES_PER_MM
                    * distanceMm(
                            corners.get(k).orElseThrow(), corners.get(k + 1).orElseThrow());
        }
        return true;
    }

    private static double distanceMm(Position one, Position other) {
        return Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm());
    }

    private static boolean addAll(Walk walk, List<Optional<Position>> places, boolean forward) {
        if (places.stream().anyMatch(Optional::isEmpty)) {
            return false;
        }
        for (int k = 0; k < places.size(); k++) {
            Position next = places.get(forward ? k : places.size() - 1 - k).orElseThrow();
            int last = walk.corners.size() - 1;
            if (last < 0 || !walk.corners.get(last).equals(next)) {
                walk.corners.add(next);
            }
        }
        return true;
    }

    private Optional<BreakoutId> shared(SegmentId one, SegmentId other) {
        BundleSegment first = harness.segments().get(one);
        BundleSegment second = harness.segments().get(other);
        Set<BreakoutId> ends = Set.of(second.from(), second.to());
        return List.of(first.to(), first.from()).stream().filter(ends::contains).findFirst();
    }

    private Optional<Position> at(BreakoutId breakout) {
        return Optional.ofNullable(harness.layout().get(breakout.value()));
    }

    private Optional<Position> at(GroundPointId ground) {
        return harness.grounds().get(ground).at().flatMap(this::at);
    }

    private Optional<Position> at(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return harness.breakout(harness.connectors().get(at.connector())).flatMap(this::at);
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return harness.components().get(at.component()).at().flatMap(this::at);
        }
        if (end instanceof WireEnd.AtGround at) {
            return at(at.ground());
        }
        if (end instanceof WireEnd.AtSplice at) {
            return harness.splices().get(at.splice()).place().flatMap(this::at);
        }
        return Optional.empty();
    }

    private Optional<Position> at(Place place) {
        if (place instanceof Place.AtBreakout at) {
            return at(at.breakout());
        }
        Place.OnSegment on = (Place.OnSegment) place;
        BundleSegment segment = harness.segments().get(on.segment());
        double share = Math.min(1, on.distanceMetres() / segment.lengthMetres());
        return at(segment.from()).flatMap(from -> at(segment.to())
                .map(to -> new Position(
                        from.xMm() + share * (to.xMm() - from.xMm()), from.yMm() + share * (to.yMm() - from.yMm()))));
    }
}
