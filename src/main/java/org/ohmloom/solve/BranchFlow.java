package org.ohmloom.solve;

import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;

/**
 * The solved currents and voltages of one branch. Mean, RMS and on-state values are the same when nothing is switched
 * at a duty.
 *
 * @param branch      the branch
 * @param island      id of its island
 * @param ohms        resistance that gives V = I R in every moment, ohm; empty for sources, loads, open or switching
 *                    devices
 * @param amps        mean current, A, positive from {@code from} to {@code to}
 * @param rmsAmps     root mean square current, A
 * @param onAmps      largest current of all moments that can occur, A: the worst coincidence of what switches
 * @param dropVolts   mean of V(from) - V(to), V
 * @param onDropVolts V(from) - V(to) at that current, V; of an inductive load the largest that drives its current
 * @param watts       mean power taken from the network, W; negative for a source that gives
 */
public record BranchFlow(
        Branch branch,
        String island,
        OptionalDouble ohms,
        double amps,
        double rmsAmps,
        double onAmps,
        double dropVolts,
        double onDropVolts,
        double watts) {}
