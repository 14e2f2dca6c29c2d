package org.ohmloom.draw.chart;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Weight;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Where the columns of a picture of returns go: one scale for all, as many columns side by side as have room for what is written
 * below them.
 *
 * @param picture  the picture
 * @param widthMm  width of the scene, mm
 * @param upwards  the scale of all heights
 * @param leftMm   left side of the columns, mm
 * @param rightMm  right side of the columns, mm
 * @param columnMm width of a column, mm
 * @param inARow   columns in a row
 * @param most     largest current, A
 */
record ReturnPlan(
        ReturnPicture picture,
        double widthMm,
        Axis upwards,
        double leftMm,
        double rightMm,
        double columnMm,
        int inARow,
        double most) {

    /** Least, usual and largest height of a scale, mm. */
    static final double LEAST_MM = 30;

    static final double USUAL_MM = 42;
    static final double MOST_MM = 90;

    /** Height of a basin above its floor, mm. */
    static final double BASIN_MM = 4.6;

    /** Between the lines of text below a column, mm. */
    static final double ROW_MM = 3.6;

    private static final double GAP_MM = 1.2;
    private static final double EDGE_MM = 1.5;
    private static final double HEADING_MM = 4.6;
    private static final double LEAST_COLUMN_MM = 12.5;
    private static final double MOST_COLUMN_MM = 30;
    private static final double MOST_LABEL_MM = 26;
    private static final double MOST_MARGIN_MM = 26;
    private static final double LABEL_GAP_MM = 2.4;

    /** Limits are shown up to so many times the largest height. */
    private static final double LIMIT_REACH = 3;

    private static final int STEPS = 6;
    private static final double LEAST_VOLTS = 1e-3;

    static ReturnPlan of(ReturnPicture picture, SceneFonts fonts, double widthMm) {
        Pen pen = new Pen(fonts);
        List<ReturnColumn> columns = picture.columns();
        Axis upwards = scale(columns);
        double left = EDGE_MM
                + upwards.ticks().stream()
                        .mapToDouble(tick -> pen.widthMm(tick.label()))
                        .max()
                        .orElse(0)
                + GAP_MM;
        double margin = Math.min(
                MOST_MARGIN_MM,
                Stream.concat(
                                Stream.of(picture.reference()),
                                limits(columns).stream().map(limit -> limitText(limit, upwards)))
                        .mapToDouble(pen::widthMm)
                        .max()
                        .orElse(0));
        double right = widthMm - EDGE_MM - margin - GAP_MM;
        double need = columns.stream()
                .mapToDouble(column -> needMm(column, pen))
                .max()
                .orElse(LEAST_COLUMN_MM);
        double room = Math.max(LEAST_COLUMN_MM, right - left);
        int fit = (int) Math.max(1, Math.floor(room / Math.min(room, Math.max(LEAST_COLUMN_MM, need))));
        int shelves = (columns.size() + fit - 1) / fit;
        int inARow = (columns.size() + shelves - 1) / shelves;
        double columnMm = Math.min(MOST_COLUMN_MM, room / inARow);
        double most = columns.stream()
                .mapToDouble(column -> column instanceof Basin basin ? Math.abs(basin.amps()) : 0)
                .max()
                .orElse(0);
        return new ReturnPlan(picture, widthMm, upwards, left, right, columnMm, inARow, most);
    }

    private static double needMm(ReturnColumn column, Pen pen) {
        double value = pen.widthMm(Formats.volts(column.volts()), Weight.BOLD) + 3;
        double label = Math.min(MOST_LABEL_MM, pen.widthMm(column.label(), Weight.BOLD));
        double second = Math.min(MOST_LABEL_MM, pen.widthMm(column.second()));
        return Math.max(value, Math.max(label, second)) + LABEL_GAP_MM;
    }

    private static Axis scale(List<ReturnColumn> columns) {
        double highest = 0;
        double lowest = 0;
        for (ReturnColumn column : columns) {
            highest = Math.max(highest, column.volts() + column.rippleVolts());
            lowest = Math.min(lowest, column.volts() - column.rippleVolts());
        }
        double reach = LIMIT_REACH * Math.max(highest, -lowest);
        double top = Math.max(highest, LEAST_VOLTS);
        for (double limit : limits(columns)) {
            top = limit <= reach ? Math.max(top, limit) : top;
        }
        Axis axis = Axes.linear(Dimension.VOLTAGE, lowest, top, STEPS);
        return new Axis(ChartTexts.text("axis.offset"), axis.unit(), axis.from(), axis.to(), false, axis.ticks());
    }

    /** Limits of some columns, smallest first. */
    static TreeSet<Double> limits(List<ReturnColumn> columns) {
        TreeSet<Double> limits = new TreeSet<>();
        columns.stream()
                .map(ReturnColumn::limitVolts)
                .filter(OptionalDouble::isPresent)
                .forEach(limit -> limits.add(limit.getAsDouble()));
        return limits;
    }

    /** A limit as written beside the scale. */
    static Text limitText(double volts, Axis upwards) {
        return ChartTexts.text(isShown(volts, upwards) ? "limit-of" : "limit-above", Formats.volts(volts));
    }

    /** Whether a limit lies on the scale. */
    static boolean isShown(double volts, Axis upwards) {
        return volts <= upwards.to() * (1 + 1e-9);
    }

    int shelves() {
        return (picture.columns().size() + inARow - 1) / inARow;
    }

    /** The columns of a row. */
    List<ReturnColumn> row(int shelf) {
        int from = shelf * inARow;
        return picture.columns().subList(from, Math.min(picture.columns().size(), from + inARow));
    }

    /** Lines of text below a column. */
    int footRows() {
        boolean names = picture.columns().stream()
                .anyMatch(column -> !column.name().isEmpty() && !column.name().equals(column.label()));
        boolean states =
                picture.columns().stream().anyMatch(column -> !column.state().isEmpty());
        return 3 + (names ? 1 : 0) + (states ? 1 : 0);
    }

    boolean hasGroups() {
        return picture.columns().stream().anyMatch(column -> !column.group().isEmpty());
    }

    boolean isBelowReference() {
        return upwards.from() < 0;
    }

    /** Height of a row with a scale of some height, mm. */
    double shelfMm(double plotMm) {
        return aboveMm() + plotMm + belowMm() + footRows() * ROW_MM + (hasGroups() ? ROW_MM + 1.6 : 0);
    }

    /** Room above the scale: the heading of the scale and a basin that stands at its top, mm. */
    double aboveMm() {
        return HEADING_MM + BASIN_MM;
    }

    /** Room between the scale and the texts, mm. */
    double belowMm() {
        return isBelowReference() ? BASIN_MM + 1.5 : 1.8;
    }

    /** Middle of a column of a row, mm. */
    double centreMm(int index) {
        return leftMm + (index + 0.5) * columnMm;
    }

    /** Width of the way of a current, mm; 0 for none. */
    double wayMm(double amps) {
        double share = most > 0 ? Math.abs(amps) / most : 0;
        return share < 1e-6 ? 0 : Math.max(0.5, share * wideMm());
    }

    /** Width of the widest way, mm. */
    double wideMm() {
        return Math.min(basinMm() * 0.6, 8);
    }

    /** Width of a basin at its brim, mm. */
    double basinMm() {
        return Math.min(columnMm * 0.75, 13);
    }
}
