package org.ohmloom.solve.envelope;

import java.util.OptionalDouble;
import org.ohmloom.graph.BranchId;

/**
 * The worst currents of one branch over all combinations, either way round.
 *
 * @param branch         the branch
 * @param onAmps         largest on-state current of a combination solved in full, A, positive from {@code from} to
 *                       {@code to}
 * @param onCombination  that combination
 * @param onBoundAmps    no combination brings more, A; empty where no bound is claimed
 * @param onProven       whether the bound says that no combination is worse
 * @param rmsAmps        largest RMS current of a combination solved in full, A: what heats
 * @param rmsCombination that combination
 * @param rmsBoundAmps   no combination brings more RMS current, A; empty where no bound is claimed
 * @param rmsProven      whether the bound says that no combination is worse
 */
public record BranchEnvelope(
        BranchId branch,
        double onAmps,
        String onCombination,
        OptionalDouble onBoundAmps,
        boolean onProven,
        double rmsAmps,
        String rmsCombination,
        OptionalDouble rmsBoundAmps,
        boolean rmsProven) {}
