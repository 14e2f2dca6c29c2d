package org.ohmloom.store;

/** Thrown inside this package when a value of a file cannot be taken; leaves it as a {@link HarnessFileException}. */
final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Spot spot;

    RefusedException(Spot spot, String problem) {
        super(problem, null, false, false);
        this.spot = spot;
    }

    Spot spot() {
        return spot;
    }

    String problem() {
        return String.valueOf(getMessage());
    }
}
