package org.ohmloom.bundle.packing;

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
        for (int pass = 0; pass < passes && moved; pass++) {
            moved = false;
            for (int k = 0; k < radii.length; k++) {
                double out = Math.hypot(x[k], y[k]) - Math.max(0, ring - radii[k]);
                if (out > 1e-12 * ring) {
                    double scale = 1 - out / Math.hypot(x[k], y[k]);
                    x[k] *= scale;
                    y[k] *= scale;
                    moved = true;
                }
                for (int j = 0; j < k; j++) {
                    moved |= part(j, k);
                }
            }
        }
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
        double spread = 0;
        for (int k = 0; k < radii.length; k++) {
            for (int j = 0; j < k; j++) {
                double distance = Math.hypot(x[k] - x[j], y[k] - y[j]);
                spread = Math.max(spread, (radii[j] + radii[k]) / Math.max(distance, 1e-300));
            }
        }
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
