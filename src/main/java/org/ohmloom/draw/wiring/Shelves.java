package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Placement;

/**
 * Puts stretches of circuits onto sheets: beside each other, then below, then on the next sheet; a circuit goes onto the first sheet
 * that still has room for all of it.
 */
final class Shelves {

    /** Room above a stretch for the name of its circuit, mm. */
    static final double HEAD_MM = 7;

    private static final double GAP_MM = 9;

    /** How much a sheet that is not full is enlarged at most. */
    private static final double MOST_SCALE = 1.25;

    private record Put(Strip strip, double leftMm, double topMm) {}

    /**
     * Where the next stretch of a sheet begins.
     *
     * @param xMm     from the left
     * @param yMm     upper side of its row
     * @param shelfMm height of the row so far
     */
    private record Cursor(double xMm, double yMm, double shelfMm) {

        /** Upper side of a row below. */
        double belowMm() {
            return yMm + shelfMm + (shelfMm > 0 ? GAP_MM : 0);
        }
    }

    private final double widthMm;
    private final double firstMm;
    private final double laterMm;
    private final List<List<Put>> sheets = new ArrayList<>();
    private final List<Cursor> cursors = new ArrayList<>();

    /**
     * Empty sheets.
     *
     * @param widthMm width of the area for circuits
     * @param firstMm its height on the first sheet
     * @param laterMm its height on later ones
     */
    Shelves(double widthMm, double firstMm, double laterMm) {
        this.widthMm = widthMm;
        this.firstMm = firstMm;
        this.laterMm = laterMm;
    }

    private double heightMm(int sheet) {
        return sheet == 1 ? firstMm : laterMm;
    }

    /** Whether there is something on the first sheet, or nothing at all. */
    boolean usesFirst() {
        return sheets.isEmpty() || !sheets.get(0).isEmpty();
    }

    /** Puts all stretches of a circuit, together where a sheet holds them. */
    void put(List<Strip> strips) {
        for (int sheet = 1; sheet <= sheets.size(); sheet++) {
            if (put(strips, sheet, true)) {
                return;
            }
        }
        if (strips.size() > 1 && !sheets.isEmpty() && togetherMm(strips) <= laterMm) {
            turn();
        }
        strips.forEach(this::put);
    }

    private static double togetherMm(List<Strip> strips) {
        double together = (strips.size() - 1) * GAP_MM;
        for (Strip strip : strips) {
            together += strip.extent().heightMm() + HEAD_MM;
        }
        return together;
    }

    private void put(Strip strip) {
        if (sheets.isEmpty()) {
            turn();
        }
        if (!put(List.of(strip), sheets.size(), true)) {
            boolean hopeless =
                    sheets.size() > 1 && sheets.get(sheets.size() - 1).isEmpty();
            if (!hopeless) {
                turn();
            }
            put(List.of(strip), sheets.size(), false);
        }
    }

    /** Whether stretches found room on a sheet; without that, nothing is put. */
    private boolean put(List<Strip> strips, int sheet, boolean mustFit) {
        Cursor cursor = cursors.get(sheet - 1);
        List<Put> found = new ArrayList<>();
        for (Strip strip : strips) {
            double width = strip.extent().widthMm();
            double height = strip.extent().heightMm() + HEAD_MM;
            if (cursor.xMm() > 0 && cursor.xMm() + width > widthMm) {
                cursor = new Cursor(0, cursor.belowMm(), 0);
            }
            if (mustFit && cursor.yMm() + height > heightMm(sheet)) {
                return false;
            }
            found.add(new Put(strip, cursor.xMm(), cursor.yMm()));
            cursor = new Cursor(cursor.xMm() + width + GAP_MM, cursor.yMm(), Math.max(cursor.shelfMm(), height));
        }
        sheets.get(sheet - 1).addAll(found);
        cursors.set(sheet - 1, cursor);
        return true;
    }

    private void turn() {
        sheets.add(new ArrayList<>());
        cursors.add(new Cursor(0, 0, 0));
    }

    /** The stretches on their sheets, within an area of that upper left corner. */
    List<PlacedStrip> placed(double leftMm, double topMm) {
        List<PlacedStrip> all = new ArrayList<>();
        for (int k = 0; k < sheets.size(); k++) {
            double right = 1;
            double bottom = 1;
            for (Put put : sheets.get(k)) {
                Extent extent = put.strip().extent();
                right = Math.max(right, put.leftMm() + extent.widthMm());
                bottom = Math.max(bottom, put.topMm() + extent.heightMm() + HEAD_MM);
            }
            double scale = Math.min(MOST_SCALE, Math.min(widthMm / right, heightMm(k + 1) / bottom));
            double dx = leftMm + Math.max(0, (widthMm - right * scale) / 2);
            for (Put put : sheets.get(k)) {
                Extent extent = put.strip().extent();
                double x = dx + scale * (put.leftMm() - extent.leftMm());
                double y = topMm + scale * (put.topMm() + HEAD_MM - extent.topMm());
                all.add(new PlacedStrip(put.strip(), k + 1, new Placement(scale, x, y)));
            }
        }
        return all;
    }

    int count() {
        return sheets.size();
    }
}
