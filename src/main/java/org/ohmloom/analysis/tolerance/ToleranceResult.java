package org.ohmloom.analysis.tolerance;

import java.util.List;

/**
 * What became of all runs.
 *
 * @param plan          what was asked
 * @param inputs        everything that varied by itself
 * @param outcomes      what became of each result, loads first
 * @param unsolvedCount runs in which some result had no solution
 * @param solvedCount   solutions it took, each of all states at temperature
 */
public record ToleranceResult(
        TolerancePlan plan, List<SpreadInput> inputs, List<Outcome> outcomes, int unsolvedCount, int solvedCount) {
    public ToleranceResult {
        inputs = List.copyOf(inputs);
        outcomes = List.copyOf(outcomes);
    }

    /** The kinds that varied. */
    public List<SpreadKind> kinds() {
        return inputs.stream().map(SpreadInput::kind).distinct().sorted().toList();
    }
}
