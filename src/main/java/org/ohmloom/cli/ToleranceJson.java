package org.ohmloom.cli;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.tolerance.Chance;
import org.ohmloom.analysis.tolerance.Outcome;
import org.ohmloom.analysis.tolerance.Shares;
import org.ohmloom.analysis.tolerance.SpreadInput;
import org.ohmloom.analysis.tolerance.ToleranceResult;
import org.ohmloom.review.Cautions;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.store.JsonText;

/** A study of tolerances as JSON. */
final class ToleranceJson {

    private ToleranceJson() {}

    static String text(Analysis analysis, ToleranceResult result) {
        return JsonText.object(root -> {
            root.put("harness", analysis.harness().titleBlock().number());
            root.put("title", analysis.harness().titleBlock().title());
            root.put("runs", result.plan().runs());
            root.put("seed", result.plan().seed());
            root.put("solutions", result.solvedCount());
            root.put("unsolvedRuns", result.unsolvedCount());
            root.array("inputs", array -> result.inputs().forEach(input -> array.object(item -> input(item, input))));
            root.array("results", array -> result.outcomes()
                    .forEach(each -> array.object(item -> outcome(item, analysis, each))));
            root.put("cautions", Cautions.paragraph().english());
        });
    }

    private static void input(JsonObjectWriter item, SpreadInput input) {
        item.put("kind", input.kind().key());
        item.put("name", input.name());
        item.put("unit", input.spread().kind().unit());
        item.put("low", input.spread().lowUnits());
        item.put("high", input.spread().highUnits());
        item.put("shape", input.spread().shape().key());
        item.put("source", input.spread().source());
    }

    private static void outcome(JsonObjectWriter item, Analysis analysis, Outcome outcome) {
        item.put("id", outcome.watch().subject().value());
        item.put("measure", outcome.watch().measure().name());
        item.put("unit", outcome.watch().measure().unit().symbol());
        item.put(
                "state",
                analysis.harness().states().get(outcome.watch().state()).name());
        item.put("nominal", outcome.nominalValue());
        item.put("mean", outcome.meanValue());
        item.put("standardDeviation", outcome.deviationValue());
        item.put("percentile5", outcome.lowValue());
        item.put("percentile95", outcome.highValue());
        item.put("least", outcome.leastValue());
        item.put("most", outcome.mostValue());
        item.put("unsolvedRuns", outcome.unsolvedCount());
        item.put("limit", outcome.watch().limit());
        item.put("margin", outcome.marginValue());
        item.put("beyondFraction", chance(outcome, Chance::fraction));
        item.put("beyondAtMostFraction", chance(outcome, Chance::upToFraction));
        item.object("shares", shares -> outcome.shares()
                .map(Shares::all)
                .ifPresent(all -> all.forEach(share -> {
                    shares.put(share.kind().key() + "Fraction", share.fraction());
                    shares.put(share.kind().key() + "ErrorFraction", share.errorFraction());
                })));
        item.put(
                "explainedFraction",
                outcome.shares()
                        .map(each -> OptionalDouble.of(each.explainedFraction()))
                        .orElse(OptionalDouble.empty()));
    }

    private static OptionalDouble chance(Outcome outcome, ToDoubleFunction<Chance> of) {
        return outcome.chance()
                .map(each -> OptionalDouble.of(of.applyAsDouble(each)))
                .orElse(OptionalDouble.empty());
    }
}
