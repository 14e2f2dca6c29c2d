package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * The trunk as level rows joined by half circles at the sides of the board. It turns only where the runs that lie in the half circle
 * may be bent so far.
 */
final class TrunkTemplate {

    private static final double ARC_STEP_DEGREES = 3;
    private static final double SEARCH_MM = 40;

    private final List<FormRun> runs;
    private final Extent board;
    private final double marginMm;
    private final double firstMm;
    private final double lastMm;

    /**
     * A trunk on a board.
     *
     * @param runs     its runs in order
     * @param board    the board
     * @param marginMm room between a row and the side of the board, mm
     * @param firstMm  room for the card before its beginning, mm
     * @param lastMm   room for the card beyond its end, mm
     */
    TrunkTemplate(List<FormRun> runs, Extent board, double marginMm, double firstMm, double lastMm) {
        this.runs = runs;
        this.board = board;
        this.marginMm = marginMm;
        this.firstMm = firstMm;
        this.lastMm = lastMm;
    }

    /** The trunk in so many rows, cut at its nodes; empty when it does not fit or would be bent too far. */
    Optional<List<Way>> rows(int rows) {
        double total = runs.stream().mapToDouble(FormRun::lengthMm).sum();
        double apart = board.heightMm() / rows;
        double radius = apart / 2;
        double left = board.leftMm() + marginMm;
        double right = board.rightMm() - marginMm;
        double y = board.topMm() + apart / 2;
        double spare = right - left - firstMm - lastMm - total;
        double x = left + firstMm + (rows == 1 ? Math.max(0, spare / 2) : 0);
        if (rows == 1 && spare < 0) {
            return Optional.empty();
        }
        List<Point> points = new ArrayList<>(List.of(new Point(x, y)));
        double gone = 0;
        int sense = 1;
        for (int row = 0; row + 1 < rows; row++) {
            double side = sense > 0 ? right - radius : left + radius;
            double most = Math.min(sense * (side - x), total - gone - Math.PI * radius);
            double stretch = mayTurn(gone, most, radius);
            if (stretch <= 0) {
                return Optional.empty();
            }
            x += sense * stretch;
            points.add(new Point(x, y));
            arc(points, x, y, radius, sense);
            y += apart;
            gone = Way.lengthMm(points);
            sense = -sense;
        }
        double rest = total - gone;
        double end = x + sense * rest;
        if (rest < 0 || (sense > 0 ? end > right - lastMm : end < left + lastMm)) {
            return Optional.empty();
        }
        points.add(new Point(end, y));
        return Optional.of(cut(points));
    }

    /** The longest stretch after which a half circle bends no run too far; 0 when there is none. */
    private double mayTurn(double gone, double most, double radius) {
        for (double stretch = most; stretch > most / 3; stretch -= SEARCH_MM) {
            if (stretch > 0 && mayBend(gone + stretch, gone + stretch + Math.PI * radius, radius)) {
                return stretch;
            }
        }
        return 0;
    }

    private boolean mayBend(double from, double to, double radius) {
        double at = 0;
        for (FormRun run : runs) {
            double next = at + run.lengthMm();
            if (next > from && at < to && run.bendMm() > radius) {
                return false;
            }
            at = next;
        }
        return true;
    }

    private static void arc(List<Point> points, double x, double y, double radius, int sense) {
        for (double angle = ARC_STEP_DEGREES; angle < 180 + 1e-9; angle += ARC_STEP_DEGREES) {
            double turned = Math.toRadians(angle);
            points.add(new Point(x + sense * radius * Math.sin(turned), y + radius - radius * Math.cos(turned)));
        }
    }

    private List<Way> cut(List<Point> points) {
        List<Way> ways = new ArrayList<>();
        double at = 0;
        for (FormRun run : runs) {
            List<Point> part = Way.part(points, at, at + run.lengthMm());
            ways.add(new Way(part, bends(part)));
            at += run.lengthMm();
        }
        return ways;
    }

    /** A run that lies in a half circle, or in a part of one, is folded once. */
    private static int bends(List<Point> points) {
        int folds = 0;
        for (int k = 2; k < points.size(); k++) {
            double one = Headings.to(points.get(k - 2), points.get(k - 1));
            double two = Headings.to(points.get(k - 1), points.get(k));
            boolean bent = Headings.between(one, two) > 1;
            boolean before = k > 2 && Headings.between(Headings.to(points.get(k - 3), points.get(k - 2)), one) > 1;
            folds += bent && !before ? 1 : 0;
        }
        return folds;
    }
}
