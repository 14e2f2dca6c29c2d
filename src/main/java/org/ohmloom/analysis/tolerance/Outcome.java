package org.ohmloom.analysis.tolerance;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What became of a followed result. All values are in the unit of its measure.
 *
 * @param watch           what was followed
 * @param nominalValue    as the harness is drawn
 * @param meanValue       mean of all runs
 * @param deviationValue  standard deviation
 * @param lowValue        5 % of the runs lie below
 * @param highValue       5 % of the runs lie above
 * @param leastValue      least seen
 * @param mostValue       most seen
 * @param unsolvedCount   runs without a solution for it; they are left out of all values
 * @param chance          how often it does not keep its limit; empty without a limit
 * @param shares          the shares of the inputs; empty where it does not vary
 */
public record Outcome(
        Watch watch,
        double nominalValue,
        double meanValue,
        double deviationValue,
        double lowValue,
        double highValue,
        double leastValue,
        double mostValue,
        int unsolvedCount,
        Optional<Chance> chance,
        Optional<Shares> shares) {

    /** What is left to the limit at the worse end of 5 and 95 %; negative beyond it, empty without a limit. */
    public OptionalDouble marginValue() {
        return watch.limit().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        watch.measure().isFloor()
                                ? lowValue - watch.limit().getAsDouble()
                                : watch.limit().getAsDouble() - highValue);
    }

    /** Standard error of the mean; Latin hypercubes have no more. */
    public double meanErrorValue(int runs) {
        return deviationValue / Math.sqrt(runs - unsolvedCount);
    }
}
