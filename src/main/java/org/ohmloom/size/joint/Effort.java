package org.ohmloom.size.joint;

/** Steps a search may still take: a count, so that the same problem always ends the same way. */
final class Effort {
    private long left;

    Effort(long steps) {
        this.left = steps;
    }

    /** Takes so many steps; false when none was left. */
    boolean spend(long steps) {
        boolean any = left > 0;
        left -= steps;
        return any;
    }

    boolean isSpent() {
        return left <= 0;
    }
}
