package org.ohmloom.bundle.packing;

import java.util.Arrays;

/**
 * Circles pushed together: a ring round them shrinks a little, circles that overlap or stick out are moved just as far as they
 * must, and the ring shrinks again, in smaller steps when that no longer works.
 */
final class Squeeze {
    private static final double FIRST_STEP = 0.04;
    private static final double LAST_STEP = 2e-4;

    /** So few circles are squeezed until nothing more can be seen to move. */
    private static final int FEW = 12;

    private static final double LAST_STEP_OF_FEW = 1e-8;
    private static final int PASSES = 120;

    /** Neighbours are looked for anew after so many passes. */
    private static final int PASSES_WITH_NEIGHBOURS = 10;

    /** Circles nearer than this many times their distance when they touch are neighbours. */
    private static final double NEIGHBOUR_RATIO = 1.25;

    private final double[] radii;
    private double[] x;
    private double[] y;
    private double radius;

    Squeeze(double[] radii, double[] x, double[] y) {
        this.radii = radii;
        this.x = x;
        this.y = y;
    }

    double[] x() {
        return x;
    }

    double[] y() {
        return y;
    }

    /** Radius of the ring, large enough for all. */
    double radius() {
        return radius;
    }

    /** Squeezes; {@code roughly} stops sooner. */
    void run(boolean roughly) {
        clear();
        double step = FIRST_STEP;
        double last = radii.length <= FEW ? LAST_STEP_OF_FEW : roughly ? 10 * LAST_STEP : LAST_STEP;
        while (step > last) {
            double[] keptX = x.clone();
            double[] keptY = y.clone();
            double kept = radius;
            press(radius * (1 - step), roughly ? PASSES / 4 : PASSES);
            clear();
            if (radius >= kept * (1 - step / 8)) {
                if (radius >= kept) {
                    x = keptX;
                    y = keptY;
                    radius = kept;
                }
                step /= 2;
            }
        }
    }

    /** Moves circles apart and inside a ring, each pair and each circle in turn, again and again. */
    private void press(double ring, int passes) {
        boolean moved = true;
        int[][] near = near();
        for (int pass = 0; pass < passes && moved; pass++) {
            if (pass > 0 && pass % PASSES_WITH_NEIGHBOURS == 0) {
                near = near();
            }
            moved = false;
            for (int k = 0; k < radii.length; k++) {
                double far = Math.sqrt(x[k] * x[k] + y[k] * y[k]);
                double out = far - Math.max(0, ring - radii[k]);
                if (out > 1e-12 * ring) {
                    double scale = 1 - out / far;
                    x[k] *= scale;
                    y[k] *= scale;
                    moved = true;
                }
                for (int j : near[k]) {
                    moved |= part(j, k);
                }
            }
        }
    }

    /** For each circle those before it that may touch it within the next passes: others are too far to be looked at. */
    private int[][] near() {
        int[][] near = new int[radii.length][];
        int[] found = new int[radii.length];
        for (int k = 0; k < radii.length; k++) {
            int count = 0;
            for (int j = 0; j < k; j++) {
                double reach = (radii[j] + radii[k]) * NEIGHBOUR_RATIO;
                double dx = x[k] - x[j];
                double dy = y[k] - y[j];
                if (dx * dx + dy * dy < reach * reach) {
                    found[count++] = j;
                }
            }
            near[k] = Arrays.copyOf(found, count);
        }
        return near;
    }

    private boolean part(int j, int k) {
        double dx = x[k] - x[j];
        double dy = y[k] - y[j];
        double apart = radii[j] + radii[k];
        double square = dx * dx + dy * dy;
        if (square >= apart * apart * (1 - 1e-12)) {
            return false;
        }
        double distance = Math.sqrt(square);
        double unitX = distance > 0 ? dx / distance : Math.cos(k);
        double unitY = distance > 0 ? dy / distance : Math.sin(k);
        double push = apart - distance;
        double share = radii[k] / apart;
        x[j] -= unitX * push * share;
        y[j] -= unitY * push * share;
        x[k] += unitX * push * (1 - share);
        y[k] += unitY * push * (1 - share);
        return true;
    }

    /** Spreads all places until nothing overlaps, and takes the ring that then holds them. */
    private void clear() {
        double square = 0;
        for (int k = 0; k < radii.length; k++) {
            for (int j = 0; j < k; j++) {
                double dx = x[k] - x[j];
                double dy = y[k] - y[j];
                double apart = radii[j] + radii[k];
                square = Math.max(square, apart * apart / Math.max(dx * dx + dy * dy, 1e-300));
            }
        }
        double spread = Math.sqrt(square);
        radius = 0;
        for (int k = 0; k < radii.length; k++) {
            if (spread > 0) {
                x[k] *= spread;
                y[k] *= spread;
            }
            radius = Math.max(radius, Math.hypot(x[k], y[k]) + radii[k]);
        }
    }
}
