package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SheetPen;
import org.ohmloom.draw.Weight;

/** The symbols of a form board with what they mean, each as on the board. */
public final class BoardLegend {

    private static final double WIDTH_MM = 61;
    private static final double HEIGHT_MM = 13;
    private static final double SAMPLE_MM = 20;
    private static final double BUNDLE_MM = 6;

    private BoardLegend() {}

    /** One small picture for each symbol. */
    public static List<Scene> all(SceneFonts fonts) {
        FormRun run = new FormRun("", 0, 1, SAMPLE_MM, BUNDLE_MM, 0, OptionalDouble.empty(), false);
        Way way = new Way(List.of(new Point(1, HEIGHT_MM / 2), new Point(1 + SAMPLE_MM, HEIGHT_MM / 2)), 0);
        double middle = SAMPLE_MM / 2;
        List<Scene> all = new ArrayList<>();
        all.add(scene(fonts, "bundle as thick as it will be,", "with its centre line", run, way, List.of()));
        all.add(scene(fonts, "end of a covering", "", run, way, List.of(FixingMarks.coveringEnd(run, way, 8))));
        all.add(scene(fonts, "tie", "", run, way, FixingMarks.tie(run, way, middle)));
        all.add(scene(
                fonts, "support: clip or clamp", "in the vehicle", run, way, FixingMarks.support(run, way, middle)));
        all.add(scene(
                fonts, "markings of so many", "wires here", run, way, List.of(FixingMarks.flag(run, way, middle))));
        all.add(scene(fonts, "splice", "", run, way, List.of(FixingMarks.splice(run, way, middle))));
        List<Mark> peg = FixingMarks.peg(new Point(1 + middle, HEIGHT_MM / 2));
        all.add(scene(fonts, "peg or nail, in the forks of", "breakouts and inside folds", peg));
        return all;
    }

    private static Scene scene(
            SceneFonts fonts, String one, String two, FormRun run, Way way, List<? extends Mark> marks) {
        List<Item> items = new ArrayList<>(BundlePen.body(run, way));
        marks.forEach(mark -> items.add(Item.of(Layer.CONNECTORS, mark)));
        return words(fonts, one, two, items);
    }

    private static Scene scene(SceneFonts fonts, String one, String two, List<Mark> marks) {
        List<Item> items = new ArrayList<>();
        marks.forEach(mark -> items.add(Item.of(Layer.CONNECTORS, mark)));
        return words(fonts, one, two, items);
    }

    private static Scene words(SceneFonts fonts, String one, String two, List<Item> items) {
        SheetPen pen = new SheetPen(new Lettering(fonts));
        double x = SAMPLE_MM + 4;
        double y = HEIGHT_MM / 2 + (two.isEmpty() ? 0.9 : -0.6);
        pen.text(one, x, y, 2, WIDTH_MM - x, Weight.REGULAR, Ink.TEXT);
        pen.text(two, x, y + 3.4, 2, WIDTH_MM - x, Weight.REGULAR, Ink.TEXT);
        items.addAll(pen.items());
        return new Scene(WIDTH_MM, HEIGHT_MM, items);
    }
}
