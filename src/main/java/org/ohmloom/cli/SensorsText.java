package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.model.OperatingState;
import org.ohmloom.store.JsonArrayWriter;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** How far off each sensor reads, as text and as JSON. */
final class SensorsText {

    private static final int WIDTH = 120;

    /** Parts below this share of the allowed error are told together. */
    private static final double SMALL_SHARE = 0.01;

    private SensorsText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        ReturnStudy returns = analysis.evidence().returns();
        Map<String, SensorBudget> worst = new LinkedHashMap<>();
        for (SensorBudget budget : of(returns, states)) {
            worst.merge(
                    budget.sensor() + " " + budget.unit() + " " + budget.pin(),
                    budget,
                    (one, other) ->
                            other.worstError() * one.allowed() > one.worstError() * other.allowed() ? other : one);
        }
        if (worst.isEmpty() && notChecked(returns).isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("SENSOR")
                .left("NAME")
                .left("READ AT")
                .left("WORST IN")
                .right("AT")
                .right("KNOWN")
                .right("TOLERANCES")
                .right("RIPPLE")
                .right("TOGETHER")
                .right("ALLOWED")
                .left("LARGEST PART");
        worst.values()
                .forEach(budget -> table.row(
                        budget.sensor().value(),
                        analysis.harness().components().get(budget.sensor()).name(),
                        budget.unit() + "." + budget.pin(),
                        analysis.harness().states().get(budget.state()).name(),
                        inUnit(budget, budget.reading()),
                        inUnit(budget, budget.knownError()),
                        inUnit(budget, budget.toleranceError()),
                        budget.ripple().isPresent()
                                ? inUnit(budget, budget.ripple().getAsDouble())
                                : "-",
                        inUnit(budget, budget.worstError()),
                        inUnit(budget, budget.allowed()),
                        budget.largest().map(SensorBudget.ErrorPart::name).orElse("-")));
        out.println();
        out.println("SENSORS (error at the worst value of the span in the worst state; of a switch or pulse sensor its"
                + " level)");
        if (!table.isEmpty()) {
            table.print(out);
        }
        worst.values().forEach(budget -> {
            out.println("  " + budget.sensor() + ": allowed " + inUnit(budget, budget.allowed()) + ", "
                    + budget.allowedFrom()
                    + budget.unusable().map(why -> "; of no use, " + why).orElse(""));
            parts(budget, out);
        });
        notChecked(returns).forEach(sentence -> out.println(Wrap.indented(sentence, 2, WIDTH)));
    }

    /** The parts that matter, and the sum of the others. */
    private static void parts(SensorBudget budget, PrintWriter out) {
        double small = SMALL_SHARE * budget.allowed();
        budget.known().stream().filter(part -> Math.abs(part.error()) >= small).forEach(part -> part(part, out));
        double others = budget.known().stream()
                .mapToDouble(SensorBudget.ErrorPart::error)
                .filter(error -> Math.abs(error) < small)
                .sum();
        if (others != 0) {
            out.println("    parts below " + Formats.percent(SMALL_SHARE) + " of that, together: "
                    + inUnit(budget, others));
        }
        budget.tolerances().forEach(part -> part(part, out));
    }

    private static void part(SensorBudget.ErrorPart part, PrintWriter out) {
        out.println(Wrap.indented(part.name() + ": " + part.formula() + " (" + part.source() + ")", 4, WIDTH));
    }

    static void write(Analysis analysis, List<OperatingState> states, JsonObjectWriter root) {
        ReturnStudy returns = analysis.evidence().returns();
        root.array("sensors", array -> of(returns, states)
                .forEach(budget -> array.object(item -> write(item, analysis, budget))));
        root.texts("sensorsNotChecked", notChecked(returns));
        root.array("returnsNotJudged", array -> returns.unjudged()
                .forEach(each -> array.object(item -> {
                    item.put("study", each.study().name());
                    item.put("reason", each.reason().name());
                    item.put("sentence", each.sentence());
                    item.texts("subjects", each.subjects());
                })));
    }

    private static void write(JsonObjectWriter item, Analysis analysis, SensorBudget budget) {
        item.put("id", budget.sensor().value());
        item.put("unit", budget.unit().value());
        item.put("pin", budget.pin());
        item.put("state", analysis.harness().states().get(budget.state()).name());
        item.put("quantityUnit", budget.quantityUnit());
        item.put("reading", budget.reading());
        item.put("error", budget.knownError());
        item.put("toleranceError", budget.toleranceError());
        item.put("ripple", budget.ripple());
        item.put("worstError", budget.worstError());
        item.put("allowed", budget.allowed());
        item.put("allowedFrom", budget.allowedFrom().english());
        item.put("unusable", budget.unusable().map(Text::english));
        item.array("parts", array -> parts(array, budget.known()));
        item.array("tolerances", array -> parts(array, budget.tolerances()));
    }

    private static void parts(JsonArrayWriter array, List<SensorBudget.ErrorPart> parts) {
        parts.forEach(part -> array.object(entry -> {
            entry.put("name", part.name());
            entry.put("error", part.error());
            entry.put("formula", part.formula());
            entry.put("source", part.source());
        }));
    }

    private static List<SensorBudget> of(ReturnStudy returns, List<OperatingState> states) {
        return returns.sensors().stream()
                .filter(budget -> states.stream().anyMatch(state -> state.id().equals(budget.state())))
                .toList();
    }

    private static List<String> notChecked(ReturnStudy returns) {
        return returns.unjudged().stream()
                .filter(each -> each.study() == Unjudged.Study.SENSORS)
                .map(Unjudged::sentence)
                .toList();
    }

    private static String inUnit(SensorBudget budget, double value) {
        return Formats.number(value) + " " + budget.quantityUnit();
    }
}
