package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.WireColour;

/** Draws lines, texts and tables on a sheet; every text stays in its room. */
public final class SheetPen {

    /** Line widths of the series of ISO 128-2, mm. */
    public static final double THIN_MM = 0.18, MEDIUM_MM = 0.35, WIDE_MM = 0.7;

    /** Lettering heights of the series of ISO 3098, mm. */
    public static final double SMALL_MM = 1.8, NORMAL_MM = 2.5, LARGE_MM = 3.5;

    private final Lettering lettering;
    private final List<Item> items = new ArrayList<>();
    private Optional<String> element = Optional.empty();

    /** A pen that letters with that. */
    public SheetPen(Lettering lettering) {
        this.lettering = lettering;
    }

    public List<Item> items() {
        return List.copyOf(items);
    }

    public Lettering lettering() {
        return lettering;
    }

    /** What is drawn from now on stands for this element. */
    public SheetPen standingFor(Optional<String> id) {
        element = id;
        return this;
    }

    public void mark(Mark mark) {
        items.add(new Item(Layer.SHEET, mark, element, element));
    }

    public void add(Item item) {
        items.add(item);
    }

    public void line(double widthMm, Ink ink, double x1, double y1, double x2, double y2) {
        mark(Line.of(widthMm, ink, new Point(x1, y1), new Point(x2, y2)));
    }

    public void box(Extent extent, Fill fill) {
        mark(new Box(extent, 0, fill));
    }

    /** A text from a point to the right, cut to its room. */
    public void text(String text, double x, double baseY, double heightMm, double roomMm, Weight weight, Ink ink) {
        if (!text.isEmpty()) {
            mark(lettering.fitted(text, new Point(x, baseY), heightMm, roomMm, Anchor.START, weight, ink));
        }
    }

    /** A text from a point to the right, made lower down to the smallest lettering, then cut to its room. */
    public void shrunk(String text, double x, double baseY, double heightMm, double roomMm, Weight weight) {
        if (!text.isEmpty()) {
            mark(lettering.shrunk(
                    text, new Point(x, baseY), heightMm, SMALL_MM, roomMm, Anchor.START, weight, Ink.TEXT));
        }
    }

    public void centred(String text, Point middleOfBase, double heightMm, double roomMm, Weight weight, Ink ink) {
        mark(lettering.fitted(text, middleOfBase, heightMm, roomMm, Anchor.MIDDLE, weight, ink));
    }

    /** A colour sample with its code beside it, from a point to the right. */
    public void colour(WireColour colour, double x, double baseY, double heightMm, double roomMm) {
        mark(new Swatch(Extent.at(x, baseY - heightMm, 6, heightMm), colour));
        text(colour.text(), x + 7.2, baseY, heightMm, roomMm - 7.2, Weight.REGULAR, Ink.TEXT);
    }

    /** Lines of text in a room, one below the other; gives the base line of the last. */
    public double paragraph(String text, double x, double baseY, double heightMm, double roomMm, Ink ink) {
        double y = baseY;
        boolean first = true;
        for (String line : lettering.wrapped(text, Weight.REGULAR, heightMm, roomMm, Integer.MAX_VALUE)) {
            y += first ? 0 : heightMm * LINE_RATIO;
            text(line, x, y, heightMm, roomMm, Weight.REGULAR, ink);
            first = false;
        }
        return y;
    }

    /** Distance of base lines as a share of the lettering height; ISO 3098 asks for at least 1.3 to 1.5. */
    public static final double LINE_RATIO = 1.7;
}
