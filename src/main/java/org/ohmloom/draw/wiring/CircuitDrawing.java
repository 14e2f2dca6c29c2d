package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.draw.Swatch;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;

/** Draws a circuit that has its layout: symbols, wires and what is written on them. */
final class CircuitDrawing {

    private static final double WIRE_MM = 0.45;
    private static final double THIN_MM = 0.25;
    private static final double TEXT_MM = WireWords.TEXT_MM;

    /** From a wire to what is written above and below it, mm. */
    private static final double OFF_MM = 0.8;

    private final CircuitLayout layout;
    private final Headings headings;
    private final WireWords words;
    private final List<Item> items = new ArrayList<>();

    CircuitDrawing(CircuitLayout layout, Headings headings, WireWords words) {
        this.layout = layout;
        this.headings = headings;
        this.words = words;
    }

    /**
     * Its items.
     *
     * @param places   where everything is
     * @param sheet    the sheet it is on
     * @param lettered whether currents carry the letter of their state
     */
    List<Item> items(Places places, int sheet, boolean lettered) {
        layout.lines().forEach((link, points) -> line(link, points, lettered));
        layout.stands().forEach((key, stand) -> {
            List<Remark> remarks = layout.links()
                    .reference(key)
                    .map(Reference::lines)
                    .orElseGet(() -> layout.links().also(key));
            List<String> lines =
                    remarks.stream().map(remark -> places.text(remark, sheet)).toList();
            items.addAll(new SymbolDrawing(headings, stand, layout.extent(stand)).items(lines));
        });
        return items;
    }

    private void line(Link link, List<Point> points, boolean lettered) {
        Optional<Wire> wire = link.wire();
        if (wire.isPresent()) {
            SignalLook look = SignalLook.of(wire.get().signalClass());
            Line line = new Line(points, WIRE_MM, look.ink(), look.pattern());
            items.add(Item.of(Layer.WIRES, line, wire.get().id().value(), describe(wire.get())));
            written(wire.get(), points.get(0), lettered);
            return;
        }
        boolean bolted = !CircuitLayout.note(link).isEmpty();
        LinePattern pattern = bolted ? LinePattern.CONTINUOUS : LinePattern.DASHED;
        items.add(Item.of(Layer.WIRES, new Line(points, THIN_MM, Ink.SOFT_TEXT, pattern)));
        if (bolted) {
            Point at = points.get(0).plus(CircuitLayout.BEFORE_MM, -OFF_MM);
            items.add(Item.of(
                    Layer.NUMBERS,
                    lettering()
                            .text(CircuitLayout.note(link), at, TEXT_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT)));
        }
    }

    private Lettering lettering() {
        return headings.lettering();
    }

    private void written(Wire wire, Point start, boolean lettered) {
        double x = start.xMm() + CircuitLayout.BEFORE_MM;
        double above = start.yMm() - OFF_MM;
        double below = start.yMm() + OFF_MM + TEXT_MM;
        String id = wire.id().value();
        write(wire, id, x, above, Weight.BOLD);
        double after = x + lettering().widthMm(id, Weight.BOLD, TEXT_MM) + WireWords.SPACE_MM;
        write(wire, words.size(wire), after, above, Weight.REGULAR);
        double at = x;
        if (wire.colour().isPresent()) {
            WireColour colour = wire.colour().get();
            Extent sample = Extent.at(x, below - TEXT_MM, WireWords.SWATCH_MM, TEXT_MM);
            items.add(Item.of(Layer.NUMBERS, new Swatch(sample, colour), id, describe(wire)));
            double code = x + WireWords.SWATCH_MM + 0.8;
            write(wire, colour.text(), code, below, Weight.REGULAR);
            at = code + lettering().widthMm(colour.text(), Weight.REGULAR, TEXT_MM) + WireWords.SPACE_MM;
        }
        write(wire, words.current(wire, lettered), at, below, Weight.REGULAR);
    }

    private void write(Wire wire, String text, double x, double base, Weight weight) {
        if (!text.isEmpty()) {
            items.add(Item.of(
                    Layer.NUMBERS,
                    lettering().text(text, new Point(x, base), TEXT_MM, Anchor.START, weight, Ink.TEXT),
                    wire.id().value(),
                    describe(wire)));
        }
    }

    private String describe(Wire wire) {
        return wire.id() + ", " + SignalLook.of(wire.signalClass()).word() + ", "
                + wire.from().text() + " to " + wire.to().text() + ", " + words.size(wire);
    }
}
