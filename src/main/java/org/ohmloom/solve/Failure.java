package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Why an island has no solution, in words for people.
 *
 * @param status   SINGULAR, NOT_CONVERGED or OVERLOADED
 * @param sentence the reason with its numbers
 * @param cause    the branch to blame, where one is
 */
record Failure(IslandStatus status, Text sentence, Optional<BranchId> cause) {

    static Failure overloaded(Branch load, double askedWatts, double shareFraction) {
        return new Failure(
                IslandStatus.OVERLOADED,
                SolveTexts.text(
                        "failure.overloaded",
                        name(load),
                        Formats.watts(askedWatts),
                        Formats.percent(shareFraction),
                        Formats.watts(askedWatts * shareFraction)),
                Optional.of(load.id()));
    }

    static Failure idealLoop(Branch source, BranchId other) {
        return new Failure(
                IslandStatus.SINGULAR,
                SolveTexts.text("failure.ideal-loop", name(source), other),
                Optional.of(source.id()));
    }

    static Failure shorted(Branch source) {
        return new Failure(
                IslandStatus.SINGULAR, SolveTexts.text("failure.shorted", name(source)), Optional.of(source.id()));
    }

    /** A search without constant power that found no balance. */
    static Failure of(Circuit circuit, Characteristic[] laws, Newton.Result result) {
        return result.end() == Newton.End.ADRIFT ? adrift(circuit, laws, result.volts()) : lost(circuit, laws, result);
    }

    private static Failure lost(Circuit circuit, Characteristic[] laws, Newton.Result result) {
        Balance balance = Balance.precise(circuit, laws, Leak.FINAL_SIEMENS, result.volts());
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                SolveTexts.text(
                        "failure.not-settled",
                        circuit.points().get(balance.worstPoint()),
                        Formats.percent(result.ratio())),
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
                        SolveTexts.text(
                                "failure.forced",
                                name(circuit.branches().get(branch)),
                                Formats.amps(current.amps()),
                                point),
                        Optional.of(circuit.branches().get(branch).id()));
            }
        }
        return new Failure(IslandStatus.SINGULAR, SolveTexts.text("failure.no-voltage", point), Optional.empty());
    }

    static Failure unbalanced(ResidualCheck check) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                SolveTexts.text("failure.unbalanced", Formats.amps(check.amps()), Formats.volts(check.volts())),
                Optional.empty());
    }

    static Failure restless(Branch load) {
        return new Failure(
                IslandStatus.NOT_CONVERGED, SolveTexts.text("failure.restless", name(load)), Optional.of(load.id()));
    }

    static Failure circling(Branch input) {
        return new Failure(
                IslandStatus.NOT_CONVERGED, SolveTexts.text("failure.circling", name(input)), Optional.of(input.id()));
    }

    static Failure buzzing(Branch coil, double releasedVolts, double pulledVolts) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                SolveTexts.text(
                        "failure.buzzing", name(coil), Formats.volts(releasedVolts), Formats.volts(pulledVolts)),
                Optional.of(coil.id()));
    }

    static Failure pulsing(Branch input, double offVolts, double onVolts) {
        return new Failure(
                IslandStatus.NOT_CONVERGED,
                SolveTexts.text("failure.pulsing", name(input), Formats.volts(offVolts), Formats.volts(onVolts)),
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
