package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** What table and heat balance each allow a wire, as facts. */
final class MethodFacts {
    private static final Words WORDS = Words.of("inspector");

    private MethodFacts() {}

    /** The facts of a comparison; the limit, A, is what the wire may carry in the end. */
    static List<Fact> of(MethodComparison comparison, double limitAmps) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                WORDS.get("method.by-the-table"),
                comparison.tableAmps().isPresent()
                        ? Formats.amps(comparison.tableAmps().getAsDouble()) + designed(!comparison.byBalance())
                        : ""));
        facts.add(Fact.of(
                WORDS.get("method.by-heat-balance"),
                Formats.amps(comparison.balanceAmps()) + designed(comparison.byBalance())));
        comparison.apartFraction().ifPresent(apart -> {
            boolean beyond = limitAmps > comparison.tableAmps().orElse(Double.POSITIVE_INFINITY);
            String text = Formats.percent(Math.abs(apart))
                    + (comparison.unsafeSide()
                            ? WORDS.get("method.the-heat-balance-allows")
                            : WORDS.get("method.the-heat-balance-allows-less"));
            facts.add(new Fact(WORDS.get("method.apart"), text, beyond ? Tone.WARNING : Tone.PLAIN));
        });
        return facts;
    }

    /** How fast it warms, how hot a short state makes it, and whether skin depth matters. */
    static List<Fact> warming(WireTemperature temperature) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(WORDS.get("method.time-constant"), Formats.seconds(temperature.timeConstantSeconds())));
        temperature
                .overload()
                .ifPresent(time -> facts.add(Fact.of(
                        WORDS.get("method.to-its-limit"),
                        WORDS.get(
                                "method.at",
                                time.seconds().isPresent()
                                        ? Formats.seconds(time.seconds().getAsDouble())
                                        : WORDS.get("method.never"),
                                Formats.amps(temperature.overloadAmps())))));
        temperature
                .shortPeak()
                .ifPresent(peak -> facts.add(Fact.of(
                        WORDS.get("method.short-state"),
                        WORDS.get(
                                "method.after-of",
                                Formats.celsius(peak.celsius()),
                                Formats.seconds(peak.seconds()),
                                peak.state()))));
        temperature
                .skin()
                .forEach(check -> facts.add(new Fact(
                        WORDS.get("method.switched-in-it"),
                        Words.said(check.told()),
                        check.matters() ? Tone.WARNING : Tone.PLAIN)));
        return facts;
    }

    private static String designed(boolean toThis) {
        return toThis ? WORDS.get("method.designed-to-this") : "";
    }
}
