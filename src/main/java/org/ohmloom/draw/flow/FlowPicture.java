package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Weight;
import org.ohmloom.draw.study.Named;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.PointDrop;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** The currents of a harness in one state, or the largest of all, with what can be asked of the picture. Immutable. */
public final class FlowPicture {

    /** Width over height from which nodes get more room above one another. */
    private static final double WIDE_RATIO = 1.8;

    private static final double MOST_GAP_MM = 14;
    private static final double HEAD_MM = 13;
    private static final double EDGE_MM = 3;
    private static final double TITLE_MM = 2.8;
    private static final double SAMPLE_MM = 12;

    private final Analysis analysis;
    private final FlowTrails trails;
    private final Scene scene;

    private FlowPicture(Analysis analysis, FlowTrails trails, Scene scene) {
        this.analysis = analysis;
        this.trails = trails;
        this.scene = scene;
    }

    /**
     * Lays the picture out.
     *
     * @param state the operating state; empty for the largest current of all
     */
    public static FlowPicture of(Analysis analysis, Optional<StateId> state, SceneFonts fonts) {
        Collection<Solution> all = analysis.evidence().solutions().values();
        FlowGraph graph = FlowGraph.of(analysis.harness(), analysis.evidence().drawn(), all);
        FlowWidths widths = new FlowWidths(graph, all, state);
        FlowDrawing drawing = new FlowDrawing(analysis, widths, fonts);
        FlowPlan plan = new FlowPlan(graph, widths::keptMm, FlowDrawing.LABEL_MM, FlowPlan.LEAST_GAP_MM);
        FlowPlaces places = new FlowPlaces(plan, drawing::nodeMm, drawing::labelMm, HEAD_MM);
        double wide = places.widthMm() / places.heightMm() / WIDE_RATIO;
        if (wide > 1) {
            double gapMm = Math.min(MOST_GAP_MM, FlowPlan.LEAST_GAP_MM * wide);
            plan = new FlowPlan(graph, widths::keptMm, FlowDrawing.LABEL_MM, gapMm);
            places = new FlowPlaces(plan, drawing::nodeMm, drawing::labelMm, HEAD_MM);
        }
        FlowPlaces found = places;
        plan.ways().forEach((edge, way) -> drawing.way(edge, way, found));
        plan.columns().forEach(column -> column.stream()
                .filter(slot -> slot.node().isPresent())
                .forEach(slot -> drawing.node(slot, found.box(slot))));
        List<Item> items = new ArrayList<>(drawing.items());
        double head = head(analysis, state, widths, drawing, items);
        Scene scene = new Scene(Math.max(places.widthMm(), head), places.heightMm(), items);
        return new FlowPicture(analysis, new FlowTrails(graph, plan, places, widths, fonts), scene);
    }

    private static double head(
            Analysis analysis, Optional<StateId> state, FlowWidths widths, FlowDrawing drawing, List<Item> items) {
        Text title = state.map(id -> FlowTexts.text("currents-in", Named.state(analysis.harness(), id)))
                .orElse(FlowTexts.text("currents-largest"));
        Point at = new Point(EDGE_MM, EDGE_MM + TITLE_MM);
        var heading = drawing.text(drawing.said(title), at, TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        items.add(Item.of(Layer.SHEET, heading));
        Text about = FlowTexts.text(state.isPresent() ? "width-mean" : "width-rms");
        var line = drawing.text(
                drawing.said(about),
                at.plus(0, 4.2),
                FlowDrawing.SMALL_MM,
                Anchor.START,
                Weight.REGULAR,
                Ink.SOFT_TEXT);
        items.add(Item.of(Layer.SHEET, line));
        double x = EDGE_MM + line.widthMm() + 6;
        for (double sample : widths.samples()) {
            Point from = new Point(x, at.yMm() + 3.5);
            double thick = widths.widthMm(sample);
            items.add(Item.of(Layer.SHEET, Line.of(thick, Ink.FEED, from, from.plus(SAMPLE_MM, 0))));
            var text = drawing.text(
                    Formats.amps(sample),
                    from.plus(SAMPLE_MM + 1.2 + thick / 2, 0.7),
                    FlowDrawing.SMALL_MM,
                    Anchor.START,
                    Weight.REGULAR,
                    Ink.SOFT_TEXT);
            items.add(Item.of(Layer.SHEET, text));
            x += SAMPLE_MM + thick + text.widthMm() + 6;
        }
        return Math.max(x, heading.widthMm() + 2 * EDGE_MM);
    }

    /** The picture. */
    public Scene scene() {
        return scene;
    }

    /** The way of the current through something, from its source and back, with the volts at each point; empty where none flows. */
    public List<Item> trail(String id) {
        return trails.of(id);
    }

    /** Whether an id is a point whose voltage can be read. */
    public boolean isPoint(String id) {
        return analysis.evidence().drawn().points().contains(new PointId(id));
    }

    /** The points whose voltage can be read, in order. */
    public List<PointId> points() {
        return List.copyOf(analysis.evidence().drawn().points());
    }

    /** The point all voltages are relative to; empty without a source. */
    public Optional<PointId> datum() {
        return analysis.evidence().drawn().datum();
    }

    /** The point of a place by its text, such as {@code X1.3} or {@code SP1}, be it that the point is named by another place. */
    public Optional<PointId> pointAt(String place) {
        return isPoint(place)
                ? Optional.of(new PointId(place))
                : analysis.evidence().drawn().index().at(place);
    }

    /** The voltage between two points in a state; empty where one of them has none. */
    public Optional<PointDrop> drop(PointId from, PointId to, StateId state) {
        return analysis.solution(state).flatMap(solution -> PointDrop.between(from, to, solution));
    }

    /** The largest voltage between two points in any state; empty where one of them has none. */
    public Optional<PointDrop> largestDrop(PointId from, PointId to) {
        return PointDrop.largest(from, to, analysis.evidence().solutions().values());
    }

    /** The way between two points as marks, with the volts along it. */
    public List<Item> trail(PointDrop drop) {
        return trails.of(drop);
    }

    /** Name of a state. */
    public String stateName(StateId state) {
        return Named.state(analysis.harness(), state);
    }
}
