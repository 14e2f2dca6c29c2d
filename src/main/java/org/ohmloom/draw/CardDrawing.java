package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws cards. */
final class CardDrawing {

    private static final double EDGE_MM = 0.3;
    private static final double CORNER_MM = 1;

    private final Lettering lettering;

    CardDrawing(Lettering lettering) {
        this.lettering = lettering;
    }

    /**
     * The items of a card.
     *
     * @param extent where it lies
     * @param mirror whether its wires come from the right
     */
    List<Item> items(Card card, Extent extent, boolean mirror) {
        List<Item> items = new ArrayList<>();
        double symbol = card.kind().symbolMm();
        double before = card.tabWidthMm() + symbol;
        Extent box = mirror
                ? new Extent(extent.leftMm(), extent.topMm(), extent.rightMm() - before, extent.bottomMm())
                : new Extent(extent.leftMm() + before, extent.topMm(), extent.rightMm(), extent.bottomMm());
        boolean plain = symbol > 0;
        if (!plain) {
            Fill fill = card.kind() == Card.Kind.CONNECTOR
                    ? Fill.of(Ink.PLATE, Ink.CONNECTOR_EDGE, EDGE_MM / 2)
                    : Fill.of(Ink.COMPONENT, Ink.COMPONENT_EDGE, EDGE_MM);
            add(items, card, new Box(box, CORNER_MM, fill));
        }
        if (symbol > 0) {
            double x = mirror ? extent.rightMm() : extent.leftMm();
            symbol(items, card, new Point(x, extent.centre().yMm()), mirror ? -1 : 1);
            if (card.kind() == Card.Kind.MATCH_LINE) {
                matchLine(items, card, x + (mirror ? -5 : 5), extent);
            }
        }
        texts(items, card, box);
        tabs(items, card, extent, mirror);
        return items;
    }

    private void texts(List<Item> items, Card card, Extent box) {
        double x = box.leftMm() + CardMaker.PAD_MM;
        double high = CardMaker.TITLE_MM + card.lines().size() * CardMaker.LINE_MM;
        double y = box.centre().yMm() - high / 2 + CardMaker.TITLE_MM;
        Text title =
                lettering.text(card.title(), new Point(x, y), CardMaker.TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        add(items, card, title);
        double flagMm = FlagDrawing.widthMm(lettering, card.flag());
        FlagDrawing.marks(lettering, card.flag(), new Point(x + title.widthMm(), y))
                .forEach(mark -> add(items, card, mark));
        if (!card.remark().isEmpty()) {
            double from = x + title.widthMm() + flagMm + 1.5;
            add(
                    items,
                    card,
                    lettering.fitted(
                            card.remark(),
                            new Point(from, y),
                            CardMaker.SMALL_MM,
                            box.rightMm() - CardMaker.PAD_MM - from + 0.05,
                            Anchor.START,
                            Weight.REGULAR,
                            Ink.SOFT_TEXT));
        }
        for (String line : card.lines()) {
            y += CardMaker.LINE_MM;
            add(
                    items,
                    card,
                    lettering.text(line, new Point(x, y), CardMaker.NAME_MM, Anchor.START, Weight.REGULAR, Ink.TEXT));
        }
    }

    private void tabs(List<Item> items, Card card, Extent extent, boolean mirror) {
        double left = mirror ? extent.rightMm() - card.tabWidthMm() : extent.leftMm();
        double high =
                card.tabs().isEmpty() ? 0 : extent.heightMm() / card.tabs().size();
        for (int k = 0; k < card.tabs().size(); k++) {
            Extent place = Extent.at(left, extent.topMm() + k * high, card.tabWidthMm(), high);
            items.addAll(tab(card.tabs().get(k), place));
        }
    }

    /** The items of one connector. */
    List<Item> tab(Tab tab, Extent place) {
        List<Item> items = new ArrayList<>();
        Optional<String> id = Optional.of(tab.element());
        Optional<String> text = Optional.of(tab.description());
        Point middle = place.centre();
        Fill fill = Fill.of(tab.connector() ? Ink.CONNECTOR : Ink.PLATE, Ink.CONNECTOR_EDGE, EDGE_MM);
        items.add(new Item(Layer.CONNECTORS, new Box(place, CORNER_MM / 2, fill), id, text));
        items.add(new Item(
                Layer.CONNECTORS,
                lettering.text(
                        tab.title(), middle.plus(0, -0.5), CardMaker.NAME_MM, Anchor.MIDDLE, Weight.BOLD, Ink.TEXT),
                id,
                text));
        items.add(new Item(
                Layer.CONNECTORS,
                lettering.text(
                        tab.subtitle(),
                        middle.plus(0, 2.4),
                        CardMaker.SMALL_MM,
                        Anchor.MIDDLE,
                        Weight.REGULAR,
                        Ink.SOFT_TEXT),
                id,
                text));
        return items;
    }

    private static void symbol(List<Item> items, Card card, Point at, int side) {
        if (card.kind() == Card.Kind.SPLICE) {
            splice(at.plus(side * 1.6, 0)).forEach(mark -> add(items, card, mark));
            return;
        }
        if (card.kind() == Card.Kind.CONTINUATION || card.kind() == Card.Kind.MATCH_LINE) {
            Point tip = at.plus(side * 4.2, 0);
            List<Point> corners = List.of(tip, at.plus(side * 0.6, -2.4), at.plus(side * 0.6, 2.4));
            add(items, card, new Area(corners, Fill.of(Ink.PLATE, Ink.BUNDLE, 0.5)));
            return;
        }
        double x = at.xMm() + side * card.kind().symbolMm() / 2;
        add(items, card, Line.of(0.35, Ink.EARTH, at, new Point(x, at.yMm())));
        add(items, card, Line.of(0.35, Ink.EARTH, new Point(x, at.yMm()), new Point(x, at.yMm() + 1)));
        for (int k = 0; k < 3; k++) {
            double half = 2.1 - 0.7 * k;
            double y = at.yMm() + 1 + 0.9 * k;
            add(items, card, Line.of(0.35, Ink.EARTH, new Point(x - half, y), new Point(x + half, y)));
        }
    }

    private static void matchLine(List<Item> items, Card card, double x, Extent extent) {
        List<Point> points = List.of(new Point(x, extent.topMm()), new Point(x, extent.bottomMm()));
        add(items, card, new Line(points, SheetPen.MEDIUM_MM, Ink.TEXT, LinePattern.DASH_DOT));
    }

    /** The marks of a splice: a diamond. */
    static List<Mark> splice(Point at) {
        double r = 1.6;
        return List.of(new Area(
                List.of(at.plus(-r, 0), at.plus(0, -r), at.plus(r, 0), at.plus(0, r)),
                Fill.of(Ink.SPLICE, Ink.PLATE, 0.25)));
    }

    private static void add(List<Item> items, Card card, Mark mark) {
        items.add(Item.of(Layer.CONNECTORS, mark, card.element(), card.description()));
    }
}
