package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.units.Formats;

/**
 * Why an island has no solution, in words for people.
 *
 * @param status   SINGULAR, NOT_CONVERGED or OVERLOADED
 * @param sentence the reason with its numbers
 * @param cause    the branch to blame, where one is
 */
record Failure(IslandStatus status, String sentence, Optional<BranchId> cause) {

    static Failure overloaded(Branch load, double askedWatts, double shareFraction) {
        return new Failure(
                IslandStatus.OVERLOADED,
                name(load) + " asks for " + Formats.watts(askedWatts)
                        + ", more than its wiring can bring at any voltage; at "
                        + Formats.percent(shareFraction) + " of all constant power, "
                        + Formats.watts(askedWatts * shareFraction) + " of it, the voltage collapses.",
                Optional.of(load.id()));
    }

    static Failure idealLoop(Branch source, BranchId other) {
        return new Failure(
                IslandStatus.SINGULAR,
                name(source) + " and " + other + " have no internal resistance and are connected in a loop: "
                        + "the current between them has no unique value. Give one of them a resistance.",
                Optional.of(source.id()));
    }

    static Failure shorted(Branch source) {
        return new Failure(
                IslandStatus.SINGULAR,
                name(source) + " has no internal resistance and is shorted by next to none: its current has no bound. "
                        + "Give it a resistance.",
                Optional.of(source.id()));
    }

    /** A search without constant power that found no balance. */
    static Failure of(Circuit circuit, Characteristic[] laws, Newton.Result result) {
        return result.end() == Newton.End.ADRIFT ? adrift(circuit, laws, result.volts()) : lost(circuit, laws, result);
    }

    private static Failure lost(Circuit circuit, Characteristic[] laws, Newton.Result result) {
        Balance balance = Balance.precise(circuit, laws, Leak.FINAL_SIEMENS, result.volts());
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                "The search for the voltages did not settle; the currents at "
                        + circuit.points().get(balance.worstPoint()) + " still miss balance by "
                        + Formats.percent(result.ratio()) + ".",
                Optional.empty());
    }

    /** A current without a way has pushed a point beyond all bounds; a present current is to blame where there is one. */
    private static Failure adrift(Circuit circuit, Characteristic[] laws, PreciseRow volts) {
        int farthest = 0;
        for (int point = 0; point < volts.length(); point++) {
            if (Math.abs(volts.value(point)) > Math.abs(volts.value(farthest))) {
                farthest = point;
            }
        }
        String point = circuit.points().get(farthest).value();
        for (int branch = 0; branch < laws.length; branch++) {
            if (laws[branch] instanceof ForcedCurrent current) {
                return new Failure(
                        IslandStatus.SINGULAR,
                        name(circuit.branches().get(branch)) + " is to carry " + Formats.amps(current.amps())
                                + " whatever the voltage, and nothing can take that current at " + point + ".",
                        Optional.of(circuit.branches().get(branch).id()));
            }
        }
        return new Failure(
                IslandStatus.SINGULAR, "No voltage balances the currents at " + point + ".", Optional.empty());
    }

    static Failure unbalanced(ResidualCheck check) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                "The check of the solution failed: currents miss balance by " + Formats.amps(check.amps())
                        + ", voltages miss Ohm's law by " + Formats.volts(check.volts()) + ".",
                Optional.empty());
    }

    static Failure restless(Branch load) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                name(load) + " keeps its current through the period, and no level of it was found at which the voltage "
                        + "it gets and the voltage it needs agree.",
                Optional.of(load.id()));
    }

    static Failure circling(Branch input) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                name(input) + " takes what its output gives, and its output depends on what it takes: "
                        + "the two did not come to rest.",
                Optional.of(input.id()));
    }

    static Failure buzzing(Branch coil, double releasedVolts, double pulledVolts) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                name(coil) + " buzzes: at rest its coil gets " + Formats.volts(releasedVolts)
                        + " and pulls in, pulled in it gets " + Formats.volts(pulledVolts) + " and drops out.",
                Optional.of(coil.id()));
    }

    static Failure pulsing(Branch input, double offVolts, double onVolts) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                name(input) + " starts and stops without end: its input has " + Formats.volts(offVolts)
                        + " while its output is off and " + Formats.volts(onVolts) + " while it is on.",
                Optional.of(input.id()));
    }

    private static String name(Branch branch) {
        return branch.element()
                .map(element -> element.value())
                .filter(element -> !element.equals(branch.id().value()))
                .map(element -> element + " (" + branch.id() + ")")
                .orElse(branch.id().value());
    }
}
