package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.List;

/**
 * The values of a run at the instants it was solved at, and the integrals of their squares by Simpson's rule from the two
 * ends and the middle of each step.
 */
final class Recording {

    private final List<Double> seconds = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private final double[] squares;

    Recording(double[] first) {
        squares = new double[first.length];
        seconds.add(0.0);
        rows.add(first);
    }

    /** Adds a step. */
    void add(double middleSeconds, double[] middle, double endSeconds, double[] end) {
        double[] start = rows.get(rows.size() - 1);
        double step = endSeconds - seconds.get(seconds.size() - 1);
        for (int each = 0; each < squares.length; each++) {
            squares[each] +=
                    step / 6 * (start[each] * start[each] + 4 * middle[each] * middle[each] + end[each] * end[each]);
        }
        seconds.add(middleSeconds);
        rows.add(middle);
        seconds.add(endSeconds);
        rows.add(end);
    }

    /** How long it goes, s. */
    double durationSeconds() {
        return seconds.get(seconds.size() - 1);
    }

    /** Integral of the square of a value over the whole run. */
    double square(int value) {
        return squares[value];
    }

    /** A value at the end. */
    double last(int value) {
        return rows.get(rows.size() - 1)[value];
    }

    double largest(int value) {
        return rows.stream().mapToDouble(row -> row[value]).max().orElseThrow();
    }

    double lowest(int value) {
        return rows.stream().mapToDouble(row -> row[value]).min().orElseThrow();
    }

    /** When a value is lowest, s. */
    double lowestSeconds(int value) {
        int lowest = 0;
        for (int row = 1; row < rows.size(); row++) {
            if (rows.get(row)[value] < rows.get(lowest)[value]) {
                lowest = row;
            }
        }
        return seconds.get(lowest);
    }

    /** When a value first lies below a limit, s; the end of the run when it never does. */
    double firstBelowSeconds(int value, double limit) {
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row)[value] < limit) {
                return row == 0 ? 0 : crossingSeconds(row - 1, value, limit);
            }
        }
        return durationSeconds();
    }

    /** Time for which a value lies below a limit, by straight lines between the instants, s. */
    double belowSeconds(int value, double limit) {
        double below = 0;
        for (int row = 1; row < rows.size(); row++) {
            double from = rows.get(row - 1)[value];
            double to = rows.get(row)[value];
            double step = seconds.get(row) - seconds.get(row - 1);
            if (from < limit && to < limit) {
                below += step;
            } else if (from < limit || to < limit) {
                double crossing = crossingSeconds(row - 1, value, limit) - seconds.get(row - 1);
                below += from < limit ? crossing : step - crossing;
            }
        }
        return below;
    }

    private double crossingSeconds(int row, int value, double limit) {
        double from = rows.get(row)[value];
        double to = rows.get(row + 1)[value];
        return seconds.get(row) + (limit - from) / (to - from) * (seconds.get(row + 1) - seconds.get(row));
    }

    /** When a value had come within a distance of its end for good, s. */
    double settledSeconds(int value, double distance) {
        double end = last(value);
        for (int row = rows.size() - 1; row >= 0; row--) {
            if (Math.abs(rows.get(row)[value] - end) > distance) {
                return seconds.get(Math.min(row + 1, rows.size() - 1));
            }
        }
        return 0;
    }

    /** The rows that are needed so that straight lines between them keep within a distance for each value. */
    List<Integer> thinned(double[] distances) {
        List<Integer> kept = new ArrayList<>(List.of(0));
        int from = 0;
        for (int to = 2; to < rows.size(); to++) {
            if (!isStraight(from, to, distances)) {
                from = to - 1;
                kept.add(from);
            }
        }
        if (rows.size() > 1) {
            kept.add(rows.size() - 1);
        }
        return kept;
    }

    private boolean isStraight(int from, int to, double[] distances) {
        double[] start = rows.get(from);
        double[] end = rows.get(to);
        double span = seconds.get(to) - seconds.get(from);
        for (int row = from + 1; row < to; row++) {
            double share = (seconds.get(row) - seconds.get(from)) / span;
            double[] between = rows.get(row);
            for (int each = 0; each < distances.length; each++) {
                double line = start[each] + share * (end[each] - start[each]);
                if (Math.abs(line - between[each]) > distances[each]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The instants of some rows, s. */
    List<Double> seconds(List<Integer> kept) {
        return kept.stream().map(seconds::get).toList();
    }

    /** A value in some rows. */
    List<Double> values(List<Integer> kept, int value) {
        return kept.stream().map(row -> rows.get(row)[value]).toList();
    }
}
