package org.ohmloom.solve;

import org.ohmloom.graph.BranchId;

/**
 * What the active clamp of an output swallows.
 *
 * @param clamp       branch of the clamp
 * @param output      branch of the output it protects
 * @param pulseJoules energy of each pulse, the supply's share of it included, J
 * @param meanWatts   mean power, W
 */
public record ClampPulse(BranchId clamp, BranchId output, double pulseJoules, double meanWatts) {}
