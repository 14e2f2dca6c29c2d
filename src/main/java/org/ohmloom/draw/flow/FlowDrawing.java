package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.draw.Weight;
import org.ohmloom.draw.study.Named;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.PointId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Draws nodes, bands, contacts and numbers at their places. */
final class FlowDrawing {

    static final double NAME_MM = 2.2;
    static final double SMALL_MM = 1.8;

    /** Height that the label of a way needs above its band, mm. */
    static final double LABEL_MM = 3.2;

    private static final double NEARLY_FULL_RATIO = 0.8;
    private static final double ROUND_MM = 1.2;
    private static final double DOT_MM = 0.75;

    private final Analysis analysis;
    private final FlowWidths widths;
    private final SceneFonts fonts;
    private final List<Item> items = new ArrayList<>();
    private final List<Item> dots = new ArrayList<>();

    FlowDrawing(Analysis analysis, FlowWidths widths, SceneFonts fonts) {
        this.analysis = analysis;
        this.widths = widths;
        this.fonts = fonts;
    }

    /** Everything drawn so far; the dots of points on top, so that they can be picked at the edge of a node. */
    List<Item> items() {
        List<Item> all = new ArrayList<>(items);
        all.addAll(dots);
        return all;
    }

    /** A text in the language of the drawing. */
    String said(Text text) {
        return fonts.said(text);
    }

    /** Width of the box of a node, mm. */
    double nodeMm(FlowNode node) {
        return node.isPoint() ? fonts.widthMm(node.id(), Weight.BOLD, NAME_MM) + 3.4 : FlowPlaces.NODE_MM;
    }

    /** Width of the label of a way, mm. */
    double labelMm(FlowEdge edge) {
        return fonts.widthMm(widest(edge), Weight.REGULAR, SMALL_MM) + 2;
    }

    /** The label with the longest number any state may give, so that the picture is the same in all of them. */
    private static String widest(FlowEdge edge) {
        return name(edge) + "  → 88.8 mA";
    }

    private static String name(FlowEdge edge) {
        return edge.lead().branch().element().map(ElementId::value).orElse("");
    }

    void node(FlowSlot slot, Extent box) {
        FlowNode node = slot.node().orElseThrow();
        Optional<String> id = Optional.of(node.id());
        Optional<String> words = Optional.of(node.name().isEmpty() ? node.key() : node.key() + ", " + node.name());
        Fill fill =
                switch (node.role()) {
                    case SOURCE, SINK -> Fill.of(Ink.TABLE_HEAD, Ink.FRAME, 0.5);
                    case LOAD -> Fill.of(Ink.COMPONENT, Ink.COMPONENT_EDGE, 0.5);
                    case DEVICE -> Fill.of(Ink.CONNECTOR, Ink.CONNECTOR_EDGE, 0.25);
                    case JUNCTION -> Fill.of(Ink.PLATE, Ink.SPLICE, 0.35);
                    case GROUND -> Fill.of(Ink.PLATE, Ink.EARTH, 0.35);
                };
        double corner = node.role() == FlowNode.Role.LOAD ? 4 : node.isPoint() ? 1.4 : ROUND_MM;
        items.add(new Item(Layer.CONNECTORS, new Box(box, corner, fill), id, words));
        if (node.role() == FlowNode.Role.GROUND) {
            items.add(new Item(
                    Layer.CONNECTORS,
                    Line.of(
                            0.9,
                            Ink.EARTH,
                            new Point(box.leftMm() + 3, box.bottomMm() - 0.9),
                            new Point(box.rightMm() - 3, box.bottomMm() - 0.9)),
                    id,
                    words));
        }
        boolean named = !node.isPoint() && !node.name().isEmpty();
        double middle = (box.topMm() + box.bottomMm()) / 2;
        double base = named ? middle - 0.4 : middle + NAME_MM / 2;
        text(title(node), box, base, NAME_MM, Weight.BOLD, Ink.TEXT, id, words);
        if (named) {
            text(node.name(), box, middle + 3, SMALL_MM, Weight.REGULAR, Ink.SOFT_TEXT, id, words);
        }
    }

    private static String title(FlowNode node) {
        boolean pole = node.role() == FlowNode.Role.SOURCE || node.role() == FlowNode.Role.SINK;
        return pole ? node.key() : node.id();
    }

    private void text(
            String text,
            Extent box,
            double baseMm,
            double heightMm,
            Weight weight,
            Ink ink,
            Optional<String> id,
            Optional<String> words) {
        String cut = cut(text, weight, heightMm, box.widthMm() - 1.6);
        Point at = new Point(box.centre().xMm(), baseMm);
        items.add(new Item(Layer.CONNECTORS, text(cut, at, heightMm, Anchor.MIDDLE, weight, ink), id, words));
    }

    org.ohmloom.draw.Text text(String text, Point at, double heightMm, Anchor anchor, Weight weight, Ink ink) {
        return new org.ohmloom.draw.Text(
                text, at, heightMm, fonts.widthMm(text, weight, heightMm), anchor, 0, weight, ink);
    }

    private String cut(String text, Weight weight, double heightMm, double roomMm) {
        String cut = text;
        while (cut.length() > 1 && fonts.widthMm(cut, weight, heightMm) > roomMm) {
            String bare = cut.endsWith("…") ? cut.substring(0, cut.length() - 1) : cut;
            cut = bare.substring(0, bare.offsetByCodePoints(bare.length(), -1)).stripTrailing() + "…";
        }
        return cut;
    }

    /** The band of a way, shared out among its wires, with contacts and the label. */
    void way(FlowEdge edge, List<FlowHop> way, FlowPlaces places) {
        double kept = widths.keptMm(edge);
        List<Point> line = places.line(way, kept);
        List<FlowEdge.Step> conductors =
                edge.steps().stream().filter(FlowEdge.Step::isConductor).toList();
        boolean straight = way.get(0).from().node().filter(edge.from()::equals).isPresent();
        List<FlowEdge.Step> steps = straight ? edge.steps() : edge.reversed().steps();
        List<FlowEdge.Step> bands = conductors.isEmpty() ? List.of(edge.lead()) : ordered(steps);
        for (int k = 0; k < bands.size(); k++) {
            List<Point> part = part(line, k / (double) bands.size(), (k + 1) / (double) bands.size());
            band(edge, bands.get(k), part);
        }
        contacts(edge, steps, way, places, kept, line);
        label(edge, way.get(0), places.begins(way.get(0), kept), kept, straight);
        dot(straight ? edge.start() : edge.end(), places.begins(way.get(0), kept), edge);
        dot(straight ? edge.end() : edge.start(), places.ends(way, kept), edge);
    }

    private static List<FlowEdge.Step> ordered(List<FlowEdge.Step> steps) {
        return steps.stream().filter(FlowEdge.Step::isConductor).toList();
    }

    private void band(FlowEdge edge, FlowEdge.Step step, List<Point> line) {
        Branch branch = step.branch();
        Optional<String> id = branch.element().map(ElementId::value);
        boolean nothing = Math.abs(widths.amps(edge)) < FlowWidths.NOTHING_AMPS;
        double use = useRatio(branch);
        Ink ink = nothing ? Ink.RULE : use > 1 ? Ink.CAUTION : ink(branch);
        double widthMm = nothing ? FlowWidths.LEAST_MM : widths.shownMm(edge);
        items.add(new Item(
                Layer.WIRES,
                new Line(line, widthMm, ink, LinePattern.CONTINUOUS),
                id,
                Optional.of(words(edge, step, use))));
        if (use >= NEARLY_FULL_RATIO && !nothing) {
            items.add(new Item(
                    Layer.WIRES,
                    new Line(line, Math.max(0.2, widthMm / 4), Ink.GROUND, LinePattern.DASHED),
                    Optional.empty(),
                    Optional.empty()));
        }
    }

    private Optional<Wire> wire(Branch branch) {
        return branch.element()
                .filter(WireId.class::isInstance)
                .flatMap(id -> analysis.harness().wires().find((WireId) id));
    }

    private Ink ink(Branch branch) {
        return wire(branch).map(wire -> SignalLook.of(wire.signalClass()).ink()).orElse(Ink.RETURN);
    }

    /** Largest lasting current of a wire as a share of what it may carry; 0 where that is not known. */
    private double useRatio(Branch branch) {
        return wire(branch)
                .map(wire -> analysis.ratings().get(wire.id()))
                .flatMap(rating -> rating.ampacity().map(limit -> rating.worstAmps() / limit.limitAmps()))
                .orElse(0.0);
    }

    private String words(FlowEdge edge, FlowEdge.Step step, double useRatio) {
        Branch branch = step.branch();
        List<Text> what = new ArrayList<>();
        what.add(Text.of(
                branch.element().map(ElementId::value).orElse(branch.id().value())));
        wire(branch).ifPresent(wire -> {
            what.add(SignalLook.of(wire.signalClass()).word());
            WireRating rating = analysis.ratings().get(wire.id());
            if (rating != null) {
                what.add(Text.of(rating.gauge().text().replace("mm2", "mm²")));
            }
        });
        Optional<Solution> shown = widths.shown(edge);
        Text all = shown.flatMap(solution -> solution.flow(branch.id()))
                .map(flow -> FlowTexts.text(
                        "carries",
                        Text.joined(", ", what),
                        Formats.amps(Math.abs(flow.amps())),
                        Formats.amps(flow.rmsAmps()),
                        Formats.volts(Math.abs(flow.dropVolts()))))
                .orElse(Text.joined(", ", what));
        Text placed = shown.map(solution -> FlowTexts.text(
                        "in-state",
                        all,
                        Named.state(analysis.harness(), solution.network().state())))
                .orElse(all);
        return fonts.said(useRatio > 0 ? FlowTexts.text("at-worst", placed, Formats.percent(useRatio)) : placed);
    }

    private void contacts(
            FlowEdge edge,
            List<FlowEdge.Step> steps,
            List<FlowHop> way,
            FlowPlaces places,
            double kept,
            List<Point> line) {
        int conductors = ordered(steps).size();
        int passed = 0;
        int atStart = 0;
        int atEnd = (int) steps.stream().filter(FlowEdge.Step::isContact).count();
        for (FlowEdge.Step step : steps) {
            if (step.isConductor()) {
                passed++;
            } else if (step.isContact()) {
                atEnd--;
                Point at = passed == 0
                        ? places.contactAtStart(way.get(0), kept, atStart++)
                        : passed == conductors
                                ? places.contactAtEnd(way, kept, atEnd)
                                : part(line, passed / (double) conductors, passed / (double) conductors)
                                        .get(0);
                items.add(new Item(
                        Layer.CONNECTORS,
                        new Disc(at, DOT_MM, Fill.of(Ink.PLATE, Ink.CONNECTOR_EDGE, 0.25)),
                        step.branch().element().map(ElementId::value),
                        Optional.of(words(edge, step, 0))));
            }
        }
    }

    private void label(FlowEdge edge, FlowHop first, Point begin, double kept, boolean straight) {
        double amps = widths.amps(edge);
        String number = Math.abs(amps) < FlowWidths.NOTHING_AMPS
                ? ""
                : "  " + (amps < 0 == straight ? "← " : "") + Formats.amps(Math.abs(amps));
        String label = name(edge) + number;
        if (!label.isBlank()) {
            items.add(new Item(
                    Layer.NUMBERS,
                    text(
                            label,
                            new Point(begin.xMm() + 1.4, begin.yMm() - kept / 2 - 0.7),
                            SMALL_MM,
                            Anchor.START,
                            Weight.REGULAR,
                            number.isEmpty() ? Ink.SOFT_TEXT : Ink.TEXT),
                    edge.lead().branch().element().map(ElementId::value),
                    Optional.of(words(edge, edge.lead(), 0))));
        }
    }

    private void dot(PointId point, Point at, FlowEdge edge) {
        Text words = widths.shown(edge)
                .map(solution -> solution.volts(point))
                .filter(OptionalDouble::isPresent)
                .map(found -> FlowTexts.text("point-volts", point, Formats.volts(found.getAsDouble())))
                .orElse(FlowTexts.text("point", point));
        dots.add(new Item(
                Layer.CONNECTORS,
                new Disc(at, DOT_MM, Fill.of(Ink.SPLICE)),
                Optional.of(point.value()),
                Optional.of(fonts.said(words))));
    }

    /** The part of a line between two shares of its length; one point where they are the same. */
    static List<Point> part(List<Point> line, double from, double to) {
        double whole = 0;
        for (int k = 1; k < line.size(); k++) {
            whole += line.get(k - 1).distanceMm(line.get(k));
        }
        List<Point> part = new ArrayList<>(List.of(at(line, from * whole)));
        double along = 0;
        for (int k = 1; k < line.size(); k++) {
            along += line.get(k - 1).distanceMm(line.get(k));
            if (along > from * whole && along < to * whole) {
                part.add(line.get(k));
            }
        }
        if (to > from) {
            part.add(at(line, to * whole));
        }
        return part;
    }

    private static Point at(List<Point> line, double alongMm) {
        double left = alongMm;
        for (int k = 1; k < line.size(); k++) {
            double stretch = line.get(k - 1).distanceMm(line.get(k));
            if (left <= stretch && stretch > 0) {
                return line.get(k - 1).towards(line.get(k), left / stretch);
            }
            left -= stretch;
        }
        return line.get(line.size() - 1);
    }
}
