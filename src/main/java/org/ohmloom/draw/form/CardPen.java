package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/** Writes one entry of a card from the top to the bottom. */
final class CardPen {

    private static final double TITLE_MM = 4;
    private static final double LINE_MM = 2.5;
    private static final double PAD_MM = 1.2;
    private static final double WIDEST_MM = 66;

    private final Lettering lettering;
    private final String element;
    private final List<Item> items = new ArrayList<>();
    private double leftMm = PAD_MM;
    private double rightMm;
    private double yMm = PAD_MM;

    CardPen(Lettering lettering, String element) {
        this.lettering = lettering;
        this.element = element;
    }

    private void mark(Mark mark) {
        items.add(new Item(Layer.CONNECTORS, mark, Optional.of(element), Optional.of(element)));
        rightMm = Math.max(rightMm, mark.bounds().rightMm());
    }

    /** The symbol of an earth to the left of what follows. */
    void earth() {
        double x = leftMm + 4;
        mark(Line.of(0.5, Ink.EARTH, new Point(x, 2), new Point(x, 5)));
        for (int k = 0; k < 3; k++) {
            double half = 3.6 - 1.2 * k;
            double y = 5 + 1.5 * k;
            mark(Line.of(0.5, Ink.EARTH, new Point(x - half, y), new Point(x + half, y)));
        }
        leftMm += 9.5;
    }

    /** The mark of a splice to the left of what follows. */
    void splice() {
        double x = leftMm + 3;
        List<Point> corners = List.of(new Point(x - 3, 4), new Point(x, 1.4), new Point(x + 3, 4), new Point(x, 6.6));
        mark(new Area(corners, Fill.of(Ink.SPLICE, Ink.FRAME, 0.35)));
        leftMm += 8;
    }

    void title(String reference, String remark) {
        yMm += TITLE_MM;
        Text text = lettering.text(reference, new Point(leftMm, yMm), TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        mark(text);
        double after = text.bounds().rightMm() + 2;
        mark(lettering.text(remark, new Point(after, yMm), LINE_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT));
    }

    void line(String words, Ink ink) {
        if (words.isBlank()) {
            return;
        }
        double room = WIDEST_MM - leftMm;
        for (String line : lettering.wrapped(words, Weight.REGULAR, LINE_MM, room, 3)) {
            yMm += LINE_MM * 1.6;
            mark(lettering.text(line, new Point(leftMm, yMm), LINE_MM, Anchor.START, Weight.REGULAR, ink));
        }
    }

    void picture(Scene scene) {
        yMm += 2;
        Placement place = Placement.moved(leftMm, yMm);
        for (Item item : scene.items()) {
            mark(item.mark().placed(place));
        }
        yMm += scene.heightMm() - 1;
    }

    FormCard card() {
        return new FormCard(rightMm + PAD_MM, yMm + 2 * PAD_MM, items);
    }
}
