package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.heat.ShortPeak;
import org.ohmloom.heat.SkinCheck;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;

/** The steps of a wire's temperature, for the calculation log. */
final class HeatLog {

    private HeatLog() {}

    /** How temperatures are reckoned, once for the whole log. */
    static final String METHOD = "Conductor temperature: heat balance of each bundle cross-section. I²R(T) = natural"
            + " convection (Churchill and Chu 1975; Raithby and Hollands 1975 for thin wires) + radiation (emissivity 0.9)"
            + " at the outside; between outside and conductor the covering, the bundle at 0.14 W/mK with each wire in the"
            + " middle, and the insulation; temperature and resistance found together to 0.01 K";

    static List<CalculationLog.Line> of(Harness harness, WireRating rating) {
        List<CalculationLog.Line> lines = new ArrayList<>();
        WireTemperature temperature = rating.temperature();
        String state = temperature
                .state()
                .map(id -> " in " + harness.states().get(id).name())
                .orElse("");
        add(
                lines,
                1,
                "Runs at " + Formats.celsius(temperature.heat().celsius()) + state + ", "
                        + temperature.heat().place() + ", air "
                        + Formats.celsius(temperature.heat().ambientCelsius()) + ", outside "
                        + Formats.celsius(temperature.heat().surfaceCelsius()));
        add(lines, 2, temperature.shape());
        if (temperature.heat().runaway()) {
            add(lines, 2, "runs away: no steady temperature below the melting point of copper");
        }
        temperature
                .tableCelsius()
                .ifPresent(celsius -> add(
                        lines,
                        2,
                        "by what it may carry, ambient + (limit - ambient) x (I/ampacity)^2: "
                                + Formats.celsius(celsius)));
        temperature
                .conservativeCelsius()
                .ifPresent(celsius ->
                        add(lines, 2, "by " + WireTemperature.CONSERVATIVE_FORMULA + ": " + Formats.celsius(celsius)));
        rating.ampacity().flatMap(Ampacity::comparison).ifPresent(comparison -> comparison(lines, comparison));
        temperature.chart().ifPresent(chart -> add(lines, 2, "chart procedure: " + chart.words()));
        overload(lines, temperature);
        temperature.shortPeak().ifPresent(peak -> add(lines, 2, peak(harness, peak)));
        for (SkinCheck check : temperature.skin()) {
            add(lines, 2, check.words());
        }
        return lines;
    }

    private static void comparison(List<CalculationLog.Line> lines, MethodComparison comparison) {
        add(lines, 2, "both methods: " + comparison.words());
        add(lines, 3, "table: " + comparison.tableWords());
        add(lines, 3, "heat balance: " + comparison.balanceWords());
        if (comparison.unsafeSide()) {
            add(lines, 3, "the heat balance lies on the unsafe side of the table here");
        }
    }

    private static void overload(List<CalculationLog.Line> lines, WireTemperature temperature) {
        String constant = "time constant " + Formats.seconds(temperature.timeConstantSeconds());
        add(
                lines,
                2,
                temperature
                        .overload()
                        .map(time -> constant + "; " + Formats.amps(temperature.overloadAmps())
                                + ", twice what it may carry, bring it to the insulation's limit "
                                + (time.seconds().isPresent()
                                        ? "in " + Formats.seconds(time.seconds().getAsDouble())
                                        : "never")
                                + " (copper alone " + Formats.seconds(time.adiabaticSeconds()) + ")")
                        .orElse(constant));
    }

    private static String peak(Harness harness, ShortPeak peak) {
        return "after " + Formats.seconds(peak.seconds())
                + (peak.stated() ? "" : " (taken, none stated)") + " of "
                + harness.states().get(peak.state()).name() + ": from " + Formats.celsius(peak.fromCelsius()) + " to "
                + Formats.celsius(peak.celsius());
    }

    private static void add(List<CalculationLog.Line> lines, int depth, String text) {
        lines.add(new CalculationLog.Line(depth, text));
    }
}
