package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.widget.Tone;

/** What table and heat balance each allow a wire, as facts. */
final class MethodFacts {

    private MethodFacts() {}

    /** The facts of a comparison; the limit, A, is what the wire may carry in the end. */
    static List<Fact> of(MethodComparison comparison, double limitAmps) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                "By the table",
                comparison.tableAmps().isPresent()
                        ? Formats.amps(comparison.tableAmps().getAsDouble()) + designed(!comparison.byBalance())
                        : ""));
        facts.add(
                Fact.of("By heat balance", Formats.amps(comparison.balanceAmps()) + designed(comparison.byBalance())));
        comparison.apartFraction().ifPresent(apart -> {
            boolean beyond = limitAmps > comparison.tableAmps().orElse(Double.POSITIVE_INFINITY);
            String text = Formats.percent(Math.abs(apart))
                    + (comparison.unsafeSide() ? ", the heat balance allows more" : ", the heat balance allows less");
            facts.add(new Fact("Apart", text, beyond ? Tone.WARNING : Tone.PLAIN));
        });
        return facts;
    }

    /** How fast it warms, how hot a short state makes it, and whether skin depth matters. */
    static List<Fact> warming(WireTemperature temperature) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Time constant", Formats.seconds(temperature.timeConstantSeconds())));
        temperature
                .overload()
                .ifPresent(time -> facts.add(Fact.of(
                        "To its limit",
                        (time.seconds().isPresent()
                                        ? Formats.seconds(time.seconds().getAsDouble())
                                        : "never") + " at " + Formats.amps(temperature.overloadAmps()))));
        temperature
                .shortPeak()
                .ifPresent(peak -> facts.add(Fact.of(
                        "Short state",
                        Formats.celsius(peak.celsius()) + " after " + Formats.seconds(peak.seconds()) + " of "
                                + peak.state())));
        temperature
                .skin()
                .forEach(check -> facts.add(
                        new Fact("Switched in it", check.words(), check.matters() ? Tone.WARNING : Tone.PLAIN)));
        return facts;
    }

    private static String designed(boolean toThis) {
        return toThis ? ", designed to this" : "";
    }
}
