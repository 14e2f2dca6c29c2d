package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.words.Text;

/**
 * The return paths of a harness as water would stand in them: the reference lies at the bottom; every ground point is a basin
 * that stands as high as its voltage, over a way as wide as its current, the dark part of which is its joint; control-unit grounds and
 * sensor returns are gauges at their height. Columns that do not fit beside one another go on below, at the same scale.
 *
 * @param title     which state it shows
 * @param subtitle  how to read it; may be empty
 * @param reference name of what lies at the bottom
 * @param columns   basins and gauges from the left; neighbours with one heading stand below it together
 */
public record ReturnPicture(Text title, Text subtitle, Text reference, List<ReturnColumn> columns) {

    private static final double GAP_MM = 3;
    private static final double FOOT_MM = 1.5;

    public ReturnPicture {
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("a picture of returns needs a ground point");
        }
    }

    /**
     * All of it in a width; as high as it needs, but using the height where there is more.
     *
     * @param widthMm  width, mm, more than 40
     * @param heightMm height there is, mm
     */
    public Scene scene(SceneFonts fonts, double widthMm, double heightMm) {
        ReturnPlan plan = ReturnPlan.of(this, fonts, widthMm);
        int shelves = plan.shelves();
        double fixedMm =
                headMm() + keyMm(fonts, widthMm) + FOOT_MM + shelves * plan.shelfMm(0) + (shelves - 1) * GAP_MM;
        double plotMm = Math.max(ReturnPlan.LEAST_MM, Math.min(ReturnPlan.MOST_MM, (heightMm - fixedMm) / shelves));
        return scene(fonts, plan, 0, shelves, plotMm, title);
    }

    /**
     * As many scenes as are needed so that none is higher than a page.
     *
     * @param widthMm  width of each, mm, more than 40
     * @param heightMm most height of each, mm, room for one row at least
     */
    public List<Scene> pages(SceneFonts fonts, double widthMm, double heightMm) {
        ReturnPlan plan = ReturnPlan.of(this, fonts, widthMm);
        double roomMm = heightMm - headMm() - keyMm(fonts, widthMm) - FOOT_MM + GAP_MM;
        int each = (int) Math.max(1, Math.floor(roomMm / (plan.shelfMm(ReturnPlan.LEAST_MM) + GAP_MM)));
        int pages = (plan.shelves() + each - 1) / each;
        int fullest = (plan.shelves() + pages - 1) / pages;
        double plotMm = Math.min(
                ReturnPlan.USUAL_MM * 1.5, Math.max(ReturnPlan.LEAST_MM, roomMm / fullest - GAP_MM - plan.shelfMm(0)));
        List<Scene> scenes = new ArrayList<>();
        for (int page = 0; page < pages; page++) {
            Text counted = pages == 1 ? title : ChartTexts.text("part-of", title, page + 1, pages);
            scenes.add(scene(
                    fonts, plan, page * fullest, Math.min(plan.shelves(), (page + 1) * fullest), plotMm, counted));
        }
        return scenes;
    }

    private Scene scene(SceneFonts fonts, ReturnPlan plan, int from, int to, double plotMm, Text heading) {
        Pen pen = new Pen(fonts);
        pen.heading(heading, subtitle, plan.widthMm());
        double top = headMm();
        for (int shelf = from; shelf < to; shelf++) {
            new ReturnShelf(plan, pen, shelf, top, plotMm).draw();
            top += plan.shelfMm(plotMm) + GAP_MM;
        }
        top = new ReturnKey(this, plan.most(), plan.widthMm()).draw(pen, top);
        return new Scene(plan.widthMm(), top + FOOT_MM, pen.items());
    }

    private double headMm() {
        return Pen.headingMm(subtitle) + 1;
    }

    private double keyMm(SceneFonts fonts, double widthMm) {
        return new ReturnKey(this, 1, widthMm).draw(new Pen(fonts), 0);
    }
}
