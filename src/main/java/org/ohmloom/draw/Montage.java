package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a drawing, the row of things without a place and the key together into one scene. */
final class Montage {

    private static final double MARGIN_MM = 8;
    private static final double SECTION_MM = 9;
    private static final double LEAST_WIDTH_MM = 120;

    private Montage() {}

    /**
     * One scene of all.
     *
     * @param drawing  items of the drawing, anywhere
     * @param unplaced cards without a place
     */
    static Scene scene(
            List<Item> drawing,
            List<Card> unplaced,
            java.util.function.DoubleFunction<List<Item>> legend,
            Lettering lettering) {
        List<Item> items = new ArrayList<>();
        Optional<Extent> extent = bounds(drawing);
        double width = Math.max(LEAST_WIDTH_MM, extent.map(Extent::widthMm).orElse(0.0) + 2 * MARGIN_MM);
        double y = MARGIN_MM;
        if (extent.isPresent()) {
            Placement placement = Placement.moved(
                    MARGIN_MM - extent.get().leftMm(), MARGIN_MM - extent.get().topMm());
            drawing.forEach(item -> items.add(item.placed(placement)));
            y += extent.get().heightMm() + SECTION_MM;
        }
        if (!unplaced.isEmpty()) {
            y = row(items, unplaced, y, width, lettering) + SECTION_MM;
        }
        List<Item> key = legend.apply(width - 2 * MARGIN_MM);
        Placement below = Placement.moved(MARGIN_MM, y);
        key.forEach(item -> items.add(item.placed(below)));
        y = bounds(items).map(Extent::bottomMm).orElse(y) + MARGIN_MM;
        return new Scene(width, y, items);
    }

    private static Optional<Extent> bounds(List<Item> items) {
        return Extent.union(items.stream().map(item -> item.mark().bounds()).toList());
    }

    /** The things without a place, in rows; gives the height at which they end. */
    private static double row(List<Item> items, List<Card> cards, double top, double width, Lettering lettering) {
        CardDrawing drawing = new CardDrawing(lettering);
        Point at = new Point(MARGIN_MM, top + 2.5);
        items.add(Item.of(
                Layer.CONNECTORS, lettering.text("Not placed yet", at, 2.5, Anchor.START, Weight.BOLD, Ink.SOFT_TEXT)));
        double x = MARGIN_MM;
        double y = top + 6;
        double high = 0;
        for (Card card : cards) {
            if (x > MARGIN_MM && x + card.widthMm() > width - MARGIN_MM) {
                x = MARGIN_MM;
                y += high + Bush.GAP_MM;
                high = 0;
            }
            items.addAll(drawing.items(card, Extent.at(x, y, card.widthMm(), card.heightMm()), false));
            x += card.widthMm() + Bush.GAP_MM;
            high = Math.max(high, card.heightMm());
        }
        return y + high;
    }
}
