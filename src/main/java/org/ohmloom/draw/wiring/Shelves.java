package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Placement;

/** Puts stretches of circuits onto sheets in their order: beside each other, then below, then on the next sheet. */
final class Shelves {

    /** Room above a stretch for the name of its circuit, mm. */
    static final double HEAD_MM = 7;

    private static final double GAP_MM = 9;

    /** How much a sheet that is not full is enlarged at most. */
    private static final double MOST_SCALE = 1.25;

    private record Put(Strip strip, double leftMm, double topMm) {}

    private final double widthMm;
    private final double firstMm;
    private final double laterMm;
    private final List<List<Put>> sheets = new ArrayList<>();
    private double xMm;
    private double yMm;
    private double shelfMm;

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

    private double heightMm() {
        return heightMm(sheets.size());
    }

    /** Whether there is something on the first sheet, or nothing at all. */
    boolean usesFirst() {
        return sheets.isEmpty() || !sheets.get(0).isEmpty();
    }

    /** Puts all stretches of a circuit, on a new sheet when that keeps them together. */
    void put(List<Strip> strips) {
        double together = (strips.size() - 1) * GAP_MM;
        for (Strip strip : strips) {
            together += strip.extent().heightMm() + HEAD_MM;
        }
        double below = yMm + shelfMm + (shelfMm > 0 ? GAP_MM : 0);
        if (strips.size() > 1 && !sheets.isEmpty() && below + together > heightMm() && together <= laterMm) {
            turn();
        }
        strips.forEach(this::put);
    }

    private void put(Strip strip) {
        Extent extent = strip.extent();
        double width = extent.widthMm();
        double height = extent.heightMm() + HEAD_MM;
        if (sheets.isEmpty()) {
            turn();
        }
        if (xMm > 0 && xMm + width > widthMm) {
            yMm += shelfMm + GAP_MM;
            xMm = 0;
            shelfMm = 0;
        }
        boolean fits = yMm + height <= heightMm();
        boolean hopeless = yMm == 0 && xMm == 0 && sheets.size() > 1;
        if (!fits && !hopeless) {
            turn();
        }
        sheets.get(sheets.size() - 1).add(new Put(strip, xMm, yMm));
        xMm += width + GAP_MM;
        shelfMm = Math.max(shelfMm, height);
    }

    private void turn() {
        sheets.add(new ArrayList<>());
        xMm = 0;
        yMm = 0;
        shelfMm = 0;
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
