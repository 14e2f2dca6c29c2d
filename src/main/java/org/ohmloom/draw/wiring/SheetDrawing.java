package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SheetForm;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.Wire;

/** Draws the sheets when every circuit has its place on them. */
final class SheetDrawing {

    private static final double TITLE_MM = 2.5;

    private final SheetForm form;
    private final List<PlacedStrip> placed;
    private final Headings headings;
    private final WireWords words;
    private final Places places = Places.empty();

    SheetDrawing(SheetForm form, List<PlacedStrip> placed, Headings headings, WireWords words) {
        this.form = form;
        this.placed = placed;
        this.headings = headings;
        this.words = words;
        for (PlacedStrip each : placed) {
            Strip strip = each.strip();
            strip.layout().lines().forEach((link, points) -> {
                Point start = points.get(0);
                if (link.wire().isPresent() && strip.has(start.xMm())) {
                    Point there = each.of(start.xMm(), start.yMm());
                    places.wire(link.wire().get().id(), new Places.Place(each.sheet(), form.zone(there)));
                }
            });
            strip.layout().stands().forEach((key, stand) -> {
                if (strip.has(strip.layout().extent(stand).centre().xMm())) {
                    places.symbol(CircuitLinks.symbolOf(key), each.sheet());
                }
            });
        }
    }

    Places places() {
        return places;
    }

    /** Everything in the area of one sheet. */
    List<Item> items(int sheet, Foot foot) {
        Set<Wire> wires = new LinkedHashSet<>();
        for (PlacedStrip each : placed) {
            if (each.sheet() == sheet) {
                wires.addAll(each.strip().layout().circuit().wires());
            }
        }
        boolean lettered = foot.states(wires).size() > 1;
        List<Item> items = new ArrayList<>();
        for (int k = 0; k < placed.size(); k++) {
            if (placed.get(k).sheet() == sheet) {
                items.addAll(strip(k, lettered));
            }
        }
        items.addAll(foot.items(wires, form.area(sheet == 1)));
        return items;
    }

    private List<Item> strip(int index, boolean lettered) {
        PlacedStrip here = placed.get(index);
        Strip strip = here.strip();
        List<Item> whole = new CircuitDrawing(strip.layout(), headings, words).items(places, here.sheet(), lettered);
        List<Item> items = new ArrayList<>();
        for (Item item : strip.items(
                whole, headings.lettering(), y -> place(index - 1, true, y), y -> place(index + 1, false, y))) {
            items.add(item.placed(here.placement()));
        }
        Extent extent = strip.extent();
        String title = strip.layout().circuit().title() + (strip.number() > 1 ? ", continued" : "");
        double scale = here.placement().scale();
        Point at = here.of(extent.leftMm(), extent.topMm() - 2.2);
        items.add(Item.of(
                Layer.NUMBERS,
                headings.lettering()
                        .fitted(
                                title,
                                at,
                                TITLE_MM * scale,
                                Math.max(20, extent.widthMm()) * scale,
                                Anchor.START,
                                Weight.BOLD,
                                Ink.TEXT)));
        return items;
    }

    /** Where a line goes on, on the stretch before or after. */
    private String place(int index, boolean before, double yMm) {
        PlacedStrip there = placed.get(index);
        double x = before ? there.strip().rightMm() : there.strip().leftMm();
        return new Places.Place(there.sheet(), form.zone(there.of(x, yMm))).text();
    }
}
