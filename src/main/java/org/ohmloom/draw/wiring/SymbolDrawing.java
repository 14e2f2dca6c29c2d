package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;

/** Draws a symbol: its heading, its terminals with what lies between them, and where else it is drawn. */
final class SymbolDrawing {

    private static final double EDGE_MM = 0.3;
    private static final double LEAD_MM = 0.3;
    static final double BAR_MM = 1.2;

    private final Headings headings;
    private final List<Item> items = new ArrayList<>();
    private final Stand stand;
    private final Symbol symbol;
    private final Extent extent;

    SymbolDrawing(Headings headings, Stand stand, Extent extent) {
        this.headings = headings;
        this.stand = stand;
        this.symbol = stand.symbol().orElseThrow();
        this.extent = extent;
    }

    /** Its items; the lines are what is written below its terminals, or on a shortened way. */
    List<Item> items(List<String> lines) {
        switch (symbol.kind()) {
            case REFERENCE -> flag(lines);
            case SPLICE -> bar(Ink.SPLICE);
            case GROUND -> {
                bar(Ink.EARTH);
                earth();
            }
            case LOOSE -> loose();
            default -> box();
        }
        if (symbol.kind() != Symbol.Kind.REFERENCE) {
            heading();
            below(lines);
        }
        return items;
    }

    private double topMm() {
        return extent.topMm();
    }

    private boolean isOpen() {
        return symbol.kind() == Symbol.Kind.SPLICE
                || symbol.kind() == Symbol.Kind.GROUND
                || symbol.kind() == Symbol.Kind.LOOSE;
    }

    private void add(Mark mark) {
        String words = symbol.title()
                + (symbol.remark().isEmpty() ? "" : ", " + symbol.remark())
                + (symbol.name().isEmpty() ? "" : ", " + symbol.name());
        items.add(Item.of(Layer.CONNECTORS, mark, symbol.element(), words));
    }

    private void write(String text, double x, double base, double height, Anchor anchor, Weight weight, Ink ink) {
        if (!text.isEmpty()) {
            add(headings.lettering().text(text, new Point(x, base), height, anchor, weight, ink));
        }
    }

    private void heading() {
        double x = extent.leftMm() + (isOpen() ? 0.6 : Headings.PAD_MM);
        double y = topMm() + Headings.PAD_MM;
        if (!symbol.title().isEmpty()) {
            y += Headings.TITLE_MM;
            String title = headings.title(symbol);
            write(title, x, y, Headings.TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
            double after = x + headings.lettering().widthMm(title, Weight.BOLD, Headings.TITLE_MM) + WireWords.SPACE_MM;
            write(headings.beside(symbol), after, y, Headings.TEXT_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT);
        } else {
            y -= 0.6;
        }
        for (String line : headings.lines(symbol)) {
            y += Headings.LINE_MM;
            write(line, x, y, Headings.TEXT_MM, Anchor.START, Weight.REGULAR, Ink.TEXT);
        }
    }

    private void below(List<String> lines) {
        double x = extent.leftMm() + (isOpen() ? 0.6 : Headings.PAD_MM);
        double y = topMm() + stand.rowsEndMm() - 0.6;
        if (symbol.kind() == Symbol.Kind.GROUND) {
            x += 6;
        }
        for (String line : lines) {
            y += Headings.LINE_MM;
            write(line, x, y, Headings.TEXT_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT);
        }
    }

    private void box() {
        boolean connector = symbol.kind() == Symbol.Kind.CONNECTOR;
        add(new Box(
                extent,
                0.8,
                connector
                        ? Fill.of(Ink.CONNECTOR, Ink.CONNECTOR_EDGE, EDGE_MM)
                        : Fill.of(Ink.COMPONENT, Ink.COMPONENT_EDGE, EDGE_MM)));
        for (boolean left : new boolean[] {true, false}) {
            for (Port port : stand.ports(left)) {
                double y = stand.yMm(port);
                double x = left ? extent.leftMm() : extent.rightMm();
                terminal(port, new Point(x, y));
                write(
                        port.label(),
                        left ? x + 1.6 : x - 1.6,
                        y + Headings.TEXT_MM / 2,
                        Headings.TEXT_MM,
                        left ? Anchor.START : Anchor.END,
                        Weight.REGULAR,
                        Ink.TEXT);
            }
        }
        if (symbol.kind() == Symbol.Kind.BAR) {
            busBar();
        } else {
            new Inside(stand, extent, headings).marks().forEach(this::add);
        }
    }

    /** A contact of a connector is a small block, a stud or screw a small circle. */
    private void terminal(Port port, Point at) {
        if (port.plugged()) {
            Extent block = new Extent(at.xMm() - 0.7, at.yMm() - 1, at.xMm() + 0.7, at.yMm() + 1);
            add(new Box(block, 0, Fill.of(Ink.CONNECTOR, Ink.CONNECTOR_EDGE, 0.2)));
        } else {
            add(new Disc(at, 0.55, Fill.of(Ink.PLATE, Ink.TEXT, 0.2)));
        }
    }

    private void busBar() {
        double from = extent.leftMm() + headings.labelsMm(stand, true);
        double to = extent.rightMm() - headings.labelsMm(stand, false);
        double x = (from + to) / 2;
        double top = topMm() + stand.headMm() + 1;
        add(new Box(
                new Extent(x - BAR_MM / 2, top, x + BAR_MM / 2, topMm() + stand.rowsEndMm() - 1),
                0,
                Fill.of(Ink.TEXT)));
        for (boolean left : new boolean[] {true, false}) {
            for (Port port : stand.ports(left)) {
                double label = headings.labelMm(port);
                double edge = left ? extent.leftMm() + label : extent.rightMm() - label;
                add(Line.of(LEAD_MM, Ink.TEXT, new Point(edge, stand.yMm(port)), new Point(x, stand.yMm(port))));
            }
        }
    }

    /** Splices and ground points: an upright bar that the wires meet. */
    private void bar(Ink ink) {
        double x = extent.leftMm() + BAR_MM / 2;
        double top = topMm() + stand.headMm() + 1.4;
        double bottom = topMm() + stand.rowsEndMm() - 1.4;
        add(new Box(new Extent(x - BAR_MM / 2, top, x + BAR_MM / 2, bottom), BAR_MM / 2, Fill.of(ink)));
    }

    private void earth() {
        double x = extent.leftMm() + BAR_MM / 2 + 2;
        double y = topMm() + stand.rowsEndMm() - 1.4;
        double down = y + 1.1;
        add(Line.of(0.35, Ink.EARTH, new Point(x - 2, y - 0.3), new Point(x - 2, down), new Point(x, down)));
        add(Line.of(0.35, Ink.EARTH, new Point(x, down), new Point(x, down + 0.6)));
        for (int k = 0; k < 3; k++) {
            double half = 1.8 - 0.6 * k;
            double level = down + 0.6 + 0.7 * k;
            add(Line.of(0.35, Ink.EARTH, new Point(x - half, level), new Point(x + half, level)));
        }
    }

    private void loose() {
        for (boolean left : new boolean[] {true, false}) {
            for (Port port : stand.ports(left)) {
                double x = left ? extent.leftMm() : extent.rightMm();
                add(new Disc(new Point(x, stand.yMm(port)), 0.8, Fill.of(Ink.PLATE, Ink.CAUTION, 0.35)));
            }
        }
    }

    /** An arrow head with what it says beside it. */
    private void flag(List<String> lines) {
        boolean onLeft = stand.ports(true).isEmpty();
        Optional<Port> port = stand.ports(!onLeft).stream().findFirst();
        double y = port.map(stand::yMm).orElse(extent.centre().yMm());
        double tip = onLeft ? extent.rightMm() : extent.leftMm();
        double back = onLeft ? tip - 1.6 : tip + 1.6;
        double nose = onLeft ? tip : tip + 1.6;
        double tail = onLeft ? back : tip;
        add(new Area(
                List.of(new Point(tail, y - 1), new Point(nose, y), new Point(tail, y + 1)), Fill.of(Ink.SOFT_TEXT)));
        double high = (lines.size() - 1) * 2.6;
        double base = y - high / 2 + Headings.TEXT_MM / 2;
        for (String line : lines) {
            double x = onLeft ? extent.rightMm() - 2.2 : extent.leftMm() + 2.2;
            write(line, x, base, Headings.TEXT_MM, onLeft ? Anchor.END : Anchor.START, Weight.REGULAR, Ink.TEXT);
            base += 2.6;
        }
    }
}
