package org.ohmloom.judged;

/**
 * What became of the faults of one kind.
 *
 * @param kind        the kind
 * @param over        faults over their limit
 * @param under       faults under it
 * @param inBand      faults too near to it to be counted
 * @param without     harnesses without a place for one
 * @param misses      limits passed at some subject that no finding names
 * @param falseAlarms findings that name a subject whose limit is kept
 */
record FaultRow(FaultKind kind, int over, int under, int inBand, int without, int misses, int falseAlarms) {}
