package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Where a node stands, or a way passes a column: a box with ports one below the other on both sides. Moved while planning. */
final class FlowSlot {

    /**
     * Where a way touches it.
     *
     * @param hop      the stretch of the way that begins or ends here
     * @param heightMm height it takes up, mm
     */
    record Port(FlowHop hop, double heightMm) {}

    private final Optional<FlowNode> node;
    private final double leastMm;
    private final List<Port> left = new ArrayList<>();
    private final List<Port> right = new ArrayList<>();
    private double topMm;
    private int place;
    private double share;

    /**
     * A slot.
     *
     * @param leastMm its least height, mm
     */
    FlowSlot(Optional<FlowNode> node, double leastMm) {
        this.node = node;
        this.leastMm = leastMm;
    }

    Optional<FlowNode> node() {
        return node;
    }

    List<Port> ports(boolean leftSide) {
        return leftSide ? left : right;
    }

    double heightMm() {
        return Math.max(leastMm, Math.max(sum(left), sum(right)));
    }

    private static double sum(List<Port> ports) {
        return ports.stream().mapToDouble(Port::heightMm).sum();
    }

    double topMm() {
        return topMm;
    }

    void moveTo(double changedMm) {
        topMm = changedMm;
    }

    int place() {
        return place;
    }

    double share() {
        return share;
    }

    /** Takes its place in a column of so many. */
    void stand(int number, int count) {
        place = number;
        share = (number + 0.5) / count;
    }

    void sortPorts(boolean leftSide, ToDoubleFunction<FlowHop> wanted) {
        ports(leftSide).sort(Comparator.comparingDouble(port -> wanted.applyAsDouble(port.hop())));
    }

    /** The lower edge of the port of a hop, on which its band lies, mm below the upper side of the picture. */
    double bottomMm(FlowHop hop, boolean leftSide) {
        List<Port> ports = ports(leftSide);
        double y = topMm + (heightMm() - sum(ports)) / 2;
        for (Port port : ports) {
            y += port.heightMm();
            if (port.hop() == hop) {
                return y;
            }
        }
        throw new IllegalArgumentException("no port for " + hop.edge());
    }
}
