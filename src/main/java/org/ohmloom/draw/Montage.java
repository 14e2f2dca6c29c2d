package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;

/** Puts a drawing, the row of things without a place and the key together into one scene. */
final class Montage {

    /** Heading over what has no place. */
    private static final double MARGIN_MM = 8;

    private static final double SECTION_MM = 9;
    private static final double HEADING_MM = 6;
    private static final double LEAST_WIDTH_MM = 120;

    private Montage() {}

    /**
     * One scene of all.
     *
     * @param drawing  items of the drawing, anywhere
     * @param unplaced cards without a place
     */
    static Scene scene(
            List<Item> drawing, List<Card> unplaced, DoubleFunction<List<Item>> legend, Lettering lettering) {
        List<Item> items = new ArrayList<>();
        Optional<Extent> extent = Piece.bounds(drawing);
        double width = Math.max(LEAST_WIDTH_MM, extent.map(Extent::widthMm).orElse(0.0) + 2 * MARGIN_MM);
        double y = MARGIN_MM;
        if (extent.isPresent()) {
            Point shift = shift(drawing);
            Placement placement = Placement.moved(shift.xMm(), shift.yMm());
            drawing.forEach(item -> items.add(item.placed(placement)));
            y += extent.get().heightMm() + SECTION_MM;
        }
        if (!unplaced.isEmpty()) {
            List<Item> rows = rows(
                    unplaced,
                    lettering.say("not-placed-yet"),
                    new Extent(MARGIN_MM, y, width - MARGIN_MM, y),
                    lettering);
            items.addAll(rows);
            y = Piece.bounds(rows).map(Extent::bottomMm).orElse(y) + SECTION_MM;
        }
        List<Item> key = legend.apply(width - 2 * MARGIN_MM);
        Placement below = Placement.moved(MARGIN_MM, y);
        key.forEach(item -> items.add(item.placed(below)));
        y = Piece.bounds(items).map(Extent::bottomMm).orElse(y) + MARGIN_MM;
        return new Scene(width, y, items);
    }

    /** How far the drawing is moved to lie in the scene. */
    static Point shift(List<Item> drawing) {
        return Piece.bounds(drawing)
                .map(extent -> new Point(MARGIN_MM - extent.leftMm(), MARGIN_MM - extent.topMm()))
                .orElse(new Point(0, 0));
    }

    /** Height that the cards without a place take in rows with their heading, mm. */
    static double rowsMm(List<Card> cards, double widthMm) {
        return HEADING_MM
                + Piece.bounds(cardRows(cards, Extent.at(0, 0, widthMm, 0), (card, at) -> List.of(outline(at))))
                        .map(Extent::heightMm)
                        .orElse(0.0);
    }

    /** Cards in rows from the top of an area, under a heading. */
    static List<Item> rows(List<Card> cards, String heading, Extent area, Lettering lettering) {
        CardDrawing drawing = new CardDrawing(lettering);
        List<Item> items = new ArrayList<>();
        Point at = new Point(area.leftMm(), area.topMm() + 2.5);
        items.add(
                Item.of(Layer.CONNECTORS, lettering.text(heading, at, 2.5, Anchor.START, Weight.BOLD, Ink.SOFT_TEXT)));
        Extent below = new Extent(area.leftMm(), area.topMm() + HEADING_MM, area.rightMm(), area.bottomMm());
        items.addAll(cardRows(cards, below, (card, place) -> drawing.items(card, place, false)));
        return items;
    }

    private static Item outline(Extent extent) {
        return Item.of(Layer.CONNECTORS, new Box(extent, 0, Fill.of(Ink.PLATE)));
    }

    private static List<Item> cardRows(List<Card> cards, Extent area, BiFunction<Card, Extent, List<Item>> drawing) {
        List<Item> items = new ArrayList<>();
        double x = area.leftMm();
        double y = area.topMm();
        double high = 0;
        for (Card card : cards) {
            if (x > area.leftMm() && x + card.widthMm() > area.rightMm()) {
                x = area.leftMm();
                y += high + Bush.GAP_MM;
                high = 0;
            }
            items.addAll(drawing.apply(card, Extent.at(x, y, card.widthMm(), card.heightMm())));
            x += card.widthMm() + Bush.GAP_MM;
            high = Math.max(high, card.heightMm());
        }
        return items;
    }
}
