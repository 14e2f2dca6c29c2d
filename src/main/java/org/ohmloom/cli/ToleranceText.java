package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.tolerance.Chance;
import org.ohmloom.analysis.tolerance.Measure;
import org.ohmloom.analysis.tolerance.Outcome;
import org.ohmloom.analysis.tolerance.Share;
import org.ohmloom.analysis.tolerance.Shares;
import org.ohmloom.analysis.tolerance.SpreadInput;
import org.ohmloom.analysis.tolerance.SpreadKind;
import org.ohmloom.analysis.tolerance.ToleranceResult;
import org.ohmloom.review.Cautions;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** A study of tolerances as text. */
final class ToleranceText {

    private static final int MOST_ROWS = 20;
    private static final int COLUMNS = 100;

    private ToleranceText() {}

    static void print(Analysis analysis, ToleranceResult result, PrintWriter out) {
        out.println(analysis.harness().titleBlock().title() + "  ("
                + analysis.harness().titleBlock().number() + ")");
        if (result.outcomes().isEmpty()) {
            out.println(nothing(result));
        } else {
            results(analysis, result, out);
        }
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), COLUMNS));
    }

    private static void results(Analysis analysis, ToleranceResult result, PrintWriter out) {
        out.println(result.plan().runs() + " harnesses drawn from "
                + result.inputs().size()
                + " inputs by Latin hypercube, seed " + result.plan().seed() + "; "
                + result.solvedCount() + " solutions with conductors at temperature.");
        if (result.unsolvedCount() > 0) {
            out.println(
                    result.unsolvedCount() + " of them have no solution for some result; there they are left out of the"
                            + " values and count as not keeping the limit.");
        }
        spreads(result, out);
        for (Measure measure : Measure.values()) {
            List<Outcome> outcomes = outcomes(result, measure);
            if (!outcomes.isEmpty()) {
                out.println();
                out.println(title(measure) + " (least margin first"
                        + (outcomes.size() > MOST_ROWS
                                ? "; " + MOST_ROWS + " of " + outcomes.size() + ", all in JSON"
                                : "")
                        + ")");
                values(analysis, outcomes, out);
                shares(result.kinds(), outcomes, out);
            }
        }
        out.println();
        out.println(Wrap.text(
                "5 % of the harnesses lie below and 5 % above the columns of those names. BEYOND is the share of harnesses that"
                        + " do not keep the limit; it is AT MOST so large with 95 % confidence (Clopper and Pearson 1934)."
                        + " Shares are of the variance, each kind by itself with all others at their means (JCGM 101:2008,"
                        + " Annex B), with their standard error; TOGETHER is what the kinds alone do not explain (1 - R2).",
                COLUMNS));
    }

    private static String nothing(ToleranceResult result) {
        return result.inputs().isEmpty()
                ? "Nothing spreads: no conductor, joint, load, source or air has a spread."
                : "There is nothing to follow: no load or wire carries current in any operating state looked at.";
    }

    private static void spreads(ToleranceResult result, PrintWriter out) {
        TextTable table = new TextTable()
                .left("SPREADS")
                .right("INPUTS")
                .right("FROM")
                .right("TO")
                .left("SHAPE")
                .left("SOURCE");
        for (SpreadKind kind : result.kinds()) {
            List<SpreadInput> inputs =
                    result.inputs().stream().filter(each -> each.kind() == kind).toList();
            table.row(
                    kind.words(),
                    String.valueOf(inputs.size()),
                    end(
                            inputs.stream()
                                    .mapToDouble(each -> each.spread().lowUnits())
                                    .min()
                                    .orElseThrow(),
                            kind),
                    end(
                            inputs.stream()
                                    .mapToDouble(each -> each.spread().highUnits())
                                    .max()
                                    .orElseThrow(),
                            kind),
                    joined(inputs, each -> each.spread().shape().key()),
                    joined(inputs, each -> each.spread().source()));
        }
        out.println();
        table.print(out);
    }

    private static String end(double units, SpreadKind kind) {
        return String.format(Locale.ROOT, "%.3g %s", units, kind.unit());
    }

    private static String joined(List<SpreadInput> inputs, Function<SpreadInput, String> of) {
        List<String> distinct = inputs.stream().map(of).distinct().toList();
        return distinct.get(0) + (distinct.size() > 1 ? "; and " + (distinct.size() - 1) + " more" : "");
    }

    private static List<Outcome> outcomes(ToleranceResult result, Measure measure) {
        return result.outcomes().stream()
                .filter(each -> each.watch().measure() == measure)
                .sorted(Comparator.comparingDouble(ToleranceText::marginRatio))
                .toList();
    }

    /** Margin over the limit; results without a limit last. */
    private static double marginRatio(Outcome outcome) {
        return outcome.marginValue().isEmpty()
                ? Double.POSITIVE_INFINITY
                : outcome.marginValue().getAsDouble()
                        / Math.max(1e-9, Math.abs(outcome.watch().limit().getAsDouble()));
    }

    static String title(Measure measure) {
        return switch (measure) {
            case LOAD_DROP -> "VOLTAGE LOST ON FEED AND RETURN OF LOADS";
            case LOAD_VOLTS -> "VOLTAGE AT LOADS";
            case WIRE_AMPS -> "CURRENT OF WIRES";
            case WIRE_CELSIUS -> "TEMPERATURE OF CONDUCTORS";
            case DEVICE_AMPS -> "CURRENT THROUGH PROTECTIVE DEVICES";
        };
    }

    private static void values(Analysis analysis, List<Outcome> outcomes, PrintWriter out) {
        TextTable table = new TextTable()
                .left("OF")
                .left("STATE")
                .right("AS DRAWN")
                .right("MEAN")
                .right("5 %")
                .right("95 %")
                .right("LEAST")
                .right("MOST")
                .right("LIMIT")
                .right("MARGIN")
                .right("BEYOND")
                .right("AT MOST");
        outcomes.stream()
                .limit(MOST_ROWS)
                .forEach(each -> table.row(
                        each.watch().subject().value(),
                        analysis.harness().states().get(each.watch().state()).name(),
                        shown(each, each.nominalValue()),
                        shown(each, each.meanValue()),
                        shown(each, each.lowValue()),
                        shown(each, each.highValue()),
                        shown(each, each.leastValue()),
                        shown(each, each.mostValue()),
                        each.watch().limit().isPresent()
                                ? shown(each, each.watch().limit().getAsDouble())
                                : "-",
                        each.marginValue().isPresent() ? margin(each) : "-",
                        each.chance()
                                .map(Chance::fraction)
                                .map(Formats::percent)
                                .orElse("-"),
                        each.chance()
                                .map(Chance::upToFraction)
                                .map(Formats::percent)
                                .orElse("-")));
        table.print(out);
    }

    private static String shown(Outcome outcome, double value) {
        return Formats.quantity(value, outcome.watch().measure().unit().dimension());
    }

    /** A difference of temperatures is no temperature. */
    private static String margin(Outcome outcome) {
        double margin = outcome.marginValue().getAsDouble();
        return outcome.watch().measure() == Measure.WIRE_CELSIUS
                ? Formats.in(margin, Unit.KELVIN)
                : shown(outcome, margin);
    }

    private static void shares(List<SpreadKind> kinds, List<Outcome> outcomes, PrintWriter out) {
        TextTable table = new TextTable().left("SHARE OF");
        kinds.forEach(kind -> table.right(kind.key().toUpperCase(Locale.ROOT)));
        table.right("TOGETHER");
        outcomes.stream().limit(MOST_ROWS).forEach(each -> table.row(row(each, kinds)));
        table.print(out);
    }

    private static String[] row(Outcome outcome, List<SpreadKind> kinds) {
        Optional<Shares> shares = outcome.shares();
        Stream<String> cells = shares.isPresent()
                ? Stream.concat(
                        shares.get().all().stream().map(ToleranceText::share),
                        Stream.of(percent(1 - shares.get().explainedFraction())))
                : Stream.concat(kinds.stream().map(kind -> "-"), Stream.of("-"));
        return Stream.concat(Stream.of(outcome.watch().subject().value()), cells)
                .toArray(String[]::new);
    }

    private static String share(Share share) {
        return share.fraction() < 0.0005 ? "0" : percent(share.fraction()) + " ±" + percent(share.errorFraction());
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.1f%%", 100 * fraction);
    }
}
