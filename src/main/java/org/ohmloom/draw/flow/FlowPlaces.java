package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** Where everything of a plan lies, mm: columns beside one another, between them room for labels and curves. */
final class FlowPlaces {

    /** Width of the box of a node, mm. */
    static final double NODE_MM = 25;

    private static final double CURVE_MM = 10;
    private static final double LEAST_LEAD_MM = 2;
    private static final double ARRIVAL_MM = 1;
    private static final double CONTACT_MM = 2.2;
    private static final int CURVE_STEPS = 12;
    private static final double EDGE_MM = 3;

    private final FlowPlan plan;
    private final ToDoubleFunction<FlowNode> nodeMm;
    private final double topMm;
    private final List<Double> lefts = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();
    private final List<Double> leads = new ArrayList<>();
    private final Map<FlowSlot, Integer> columnOf = new HashMap<>();
    private final double widthMm;

    /**
     * The places.
     *
     * @param nodeMm  width of the box of a node, mm
     * @param labelMm width of the label of a way, mm
     * @param topMm   height kept free above, mm
     */
    FlowPlaces(FlowPlan plan, ToDoubleFunction<FlowNode> nodeMm, ToDoubleFunction<FlowEdge> labelMm, double topMm) {
        this.plan = plan;
        this.nodeMm = nodeMm;
        this.topMm = topMm;
        double x = EDGE_MM;
        for (int k = 0; k < plan.columns().size(); k++) {
            double width = 0;
            double lead = LEAST_LEAD_MM;
            for (FlowSlot slot : plan.columns().get(k)) {
                columnOf.put(slot, k);
                width = Math.max(width, slot.node().map(nodeMm::applyAsDouble).orElse(0.0));
                for (FlowSlot.Port port : slot.ports(false)) {
                    if (port.hop().first()) {
                        FlowEdge edge = port.hop().edge();
                        lead = Math.max(lead, labelMm.applyAsDouble(edge) + CONTACT_MM * contacts(edge, slot));
                    }
                }
            }
            double arrival = ARRIVAL_MM;
            for (FlowSlot slot : k + 1 < plan.columns().size() ? plan.columns().get(k + 1) : List.<FlowSlot>of()) {
                for (FlowSlot.Port port : slot.ports(true)) {
                    arrival = Math.max(
                            arrival,
                            ARRIVAL_MM + CONTACT_MM * contacts(port.hop().edge(), slot));
                }
            }
            lefts.add(x);
            widths.add(width);
            leads.add(lead);
            x += width + lead + CURVE_MM + arrival;
        }
        int last = plan.columns().size() - 1;
        widthMm = last < 0 ? 2 * EDGE_MM : lefts.get(last) + widths.get(last) + EDGE_MM + tail(last);
    }

    /** Count of contacts between a node and the first conductor of a way. */
    private static long contacts(FlowEdge edge, FlowSlot at) {
        List<FlowEdge.Step> steps = at.node().filter(edge.from()::equals).isPresent()
                ? edge.steps()
                : at.node().filter(edge.to()::equals).isPresent()
                        ? edge.reversed().steps()
                        : List.of();
        return steps.stream()
                .takeWhile(step -> !step.isConductor())
                .filter(FlowEdge.Step::isContact)
                .count();
    }

    private double tail(int column) {
        boolean leaves = plan.columns().get(column).stream()
                .anyMatch(slot -> !slot.ports(false).isEmpty());
        return leaves ? leads.get(column) : 0;
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return EDGE_MM
                + plan.columns().stream()
                        .flatMap(List::stream)
                        .mapToDouble(slot -> topMm + slot.topMm() + slot.heightMm())
                        .max()
                        .orElse(topMm);
    }

    /** The box of the slot of a node. */
    Extent box(FlowSlot slot) {
        int column = columnOf.get(slot);
        double width = nodeMm.applyAsDouble(slot.node().orElseThrow());
        double left = lefts.get(column) + (widths.get(column) - width) / 2;
        return Extent.at(left, topMm + slot.topMm(), width, slot.heightMm());
    }

    private double leftMm(FlowSlot slot) {
        return slot.node().isPresent() ? box(slot).leftMm() : lefts.get(columnOf.get(slot));
    }

    private double rightMm(FlowSlot slot) {
        int column = columnOf.get(slot);
        return slot.node().isPresent() ? box(slot).rightMm() : lefts.get(column) + widths.get(column);
    }

    /** Middle of the band where a stretch begins. */
    Point begins(FlowHop hop, double keptMm) {
        return new Point(rightMm(hop.from()), topMm + hop.from().bottomMm(hop, false) - keptMm / 2);
    }

    /** Middle of the band where a stretch ends. */
    Point ends(FlowHop hop, double keptMm) {
        return new Point(leftMm(hop.to()), topMm + hop.to().bottomMm(hop, true) - keptMm / 2);
    }

    /** The line of a stretch: level past its label, then a curve, then level into the next column. */
    List<Point> line(FlowHop hop, double keptMm) {
        Point begin = begins(hop, keptMm);
        Point end = ends(hop, keptMm);
        int column = columnOf.get(hop.from());
        double from = lefts.get(column) + widths.get(column) + leads.get(column);
        double to = from + CURVE_MM;
        List<Point> line = new ArrayList<>(List.of(begin));
        for (int k = 0; k <= CURVE_STEPS; k++) {
            double share = k / (double) CURVE_STEPS;
            double eased = share * share * (3 - 2 * share);
            line.add(new Point(from + (to - from) * share, begin.yMm() + (end.yMm() - begin.yMm()) * eased));
        }
        line.add(end);
        return line;
    }

    /** The whole line of a way, from where it begins to where it ends. */
    List<Point> line(List<FlowHop> way, double keptMm) {
        List<Point> line = new ArrayList<>();
        for (FlowHop hop : way) {
            List<Point> stretch = line(hop, keptMm);
            if (hop.last() && turns(way)) {
                List<Point> back = new ArrayList<>(stretch);
                Collections.reverse(back);
                line.addAll(back);
            } else {
                line.addAll(stretch);
            }
        }
        return line;
    }

    /** Whether a way begins and ends in the same column. */
    private static boolean turns(List<FlowHop> way) {
        return way.size() == 2 && way.get(0).to() == way.get(1).to();
    }

    /** Middle of the band where a way ends. */
    Point ends(List<FlowHop> way, double keptMm) {
        FlowHop last = way.get(way.size() - 1);
        return turns(way) ? begins(last, keptMm) : ends(last, keptMm);
    }

    /** Where the contacts at the beginning of a way are drawn, the nearest to its node last. */
    Point contactAtStart(FlowHop hop, double keptMm, int number) {
        Point begin = begins(hop, keptMm);
        int column = columnOf.get(hop.from());
        double lead = lefts.get(column) + widths.get(column) + leads.get(column);
        return new Point(lead - CONTACT_MM * number - 1, begin.yMm());
    }

    /** Where the contacts at the end of a way are drawn. */
    Point contactAtEnd(List<FlowHop> way, double keptMm, int number) {
        FlowHop last = way.get(way.size() - 1);
        return turns(way)
                ? contactAtStart(last, keptMm, number)
                : ends(last, keptMm).plus(-CONTACT_MM * number - 1.6, 0);
    }
}
