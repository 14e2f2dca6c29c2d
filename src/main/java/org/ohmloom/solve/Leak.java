package org.ohmloom.solve;

import java.util.List;

/**
 * The conductance every branch keeps when it conducts nothing, so that every point of an island has one voltage and no
 * more: behind a blocking diode, between two outputs that are off, beside a source at its limit.
 *
 * <p>The search starts with leaky branches, which makes it short and sure, and ends with branches that leak so little
 * that nobody can tell: 1e-18 S at 60 V is 6e-17 A, below the last digit of 1 A. These
 * currents are not published; they are the only thing by which the published ones miss Kirchhoff's law.
 */
final class Leak {

    /** What is left at the end, S. */
    static final double FINAL_SIEMENS = 1e-18;

    /** Conductances of the stages of a search before the last one, S. */
    static final List<Double> STAGES_SIEMENS = List.of(1e-2, 1e-5);

    private Leak() {}
}
