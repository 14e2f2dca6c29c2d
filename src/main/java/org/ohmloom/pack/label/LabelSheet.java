package org.ohmloom.pack.label;

import java.util.ArrayList;
import java.util.List;
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
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.LabelSize;

/** Labels of one size in lines across a sheet, true to size, each with marks to cut by at its corners. */
public final class LabelSheet {
    /** Length of the bar that tells whether a print is true to size, mm. */
    public static final double BAR_MM = 100;

    private static final double GAP_MM = 4;
    private static final double TICK_MM = 1.5;
    private static final double THIN_MM = 0.13;
    private static final double WORDS_MM = 1.8;

    private final FabricationTables tables;
    private final SceneFonts fonts;
    private final double roomMm;

    /** Lines no wider than that, mm. */
    public LabelSheet(FabricationTables tables, SceneFonts fonts, double roomMm) {
        this.tables = tables;
        this.fonts = fonts;
        this.roomMm = roomMm;
    }

    /** A label as it is cut: its sides, mm, and the rectangles in it that carry the text. */
    private record Cut(double widthMm, double heightMm, List<Extent> printed) {}

    private Cut cut(LabelFit fit) {
        LabelSize size = fit.size();
        double high = LabelFit.printedMm(size, tables);
        return switch (size.kind()) {
            case SLEEVE -> new Cut(fit.lengthMm(), high, List.of(Extent.at(0, 0, fit.lengthMm(), high)));
            case WRAP -> new Cut(
                    size.widthMm(), size.aroundMm().orElseThrow(), List.of(Extent.at(0, 0, size.widthMm(), high)));
            case FLAG -> {
                double second = size.widthMm() + size.aroundMm().orElseThrow();
                yield new Cut(
                        second + size.widthMm(),
                        high,
                        List.of(Extent.at(0, 0, size.widthMm(), high), Extent.at(second, 0, size.widthMm(), high)));
            }
        };
    }

    /** The lines of labels, each label as often as it is needed; those without a label are left out. */
    public List<Scene> lines(List<LabelChoice> choices) {
        List<Scene> lines = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        double x = GAP_MM / 2;
        double high = 0;
        for (LabelChoice choice : choices) {
            if (choice.chosen().isEmpty()) {
                continue;
            }
            Cut cut = cut(choice.chosen().get());
            for (int k = 0; k < choice.text().count(); k++) {
                if (x > GAP_MM && x + cut.widthMm() + GAP_MM / 2 > roomMm) {
                    lines.add(new Scene(roomMm, high + GAP_MM, items));
                    items = new ArrayList<>();
                    x = GAP_MM / 2;
                    high = 0;
                }
                draw(items, choice, cut, x);
                x += cut.widthMm() + GAP_MM;
                high = Math.max(high, cut.heightMm());
            }
        }
        if (!items.isEmpty()) {
            lines.add(new Scene(roomMm, high + GAP_MM, items));
        }
        return lines;
    }

    private void draw(List<Item> items, LabelChoice choice, Cut cut, double left) {
        double top = GAP_MM / 2;
        Extent outline = Extent.at(left, top, cut.widthMm(), cut.heightMm());
        String subject = choice.text().subject();
        add(items, new Box(outline, 0, Fill.edge(Ink.RULE, THIN_MM)), subject);
        corners(items, outline, subject);
        LabelFit fit = choice.chosen().orElseThrow();
        List<String> words = fit.size().kind() == LabelSize.Kind.SLEEVE
                ? List.of(choice.text().text())
                : choice.text().lines();
        for (Extent printed : cut.printed()) {
            Extent place = printed.moved(left, top);
            if (cut.printed().size() > 1 || printed.heightMm() < cut.heightMm() - THIN_MM) {
                border(items, place, outline, subject);
            }
            double pitch = fit.letteringMm() * LabelFit.PITCH;
            double base = place.centre().yMm() + fit.letteringMm() / 2 - pitch * (words.size() - 1) / 2;
            for (int k = 0; k < words.size(); k++) {
                Point at = new Point(place.centre().xMm(), base + k * pitch);
                add(items, text(words.get(k), at, fit.letteringMm(), Anchor.MIDDLE, Ink.TEXT), subject);
            }
        }
    }

    /** Where the printed part ends: above the clear tail, or where the flag is folded. */
    private static void border(List<Item> items, Extent printed, Extent outline, String subject) {
        boolean below = printed.bottomMm() < outline.bottomMm() - THIN_MM;
        boolean right = printed.rightMm() < outline.rightMm() - THIN_MM;
        double x = right ? printed.rightMm() : printed.leftMm();
        List<Point> ends = below
                ? List.of(
                        new Point(printed.leftMm(), printed.bottomMm()),
                        new Point(printed.rightMm(), printed.bottomMm()))
                : List.of(new Point(x, printed.topMm()), new Point(x, printed.bottomMm()));
        add(items, new Line(ends, THIN_MM, Ink.RULE, LinePattern.DASHED), subject);
    }

    private static void corners(List<Item> items, Extent outline, String subject) {
        for (double x : new double[] {outline.leftMm(), outline.rightMm()}) {
            double out = x == outline.leftMm() ? -TICK_MM : TICK_MM;
            for (double y : new double[] {outline.topMm(), outline.bottomMm()}) {
                double away = y == outline.topMm() ? -TICK_MM : TICK_MM;
                add(items, Line.of(THIN_MM, Ink.TEXT, new Point(x, y), new Point(x + out, y)), subject);
                add(items, Line.of(THIN_MM, Ink.TEXT, new Point(x, y), new Point(x, y + away)), subject);
            }
        }
    }

    /** A bar of {@link #BAR_MM} with what to do with it. */
    public Scene bar() {
        List<Item> items = new ArrayList<>();
        double y = 3;
        double left = 1;
        add(items, Line.of(0.25, Ink.TEXT, new Point(left, y), new Point(left + BAR_MM, y)), "");
        for (double x : new double[] {left, left + BAR_MM}) {
            add(items, Line.of(0.25, Ink.TEXT, new Point(x, y - 1.5), new Point(x, y + 1.5)), "");
        }
        String words = "100 mm: measure it. Labels are true to size when printed at 100 %, not fitted to the page.";
        add(items, text(words, new Point(left + BAR_MM + 3, y + WORDS_MM / 2), WORDS_MM, Anchor.START, Ink.TEXT), "");
        return new Scene(roomMm, 6, items);
    }

    private Mark text(String words, Point at, double heightMm, Anchor anchor, Ink ink) {
        double wide = fonts.widthMm(words, Weight.REGULAR, heightMm);
        return new Text(words, at, heightMm, wide, anchor, 0, Weight.REGULAR, ink);
    }

    private static void add(List<Item> items, Mark mark, String subject) {
        items.add(subject.isEmpty() ? Item.of(Layer.SHEET, mark) : Item.of(Layer.SHEET, mark, subject, subject));
    }
}
