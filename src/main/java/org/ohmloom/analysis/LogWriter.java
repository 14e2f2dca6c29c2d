package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.bench.Replacement;
import org.ohmloom.graph.Assumption;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.review.Evidence;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.Requirement;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;

/** Writes down the calculation so that a person can follow every number to its formula and its table row. */
final class LogWriter {

    private final List<CalculationLog.Line> lines = new ArrayList<>();

    private LogWriter() {}

    /** The log of some results, written when it is asked for. */
    static CalculationLog of(Bench bench, Evidence evidence, HeatedSolutions heated) {
        return new CalculationLog(() -> written(bench.under(Cancel.NEVER), evidence, heated));
    }

    private static List<CalculationLog.Line> written(Bench bench, Evidence evidence, HeatedSolutions heated) {
        LogWriter log = new LogWriter();
        log.basis(bench);
        log.assumptions(evidence);
        log.measured(evidence);
        log.states(evidence, heated);
        log.lines.addAll(StartUpLog.of(evidence));
        log.lines.addAll(JointLog.of(evidence.joint()));
        for (WireRating rating : evidence.ratings().values()) {
            log.wire(evidence, rating);
        }
        for (DeviceChoice choice : evidence.devices().values()) {
            log.add(0, "Protective device " + choice.device());
            log.add(1, choice.reason());
            log.add(2, choice.citation().text());
        }
        ProtectionLog.write(evidence.protection(), log::add);
        EnvelopeLog.write(evidence.envelope(), log::add);
        ChargeLog.write(evidence.harness(), evidence.charge(), log::add);
        OffsetLog.write(evidence.harness(), evidence.tables(), evidence.returns(), log::add);
        return log.lines;
    }

    private void add(int depth, String text) {
        lines.add(new CalculationLog.Line(depth, text));
    }

    private void basis(Bench bench) {
        add(0, "Design basis: " + bench.basis().title());
        add(1, bench.basis().citation().text());
        add(
                1,
                "Copper: R(T) = R(20) x ("
                        + Formats.number(bench.tables().copper().betaCelsius()) + " + T) / ("
                        + Formats.number(bench.tables().copper().betaCelsius()) + " + 20)");
        add(2, bench.tables().copper().beta().citation().text());
        add(1, HeatLog.METHOD);
        add(
                1,
                "Duty-cycled outputs: outputs of one clock keep their phases, clocks are independent; each moment with its"
                        + " weight is solved with inductive loads at what they keep flowing; mean and RMS are the weighted"
                        + " mean and root mean square over all moments, on-state the largest of them");
    }

    private void assumptions(Evidence evidence) {
        List<Assumption> assumptions = evidence.assumptions();
        if (!assumptions.isEmpty()) {
            add(0, "Taken for granted because it is not entered");
            for (Assumption assumption : assumptions) {
                add(1, assumption.text());
                add(2, assumption.source());
            }
        }
    }

    private void measured(Evidence evidence) {
        List<Replacement> all = Replacement.of(evidence.bench());
        if (!all.isEmpty()) {
            add(0, "Measured resistances in the place of calculated ones, of wires at 20 °C");
            all.forEach(each -> add(1, each.text()));
        }
    }

    private void states(Evidence evidence, HeatedSolutions heated) {
        add(0, "Operating states, solved with conductors at temperature in " + heated.rounds() + " rounds");
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            add(1, state.name() + ": " + solution.status().words());
            for (Island island : solution.islands()) {
                if (island.powered()) {
                    add(2, island.sentence());
                }
            }
            add(
                    2,
                    String.format(
                            Locale.ROOT,
                            "recomputed: largest imbalance of currents at a point %.2g A, largest |V - I R| of a branch %.2g V",
                            solution.residualAmps(),
                            solution.residualVolts()));
        }
    }

    private void wire(Evidence evidence, WireRating rating) {
        add(0, "Wire " + rating.wire().id() + ", " + rating.gauge().text() + (rating.provisional() ? " (chosen)" : ""));
        String length = rating.lengthMetres().isPresent()
                ? Formats.metres(rating.lengthMetres().getAsDouble())
                : "unknown length";
        add(
                1,
                "Resistance " + Formats.ohms(rating.ohms()) + " for " + length + " at "
                        + Formats.celsius(rating.celsius()));
        rating.resistance().ifPresent(citation -> add(2, citation.text()));
        rating.worstState()
                .ifPresent(state -> add(
                        1,
                        "Worst lasting current " + Formats.amps(rating.worstAmps()) + " RMS in "
                                + evidence.harness().states().get(state).name()));
        rating.ampacity().ifPresent(this::ampacity);
        lines.addAll(HeatLog.of(evidence.harness(), rating));
        Optional.ofNullable(evidence.conductors().get(rating.wire().id())).ifPresent(this::choice);
    }

    private void ampacity(Ampacity ampacity) {
        add(
                1,
                "May carry " + Formats.amps(ampacity.limitAmps()) + " at " + Formats.celsius(ampacity.ambientCelsius())
                        + " ambient with insulation for " + Formats.celsius(ampacity.limitCelsius()));
        add(
                2,
                "table value " + Formats.amps(ampacity.base().value()) + ": "
                        + ampacity.base().citation().text());
        for (Ampacity.Factor factor : ampacity.factors()) {
            add(
                    2,
                    "x " + Formats.number(factor.ratio()) + " for "
                            + factor.name().english() + ": " + factor.citation().text());
        }
    }

    private void choice(ConductorChoice choice) {
        add(
                1,
                "Needs " + choice.gauge().map(gauge -> gauge.text()).orElse("more than any size of the family")
                        + ", governed by " + choice.governing().governor().words());
        for (Requirement requirement : choice.requirements()) {
            add(2, requirement.governor().words() + ": " + requirement.reason());
            add(3, requirement.citation().text());
        }
    }
}
