package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;

/** What lies between the terminals of a device: drawn through where two stand opposite, else as an icon. */
final class Inside {

    private static final double LEAD_MM = 0.3;

    private final Stand stand;
    private final Symbol symbol;
    private final Extent extent;
    private final Headings headings;
    private final List<Mark> marks = new ArrayList<>();

    Inside(Stand stand, Extent extent, Headings headings) {
        this.stand = stand;
        this.symbol = stand.symbol().orElseThrow();
        this.extent = extent;
        this.headings = headings;
    }

    List<Mark> marks() {
        boolean any = false;
        ties(true);
        ties(false);
        for (Symbol.Way way : symbol.ways()) {
            any |= through(way, way.from(), way.to()) || through(way, way.to(), way.from()) || bent(way);
        }
        if (!any && symbol.icon().isPresent()) {
            List<Port> all = new ArrayList<>(stand.ports(true));
            all.addAll(stand.ports(false));
            double y = all.stream()
                    .mapToDouble(stand::yMm)
                    .min()
                    .orElse(extent.centre().yMm());
            marks.addAll(symbol.icon().get().marks(new Point(middleMm(), y)));
        }
        return marks;
    }

    /** Several lines on one terminal are joined inside. */
    private void ties(boolean left) {
        Map<String, List<Port>> byTerminal = new LinkedHashMap<>();
        stand.ports(left).forEach(port -> byTerminal
                .computeIfAbsent(port.terminal(), each -> new ArrayList<>())
                .add(port));
        byTerminal.values().stream().filter(ports -> ports.size() > 1).forEach(ports -> {
            Port first = ports.get(0);
            double side = left ? 1 : -1;
            double label = (left ? extent.leftMm() : extent.rightMm()) + side * headings.labelMm(first);
            double x = label + side * 0.7;
            Port last = ports.get(ports.size() - 1);
            marks.add(Line.of(LEAD_MM, Ink.TEXT, new Point(x, stand.yMm(first)), new Point(x, stand.yMm(last))));
            ports.forEach(port -> lead(label, x, stand.yMm(port)));
        });
    }

    private double middleMm() {
        double from = extent.leftMm() + headings.labelsMm(stand, true);
        double to = extent.rightMm() - headings.labelsMm(stand, false);
        return (from + to) / 2;
    }

    private Optional<Port> port(boolean left, String terminal) {
        return stand.ports(left).stream()
                .filter(port -> port.terminal().equals(terminal))
                .findFirst();
    }

    private boolean through(Symbol.Way way, String in, String out) {
        Optional<Port> left = port(true, in);
        Optional<Port> right = port(false, out);
        if (left.isEmpty() || right.isEmpty()) {
            return false;
        }
        double y = stand.yMm(left.get());
        if (Math.abs(y - stand.yMm(right.get())) > 0.01) {
            return false;
        }
        double x = middleMm();
        double half = way.glyph().halfMm();
        marks.addAll(way.glyph().marks(new Point(x, y)));
        lead(extent.leftMm() + headings.labelMm(left.get()), x - half, y);
        lead(x + half, extent.rightMm() - headings.labelMm(right.get()), y);
        return true;
    }

    /** Both terminals on one side and nothing on the other. */
    private boolean bent(Symbol.Way way) {
        for (boolean left : new boolean[] {true, false}) {
            Optional<Port> one = port(left, way.from());
            Optional<Port> two = port(left, way.to());
            if (one.isPresent()
                    && two.isPresent()
                    && stand.ports(!left).isEmpty()
                    && symbol.ways().size() == 1) {
                double side = left ? 1 : -1;
                double x = middleMm();
                double y = stand.yMm(one.get());
                double other = stand.yMm(two.get());
                double half = way.glyph().halfMm();
                double edge = left ? extent.leftMm() : extent.rightMm();
                marks.addAll(way.glyph().marks(new Point(x, y)));
                lead(edge + side * headings.labelMm(one.get()), x - side * half, y);
                Point end = new Point(x + side * (half + 1.2), y);
                marks.add(Line.of(
                        LEAD_MM,
                        Ink.TEXT,
                        new Point(x + side * half, y),
                        end,
                        new Point(end.xMm(), other),
                        new Point(edge + side * headings.labelMm(two.get()), other)));
                return true;
            }
        }
        return false;
    }

    private void lead(double from, double to, double y) {
        if (Math.abs(to - from) > 0.05) {
            marks.add(Line.of(LEAD_MM, Ink.TEXT, new Point(from, y), new Point(to, y)));
        }
    }
}
