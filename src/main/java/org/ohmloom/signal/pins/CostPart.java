package org.ohmloom.signal.pins;

/**
 * One reason why an allocation is not free.
 *
 * @param reason why, in words
 * @param costPoints  how much, 0 or more
 */
public record CostPart(String reason, double costPoints) {}
