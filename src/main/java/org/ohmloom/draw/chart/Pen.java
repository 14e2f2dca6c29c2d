package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/** Draws the parts of a chart and remembers them in order. */
final class Pen {

    /** Height of the capitals of numbers and labels, mm. */
    static final double LETTER_MM = 2.1;

    /** Height of the capitals of the heading, mm. */
    static final double TITLE_MM = 2.6;

    /** Width of the line of a value, mm. */
    static final double LINE_MM = 0.5;

    /** Width of grid lines, mm. */
    static final double GRID_MM = 0.13;

    /** Width of the outline of the plot, mm. */
    static final double FRAME_MM = 0.25;

    private static final double EDGE_MM = 1.5;
    private static final double ROW_MM = 4.2;
    private static final String ELLIPSIS = "…";

    private final SceneFonts fonts;
    private final List<Item> items = new ArrayList<>();

    Pen(SceneFonts fonts) {
        this.fonts = fonts;
    }

    /** Everything drawn so far, lowest first. */
    List<Item> items() {
        return List.copyOf(items);
    }

    /** A text in the language of the drawing. */
    String said(org.ohmloom.words.Text text) {
        return fonts.said(text);
    }

    double widthMm(String text) {
        return widthMm(text, Weight.REGULAR);
    }

    double widthMm(org.ohmloom.words.Text text) {
        return widthMm(said(text));
    }

    double widthMm(org.ohmloom.words.Text text, Weight weight) {
        return widthMm(said(text), weight);
    }

    double widthMm(String text, Weight weight) {
        return fonts.widthMm(text, weight, LETTER_MM);
    }

    /** Height that {@link #heading} takes with the edge above it, mm. */
    static double headingMm(org.ohmloom.words.Text subtitle) {
        return EDGE_MM + TITLE_MM + 2 + (subtitle.isEmpty() ? 0 : ROW_MM);
    }

    /** Heading and line below it, at the upper left of the whole chart. */
    void heading(org.ohmloom.words.Text title, org.ohmloom.words.Text subtitle, double widthMm) {
        Point at = new Point(EDGE_MM, EDGE_MM + TITLE_MM);
        double roomMm = widthMm - 2 * EDGE_MM;
        String first = cut(title, TITLE_MM, Weight.BOLD, roomMm);
        put(Layer.SHEET, text(first, at, TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT));
        if (!subtitle.isEmpty()) {
            String second = cut(subtitle, LETTER_MM, Weight.REGULAR, roomMm);
            put(Layer.SHEET, text(second, at.plus(0, ROW_MM), Anchor.START, Ink.SOFT_TEXT));
        }
    }

    /** A text in the language of the drawing, in the size of labels. */
    Text text(org.ohmloom.words.Text text, Point at, Anchor anchor, Ink ink) {
        return text(said(text), at, anchor, ink);
    }

    /** A text in the size of labels. */
    Text text(String text, Point at, Anchor anchor, Ink ink) {
        return text(text, at, LETTER_MM, anchor, Weight.REGULAR, ink);
    }

    Text text(String text, Point at, double heightMm, Anchor anchor, Weight weight, Ink ink) {
        return new Text(text, at, heightMm, fonts.widthMm(text, weight, heightMm), anchor, 0, weight, ink);
    }

    /** The text in the language of the drawing, cut with an ellipsis when it is wider than the room. */
    String cut(org.ohmloom.words.Text text, double heightMm, Weight weight, double roomMm) {
        return cut(said(text), heightMm, weight, roomMm);
    }

    /** The text, cut with an ellipsis when it is wider than the room. */
    String cut(String text, double heightMm, Weight weight, double roomMm) {
        String cut = text;
        while (cut.length() > 1 && fonts.widthMm(cut, weight, heightMm) > roomMm) {
            String bare = cut.endsWith(ELLIPSIS) ? cut.substring(0, cut.length() - 1) : cut;
            cut = bare.substring(0, bare.offsetByCodePoints(bare.length(), -1)).stripTrailing() + ELLIPSIS;
        }
        return fonts.widthMm(cut, weight, heightMm) > roomMm ? "" : cut;
    }

    void put(Layer layer, Mark mark) {
        items.add(Item.of(layer, mark));
    }

    void put(Layer layer, Mark mark, Optional<String> element, org.ohmloom.words.Text description) {
        items.add(new Item(layer, mark, element, Optional.of(said(description))));
    }

    void line(Layer layer, double widthMm, Ink ink, LinePattern pattern, Point from, Point to) {
        put(layer, new Line(List.of(from, to), widthMm, ink, pattern));
    }

    void plate(Layer layer, Extent extent, Ink ink) {
        put(layer, new Box(extent, 0, Fill.of(ink)));
    }
}
