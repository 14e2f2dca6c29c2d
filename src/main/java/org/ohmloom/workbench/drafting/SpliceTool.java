package org.ohmloom.workbench.drafting;

import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.board.InsertSplice;
import org.ohmloom.graph.Route;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Cuts a wire where it is pointed at and joins its halves in a splice, at a breakout or along a segment. */
final class SpliceTool extends BoardTool {

    SpliceTool(Easel easel) {
        super(easel);
    }

    @Override
    public String key() {
        return "splice";
    }

    @Override
    public void hint() {
        easel().say("hint.splice");
    }

    @Override
    List<Point> targets() {
        return easel().firstMarks(Wire.class::isInstance).stream()
                .map(mark -> mark instanceof Line line
                        ? line.points().get(0).towards(line.points().get(1), 0.5)
                        : mark.bounds().centre())
                .toList();
    }

    @Override
    void put(Aim at) {
        Optional<Harness> harness = easel().harness();
        List<WireId> wires = wires(at);
        if (harness.isEmpty() || wires.isEmpty()) {
            easel().wrong(easel().words().get("splice.nothing"));
        } else if (wires.size() == 1) {
            insert(harness.get(), wires.get(0), at);
        } else {
            easel().choose(
                            at.scene(),
                            easel().words().get("splice.choose"),
                            wires,
                            0,
                            wire -> insert(harness.get(), wire, at));
        }
    }

    /** The wires meant: those drawn there, otherwise those of the bundle there; the selected one alone when it is among them. */
    private List<WireId> wires(Aim at) {
        List<String> here = easel().under(at.scene());
        List<WireId> drawn = here.stream()
                .filter(id -> easel().is(id, Wire.class::isInstance))
                .map(WireId::new)
                .toList();
        List<WireId> all = drawn.isEmpty() ? inBundle(here) : drawn;
        List<WireId> selected = all.stream()
                .filter(wire -> easel().selected().contains(wire.value()))
                .toList();
        return selected.isEmpty() ? all : selected;
    }

    private List<WireId> inBundle(List<String> here) {
        return easel().desk().analysis().map(Analysis::routes).stream()
                .flatMap(routes -> routes.wiresBySegment().entrySet().stream())
                .filter(each -> here.contains(each.getKey().value()))
                .flatMap(each -> each.getValue().stream())
                .filter(wire ->
                        easel().harness().filter(now -> now.wires().has(wire)).isPresent())
                .toList();
    }

    private void insert(Harness harness, WireId wire, Aim at) {
        Optional<Place> place = place(harness, wire, at);
        easel().apply(InsertSplice.on(harness, wire, place, fraction(harness, wire, place)));
        easel().say("splice.done", wire.value());
    }

    private Optional<Place> place(Harness harness, WireId wire, Aim at) {
        Aim exact = new Aim(easel().toBoard(at.scene()), at.scene());
        Optional<BoardPlaces.Joint> joint = easel().breakoutAt(exact, reachMm());
        List<String> here = easel().under(at.scene());
        Optional<BundleSegment> along = joint.isPresent()
                ? Optional.empty()
                : harness.segments().all().stream()
                        .filter(each -> here.contains(each.id().value()) || on(each, wire, at))
                        .findFirst();
        return along.<Place>map(
                        segment -> new Place.OnSegment(segment.id(), share(segment, at) * segment.lengthMetres()))
                .or(() -> easel().breakoutAt(exact, Double.MAX_VALUE)
                        .map(each -> new Place.AtBreakout(new BreakoutId(each.id()))));
    }

    /** Whether a place lies along a segment the wire goes over. */
    private boolean on(BundleSegment segment, WireId wire, Aim at) {
        Optional<Point> from = joint(segment.from());
        Optional<Point> to = joint(segment.to());
        return from.isPresent()
                && to.isPresent()
                && route(wire)
                        .filter(way -> way.segments().contains(segment.id()))
                        .isPresent()
                && at.scene().distanceMm(new Point(from.get().xMm(), to.get().yMm()), to.get()) < 6;
    }

    private Optional<Route> route(WireId wire) {
        return easel().desk().analysis().flatMap(results -> results.routes().of(wire));
    }

    private Optional<Point> joint(BreakoutId id) {
        return easel().places().flatMap(places -> places.joint(id.value()).map(each -> places.toScene(each.at())));
    }

    /** How far along a segment a place lies, from 0 to 1. */
    private double share(BundleSegment segment, Aim at) {
        double from = joint(segment.from()).map(Point::xMm).orElse(0.0);
        double to = joint(segment.to()).map(Point::xMm).orElse(0.0);
        double share = from == to ? 0.5 : (at.scene().xMm() - from) / (to - from);
        return Math.round(100 * Math.max(0, Math.min(1, share))) / 100.0;
    }

    /** Share of the wire's way before the cut. */
    private double fraction(Harness harness, WireId wire, Optional<Place> place) {
        Optional<Route> way = route(wire).filter(each -> each.lengthMetres() > 0);
        if (way.isEmpty() || place.isEmpty()) {
            return 0.5;
        }
        double before = 0;
        Optional<BreakoutId> end = Optional.empty();
        List<SegmentId> segments = way.get().segments();
        for (int k = 0; k < segments.size(); k++) {
            BundleSegment segment = harness.segments().get(segments.get(k));
            boolean forwards = k + 1 < segments.size()
                    ? touches(harness.segments().get(segments.get(k + 1)), segment.to())
                    : end.map(segment.from()::equals).orElse(true);
            BreakoutId start = forwards ? segment.from() : segment.to();
            if (place.get() instanceof Place.AtBreakout at && at.breakout().equals(start)) {
                return before / way.get().lengthMetres();
            }
            if (place.get() instanceof Place.OnSegment on && on.segment().equals(segment.id())) {
                double along = forwards ? on.distanceMetres() : segment.lengthMetres() - on.distanceMetres();
                return (before + along) / way.get().lengthMetres();
            }
            before += way.get().stretchMetres().get(k);
            end = Optional.of(forwards ? segment.to() : segment.from());
        }
        return place.get() instanceof Place.AtBreakout at
                        && end.filter(at.breakout()::equals).isPresent()
                ? 1
                : 0.5;
    }

    private static boolean touches(BundleSegment segment, BreakoutId breakout) {
        return segment.from().equals(breakout) || segment.to().equals(breakout);
    }

    @Override
    void preview(Graphics2D g, Aim at) {
        List<WireId> wires = wires(at);
        if (wires.size() == 1) {
            label(g, at.scene(), easel().words().get("splice.on", wires.get(0).value()));
        } else if (!wires.isEmpty()) {
            label(g, at.scene(), easel().words().get("splice.one-of", String.valueOf(wires.size())));
        }
    }
}
