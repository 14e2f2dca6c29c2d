package org.ohmloom.draw.flow;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.ElementId;
import org.ohmloom.solve.PointDrop;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;

/**
 * The way of a current: from a wire back along the largest current that comes to it, and on along the largest that leaves it, to the
 * poles of sources. In a component only what hangs together inside is followed, so that the coil of a relay does not lead into its
 * contact.
 */
final class FlowTrails {

    private static final double VOLTS_MM = 1.9;
    private static final double OVER_MM = 0.7;

    private final FlowGraph graph;
    private final FlowPlan plan;
    private final FlowPlaces places;
    private final FlowWidths widths;
    private final SceneFonts fonts;

    FlowTrails(FlowGraph graph, FlowPlan plan, FlowPlaces places, FlowWidths widths, SceneFonts fonts) {
        this.graph = graph;
        this.plan = plan;
        this.places = places;
        this.widths = widths;
        this.fonts = fonts;
    }

    /** The ways of the current through an element or a point, from source to return; empty where none flows. */
    List<FlowEdge> ways(String id) {
        Optional<FlowEdge> start = graph.edges().stream()
                .filter(edge -> concerns(edge, id))
                .filter(edge -> Math.abs(widths.amps(edge)) >= FlowWidths.NOTHING_AMPS)
                .max(Comparator.comparing((FlowEdge edge) -> isOn(edge, id))
                        .thenComparingDouble(edge -> Math.abs(widths.amps(edge))));
        return start.map(edge -> through(edge, widths.shown(edge).orElseThrow()))
                .orElse(List.of());
    }

    private static boolean isOn(FlowEdge edge, String id) {
        return edge.steps().stream()
                .flatMap(step -> step.branch().element().stream())
                .anyMatch(element -> element.value().equals(id));
    }

    private static boolean concerns(FlowEdge edge, String id) {
        return isOn(edge, id)
                || edge.from().id().equals(id)
                || edge.to().id().equals(id)
                || edge.start().value().equals(id)
                || edge.end().value().equals(id);
    }

    private List<FlowEdge> through(FlowEdge middle, Solution solution) {
        Deque<FlowEdge> ways = new ArrayDeque<>(List.of(middle));
        Set<FlowNode> seen = new HashSet<>(Set.of(middle.from(), middle.to()));
        for (boolean onward : new boolean[] {false, true}) {
            FlowEdge here = middle;
            Optional<FlowEdge> next = next(here, onward, solution, seen);
            while (next.isPresent()) {
                here = next.get();
                if (onward) {
                    ways.addLast(here);
                } else {
                    ways.addFirst(here);
                }
                seen.add(here.from());
                seen.add(here.to());
                next = next(here, onward, solution, seen);
            }
        }
        return List.copyOf(ways);
    }

    private Optional<FlowEdge> next(FlowEdge here, boolean onward, Solution solution, Set<FlowNode> seen) {
        boolean along = (here.amps(solution) > 0) == onward;
        FlowNode node = along ? here.to() : here.from();
        PointId entry = along ? here.end() : here.start();
        if (node.role() == FlowNode.Role.SOURCE || node.role() == FlowNode.Role.SINK) {
            return Optional.empty();
        }
        Set<PointId> inside = inside(node, entry, solution);
        return graph.edges().stream()
                .filter(edge -> edge != here)
                .filter(edge -> {
                    boolean leaves = (edge.amps(solution) > 0) == onward;
                    FlowNode near = leaves ? edge.from() : edge.to();
                    PointId at = leaves ? edge.start() : edge.end();
                    FlowNode far = leaves ? edge.to() : edge.from();
                    return near.equals(node)
                            && inside.contains(at)
                            && !seen.contains(far)
                            && Math.abs(edge.amps(solution)) >= FlowWidths.NOTHING_AMPS;
                })
                .max(Comparator.comparingDouble(edge -> Math.abs(edge.amps(solution))));
    }

    /** The points of a node that hang together with one of them inside it. */
    private Set<PointId> inside(FlowNode node, PointId entry, Solution solution) {
        Set<PointId> own = graph.points(node);
        Set<PointId> reached = new HashSet<>(Set.of(entry));
        Deque<PointId> waiting = new ArrayDeque<>(reached);
        List<Branch> branches = solution.network().all().stream()
                .filter(branch -> own.contains(branch.from()) && own.contains(branch.to()))
                .toList();
        while (!waiting.isEmpty()) {
            PointId point = waiting.remove();
            branches.stream()
                    .filter(branch -> branch.from().equals(point) || branch.to().equals(point))
                    .flatMap(branch -> Stream.of(branch.from(), branch.to()))
                    .filter(reached::add)
                    .forEach(waiting::add);
        }
        return reached;
    }

    /** The same as marks: the ways once more on top, and the volts at both ends of each. */
    List<Item> of(String id) {
        List<FlowEdge> ways = ways(id);
        if (ways.isEmpty()) {
            return List.of();
        }
        Optional<FlowEdge> asked =
                ways.stream().filter(edge -> concerns(edge, id)).findFirst();
        return marks(ways, widths.shown(asked.orElse(ways.get(0))).orElseThrow());
    }

    /** The ways that the way between two points goes along, with the volts of its state. */
    List<Item> of(PointDrop drop) {
        Set<BranchId> on = new HashSet<>();
        drop.parts().forEach(part -> on.add(part.flow().branch().id()));
        List<FlowEdge> ways = graph.edges().stream()
                .filter(edge -> edge.steps().stream()
                        .anyMatch(step -> on.contains(step.branch().id())))
                .toList();
        return marks(ways, drop.solution());
    }

    private List<Item> marks(List<FlowEdge> ways, Solution solution) {
        List<Item> lines = new ArrayList<>();
        List<Item> texts = new ArrayList<>();
        for (FlowEdge edge : ways) {
            List<FlowHop> way = plan.ways().get(edge);
            double kept = widths.keptMm(edge);
            Optional<String> element = edge.lead().branch().element().map(ElementId::value);
            lines.add(new Item(
                    Layer.WIRES,
                    new Line(
                            places.line(way, kept),
                            Math.max(OVER_MM, widths.shownMm(edge)),
                            Ink.CHART_FOURTH,
                            LinePattern.CONTINUOUS),
                    element,
                    Optional.empty()));
            boolean straight =
                    way.get(0).from().node().filter(edge.from()::equals).isPresent();
            volts(
                    solution,
                    straight ? edge.start() : edge.end(),
                    places.begins(way.get(0), kept),
                    Anchor.START,
                    kept,
                    texts);
            volts(solution, straight ? edge.end() : edge.start(), places.ends(way, kept), Anchor.END, kept, texts);
        }
        lines.addAll(texts);
        return lines;
    }

    private void volts(Solution solution, PointId point, Point at, Anchor anchor, double kept, List<Item> texts) {
        OptionalDouble volts = solution.volts(point);
        if (volts.isEmpty()) {
            return;
        }
        String words = Formats.volts(volts.getAsDouble());
        double width = fonts.widthMm(words, Weight.REGULAR, VOLTS_MM);
        Point base = at.plus(anchor == Anchor.START ? 1.6 : -1.6, kept / 2 + VOLTS_MM + 0.9);
        Text text = new Text(words, base, VOLTS_MM, width, anchor, 0, Weight.REGULAR, Ink.TEXT);
        Extent plate = text.bounds().grown(0.5);
        texts.add(Item.of(Layer.NUMBERS, new Box(plate, 0.6, Fill.of(Ink.PLATE, Ink.CHART_FOURTH, 0.2))));
        texts.add(Item.of(Layer.NUMBERS, text));
    }
}
