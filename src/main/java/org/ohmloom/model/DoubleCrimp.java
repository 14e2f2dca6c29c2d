package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

/**
 * Two conductors allowed together in one crimp.
 *
 * @param firstMm2  nominal area of one, mm2, more than 0
 * @param secondMm2 nominal area of the other, mm2, more than 0
 */
public record DoubleCrimp(double firstMm2, double secondMm2) {

    public DoubleCrimp {
        positive(firstMm2, "first conductor of a double crimp");
        positive(secondMm2, "second conductor of a double crimp");
    }
}
