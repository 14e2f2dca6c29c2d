package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.LoadedConductors;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.units.Formats;

/** How warm wires run by every way of reckoning, and how far apart these are, as text; the warmest first. */
final class HeatText {

    private HeatText() {}

    static void print(Analysis analysis, PrintWriter out) {
        List<WireRating> byHeat = analysis.ratings().values().stream()
                .filter(rating -> LoadedConductors.isLoaded(
                                rating.wire(), rating.temperature().amps())
                        || rating.temperature().shortPeak().isPresent())
                .sorted(Comparator.comparingDouble(HeatText::left))
                .toList();
        if (byHeat.isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("WIRE")
                .right("RUNS AT")
                .right("BY ITS TABLE")
                .right("LIMIT")
                .right("TABLE ALLOWS")
                .right("BALANCE ALLOWS")
                .right("APART")
                .left("DESIGNED TO")
                .right("TIME CONSTANT")
                .right("LIMIT AT TWICE")
                .right("SHORT STATE")
                .right("WIRES x USED")
                .left("HOTTEST");
        boolean charts =
                byHeat.stream().anyMatch(rating -> rating.temperature().chart().isPresent());
        if (charts) {
            table.right("AC 43.13-1B FORMULA").right("AC 43.13-1B CHARTS");
        }
        byHeat.forEach(rating -> table.row(row(rating, charts).toArray(new String[0])));
        out.println();
        out.println("HEAT (least left to the limit first; RUNS AT: heat balance of the bundle as it is used)");
        table.print(out);
        byHeat.stream()
                .filter(rating -> rating.temperature().heat().runaway())
                .forEach(rating -> out.println("  " + rating.wire().id()
                        + " runs away: no steady temperature below the melting point of copper"));
        skin(byHeat, out);
    }

    private static void skin(List<WireRating> ratings, PrintWriter out) {
        ratings.forEach(rating -> rating.temperature().skin().stream()
                .filter(check -> check.matters())
                .forEach(check -> out.println("  " + rating.wire().id() + ": " + check.words())));
        long minor = ratings.stream()
                .flatMap(rating -> rating.temperature().skin().stream())
                .filter(check -> !check.matters())
                .count();
        if (minor > 0) {
            out.println("  Skin depth does not matter at " + minor + " other places where something switches.");
        }
    }

    private static double left(WireRating rating) {
        double limit = rating.ampacity().map(Ampacity::limitCelsius).orElse(Double.POSITIVE_INFINITY);
        return limit - rating.temperature().hottestCelsius();
    }

    private static List<String> row(WireRating rating, boolean charts) {
        WireTemperature temperature = rating.temperature();
        Optional<MethodComparison> comparison = rating.ampacity().flatMap(Ampacity::comparison);
        OptionalDouble apart = comparison.map(MethodComparison::apartFraction).orElse(OptionalDouble.empty());
        List<String> cells = new ArrayList<>(List.of(
                rating.wire().id().value(),
                Formats.celsius(temperature.heat().celsius()),
                celsius(temperature.tableCelsius()),
                rating.ampacity()
                        .map(each -> Formats.celsius(each.limitCelsius()))
                        .orElse("-"),
                amps(comparison.map(MethodComparison::tableAmps).orElse(OptionalDouble.empty())),
                comparison.map(each -> Formats.amps(each.balanceAmps())).orElse("-"),
                apart.isPresent() ? (apart.getAsDouble() > 0 ? "+" : "") + Formats.percent(apart.getAsDouble()) : "-",
                comparison.map(each -> each.byBalance() ? "balance" : "table").orElse("-"),
                Formats.seconds(temperature.timeConstantSeconds()),
                temperature
                        .overload()
                        .map(time -> time.seconds().isPresent()
                                ? Formats.seconds(time.seconds().getAsDouble())
                                : "never")
                        .orElse("-"),
                temperature
                        .shortPeak()
                        .map(peak -> Formats.celsius(peak.celsius()) + " after " + Formats.seconds(peak.seconds()))
                        .orElse("-"),
                Formats.number(temperature.loading().wireCount()) + " x "
                        + Formats.percent(temperature.loading().capacityFraction()),
                temperature.heat().place()));
        if (charts) {
            cells.add(celsius(temperature.conservativeCelsius()));
            cells.add(temperature.chart().map(each -> Formats.amps(each.amps())).orElse("-"));
        }
        return cells;
    }

    private static String celsius(OptionalDouble value) {
        return value.isPresent() ? Formats.celsius(value.getAsDouble()) : "-";
    }

    private static String amps(OptionalDouble value) {
        return value.isPresent() ? Formats.amps(value.getAsDouble()) : "-";
    }
}
