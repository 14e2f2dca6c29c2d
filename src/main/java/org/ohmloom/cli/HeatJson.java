package org.ohmloom.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ChartAmps;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.heat.ShortPeak;
import org.ohmloom.heat.SkinCheck;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.model.StateId;
import org.ohmloom.store.JsonObjectWriter;

/** What is known of a wire's heat, as keys of its JSON object. */
final class HeatJson {

    private HeatJson() {}

    static void put(JsonObjectWriter item, Analysis analysis, WireRating rating) {
        WireTemperature temperature = rating.temperature();
        item.put("celsiusState", temperature.state().map(id -> name(analysis, id)));
        item.put("surfaceCelsius", temperature.heat().surfaceCelsius());
        item.put("hottestPlace", temperature.heat().place());
        item.put("thermalRunaway", temperature.heat().runaway());
        item.put("tableCelsius", temperature.tableCelsius());
        item.put("conservativeCelsius", temperature.conservativeCelsius());
        item.put(
                "conservativeFormula",
                temperature.conservativeCelsius().isPresent()
                        ? Optional.of(WireTemperature.CONSERVATIVE_FORMULA)
                        : Optional.empty());
        item.put("timeConstantSeconds", temperature.timeConstantSeconds());
        item.put("overloadAmps", temperature.overloadAmps());
        item.put(
                "overloadSeconds",
                temperature.overload().map(time -> time.seconds()).orElse(OptionalDouble.empty()));
        Optional<MethodComparison> comparison = rating.ampacity().flatMap(Ampacity::comparison);
        item.put("tableAmps", comparison.map(MethodComparison::tableAmps).orElse(OptionalDouble.empty()));
        item.put(
                "heatBalanceAmps",
                comparison.map(each -> OptionalDouble.of(each.balanceAmps())).orElse(OptionalDouble.empty()));
        item.put(
                "apartFraction", comparison.map(MethodComparison::apartFraction).orElse(OptionalDouble.empty()));
        item.put("designedTo", comparison.map(each -> each.byBalance() ? "heat balance" : "table"));
        item.put(
                "chartAmps",
                temperature.chart().map(ChartAmps::amps).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
        item.put("bundleWires", temperature.loading().wireCount());
        item.put("bundleLoadFraction", temperature.loading().capacityFraction());
        Optional<ShortPeak> peak = temperature.shortPeak();
        item.put("shortState", peak.map(each -> name(analysis, each.state())));
        item.put(
                "shortSeconds",
                peak.map(each -> OptionalDouble.of(each.seconds())).orElse(OptionalDouble.empty()));
        item.put(
                "shortCelsius",
                peak.map(each -> OptionalDouble.of(each.celsius())).orElse(OptionalDouble.empty()));
        item.array("skin", array -> temperature.skin().forEach(check -> array.object(each -> skin(each, check))));
    }

    private static void skin(JsonObjectWriter item, SkinCheck check) {
        item.put("frequencyHertz", check.frequencyHertz());
        item.put("depthMm", check.depthMm());
        item.put("strandRadiusMm", check.strandRadiusMm());
        item.put("conductorRadiusMm", check.conductorRadiusMm());
        item.put("extraHeatFraction", check.extraHeatFraction());
        item.put("matters", check.matters());
    }

    private static String name(Analysis analysis, StateId id) {
        return analysis.harness().states().get(id).name();
    }
}
