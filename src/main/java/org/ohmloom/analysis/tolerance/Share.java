package org.ohmloom.analysis.tolerance;

/**
 * How much of the variance of a result one kind of input makes by itself.
 *
 * @param kind          the kind
 * @param fraction      its share, 0 to 1
 * @param errorFraction standard error of that share
 */
public record Share(SpreadKind kind, double fraction, double errorFraction) {}
