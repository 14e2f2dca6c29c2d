package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * Looks for ways of one run through the free room: straight, or with so many folds, each an arc of at least the least radius.
 * Every way has the run's true length: what is drawn adds up to it.
 */
final class WaySearch {

    /** Gap between the end of a run and its card, mm. */
    static final double CARD_GAP_MM = 4;

    /** Chords that an arc step is drawn with. */
    private static final int CHORDS = 4;

    private static final double STEP_MM = 25;
    private static final double LEAST_END_MM = 20;
    private static final double ARC_STEP_DEGREES = 15;
    private static final List<Double> TURNS = List.of(90.0, -90.0, 180.0, -180.0, 45.0, -45.0);
    private static final List<Double> LONG_TURNS = List.of(180.0, -180.0, 90.0, -90.0);
    private static final List<Double> STRETCHES_MM = List.of(40.0, 90.0, 160.0, 260.0, 400.0, 600.0, 900.0);
    private static final int GENERAL_FOLDS = 2;
    private static final int MOST_WAYS = 80;
    private static final long MOST_LOOKS = 80_000;

    private final Room room;

    WaySearch(Room room) {
        this.room = room;
    }

    /**
     * What is looked for.
     *
     * @param start      where the run begins
     * @param lengthMm   its length, mm
     * @param reachMm    room it takes to each side, mm
     * @param radiusMm   least radius of its centre line, mm
     * @param headings   directions it may start in, degrees
     * @param ignored    owners that may be close to its start
     * @param nearMm     how far from the start they are ignored, mm
     * @param firstMm    how far it goes straight before the first fold at least, mm
     * @param cardWidthMm width of the card at its end, mm; 0 for none
     * @param cardHeightMm height of that card, mm
     * @param owner      number of the run
     */
    record Task(
            Point start,
            double lengthMm,
            double reachMm,
            double radiusMm,
            List<Double> headings,
            IntPredicate ignored,
            double nearMm,
            double firstMm,
            double cardWidthMm,
            double cardHeightMm,
            int owner) {}

    /** How far a way has come. */
    private record Leg(List<Point> points, double degrees, double leftMm, double goneMm, int folds) {
        Point at() {
            return points.get(points.size() - 1);
        }
    }

    /** The ways with exactly so many folds. */
    List<Way> ways(Task task, int folds) {
        List<Way> found = new ArrayList<>();
        long end = room.looks() + MOST_LOOKS;
        for (double degrees : task.headings()) {
            Leg leg = new Leg(List.of(task.start()), degrees, task.lengthMm(), 0, 0);
            extend(task, leg, folds, folds > GENERAL_FOLDS, found, end);
        }
        return found;
    }

    private void extend(Task task, Leg leg, int foldsLeft, boolean longOnly, List<Way> found, long end) {
        if (found.size() >= MOST_WAYS || room.looks() > end) {
            return;
        }
        double free = freeMm(task, leg);
        if (foldsLeft == 0) {
            if (free >= leg.leftMm() - 1e-9) {
                finish(task, leg, found);
            }
            return;
        }
        for (double stretch : stretches(free, task.radiusMm(), longOnly)) {
            if (leg.folds() == 0 && stretch < task.firstMm()) {
                continue;
            }
            for (double turn : longOnly ? LONG_TURNS : TURNS) {
                Leg next = turned(task, leg, stretch, turn);
                if (next != null) {
                    extend(task, next, foldsLeft - 1, longOnly, found, end);
                }
            }
        }
    }

    private static List<Double> stretches(double free, double radius, boolean longOnly) {
        List<Double> all = new ArrayList<>();
        double most = free - radius;
        if (most > 0) {
            all.add(most);
        }
        if (!longOnly) {
            for (double each : STRETCHES_MM) {
                if (each < free - 1 && Math.abs(each - most) > 10) {
                    all.add(each);
                }
            }
        } else if (most > 200) {
            all.add(most / 2);
        }
        return all;
    }

    private void finish(Task task, Leg leg, List<Way> found) {
        List<Point> points = new ArrayList<>(leg.points());
        points.add(Headings.from(leg.at(), leg.degrees(), leg.leftMm()));
        room.worked(points.size());
        if (ownRoomFree(task, points) && cardFree(task, points, leg.degrees())) {
            found.add(new Way(points, leg.folds()));
        }
    }

    /** Whether the ways own stretches keep clear of one another but for neighbours. */
    private static boolean ownRoomFree(Task task, List<Point> points) {
        double[] gone = new double[points.size()];
        for (int k = 1; k < gone.length; k++) {
            gone[k] = gone[k - 1] + points.get(k - 1).distanceMm(points.get(k));
        }
        for (int i = 1; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                double between = gone[j - 1] - gone[i];
                if (between > Math.PI * task.reachMm()
                        && Capsule.distanceMm(points.get(i - 1), points.get(i), points.get(j - 1), points.get(j))
                                < 2 * task.reachMm() - 1e-6) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean cardFree(Task task, List<Point> points, double degrees) {
        if (task.cardWidthMm() == 0) {
            return true;
        }
        Extent card = card(points.get(points.size() - 1), degrees, task.cardWidthMm(), task.cardHeightMm());
        if (room.isOnCard(card)) {
            return false;
        }
        for (Capsule row : Capsule.of(card, Room.CARD)) {
            if (!room.isFree(row, owner -> false)) {
                return false;
            }
            for (int k = 1; k + 1 < points.size(); k++) {
                if (row.meets(new Capsule(points.get(k - 1), points.get(k), task.reachMm(), task.owner()))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Where the card at the end of a run lies: beyond it, level. */
    static Extent card(Point end, double degrees, double widthMm, double heightMm) {
        double c = Headings.cos(degrees);
        double s = Headings.sin(degrees);
        double beyond = Math.min(
                        Math.abs(c) < 1e-9 ? Double.MAX_VALUE : widthMm / 2 / Math.abs(c),
                        Math.abs(s) < 1e-9 ? Double.MAX_VALUE : heightMm / 2 / Math.abs(s))
                + CARD_GAP_MM;
        Point middle = Headings.from(end, degrees, beyond);
        return Extent.at(middle.xMm() - widthMm / 2, middle.yMm() - heightMm / 2, widthMm, heightMm);
    }

    /** How far straight on it is free, mm, at most what is left. */
    private double freeMm(Task task, Leg leg) {
        double gone = 0;
        while (gone < leg.leftMm() - 1e-9) {
            double step = Math.min(STEP_MM, leg.leftMm() - gone);
            Point a = Headings.from(leg.at(), leg.degrees(), gone);
            Point b = Headings.from(leg.at(), leg.degrees(), gone + step);
            if (!isFree(task, a, b, leg.goneMm() + gone)) {
                break;
            }
            gone += step;
        }
        return gone;
    }

    private boolean isFree(Task task, Point a, Point b, double gone) {
        IntPredicate ignored = gone < task.nearMm() ? task.ignored() : owner -> false;
        return room.isFree(new Capsule(a, b, task.reachMm(), task.owner()), ignored);
    }

    /** The leg after a stretch and a turn; null when there is no room or no length for it. */
    private @Nullable Leg turned(Task task, Leg leg, double stretch, double turn) {
        double radius = task.radiusMm();
        List<Point> points = new ArrayList<>(leg.points());
        points.add(Headings.from(leg.at(), leg.degrees(), stretch));
        double left = leg.leftMm() - stretch;
        double gone = leg.goneMm() + stretch;
        int steps = (int) Math.round(Math.abs(turn) / ARC_STEP_DEGREES);
        double sense = Math.signum(turn);
        double turned = ARC_STEP_DEGREES / CHORDS;
        double chord = 2 * radius * Math.sin(Math.toRadians(turned / 2));
        double degrees = leg.degrees();
        for (int k = 0; k < steps; k++) {
            Point from = points.get(points.size() - 1);
            Point to = from;
            for (int j = 0; j < CHORDS; j++) {
                to = Headings.from(to, degrees + sense * turned * (j + 0.5), chord);
                points.add(to);
            }
            degrees += sense * ARC_STEP_DEGREES;
            left -= CHORDS * chord;
            if (left < LEAST_END_MM || !isFree(task, from, to, gone)) {
                return null;
            }
            gone += CHORDS * chord;
        }
        double ahead = Headings.normal(leg.degrees() + turn);
        return new Leg(points, ahead, left, gone, leg.folds() + 1);
    }
}
