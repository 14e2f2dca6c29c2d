package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.inspect.Inspection.Prose;
import org.ohmloom.workbench.inspect.Inspection.Section;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** The harness as a whole, shown while nothing is selected. */
final class HarnessSummary {
    private static final Words WORDS = Words.of("inspector");

    private HarnessSummary() {}

    /** Number and revision; the number alone where nothing was issued yet. */
    private static String subtitle(TitleBlock title) {
        return title.revisions().isEmpty()
                ? WORDS.get("harness-summary.number", title.number())
                : WORDS.get("harness-summary.revision", title.number(), title.currentRevision());
    }

    static Inspection of(Readout readout) {
        Harness harness = readout.harness();
        List<Section> sections = new ArrayList<>();
        readout.analysis()
                .ifPresent(results -> sections.add(new Facts(
                        WORDS.get("harness-summary.results"),
                        List.of(
                                Fact.of(
                                        WORDS.get("harness-summary.wires-to-make"),
                                        String.valueOf(results.totals().wires())),
                                Fact.of(
                                        WORDS.get("harness-summary.length-of-them"),
                                        readout.units().metres(results.totals().lengthMetres())),
                                Fact.of(
                                        WORDS.get("harness-summary.copper"),
                                        Formats.kilograms(results.totals().copperKg())),
                                Fact.of(
                                        WORDS.get("harness-summary.connectors-to-fit"),
                                        String.valueOf(results.totals().connectors())),
                                Fact.of(
                                        WORDS.get("harness-summary.largest-drop-of-a"),
                                        Formats.volts(results.totals().worstDropVolts()))))));
        DesignRules rules = harness.rules();
        sections.add(new Facts(
                WORDS.get("harness-summary.judged-by"),
                List.of(
                        Fact.of(WORDS.get("harness-summary.design-basis"), rules.basis()),
                        Fact.of(WORDS.get("harness-summary.nominal-voltage"), Formats.volts(rules.nominalVolts())),
                        Fact.of(
                                WORDS.get("harness-summary.allowed-drop"),
                                Formats.percent(rules.allowedDropFraction())),
                        Fact.of(
                                WORDS.get("harness-summary.ambient"),
                                readout.units().celsius(rules.ambientCelsius())),
                        Fact.of(WORDS.get("harness-summary.insulation"), rules.insulation()))));
        sections.add(Facts.entered(
                WORDS.get("harness-summary.title-block"), new RecordFacts(readout.units()).of(harness.titleBlock())));
        harness.notes()
                .all()
                .forEach(note -> sections.add(new Prose(WORDS.get("harness-summary.note"), note.text(), Tone.PLAIN)));
        return new Inspection(harness.titleBlock().title(), subtitle(harness.titleBlock()), sections);
    }
}
