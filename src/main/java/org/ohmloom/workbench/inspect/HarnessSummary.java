package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.inspect.Inspection.Prose;
import org.ohmloom.workbench.inspect.Inspection.Section;
import org.ohmloom.workbench.widget.Tone;

/** The harness as a whole, shown while nothing is selected. */
final class HarnessSummary {

    private HarnessSummary() {}

    static Inspection of(Readout readout) {
        Harness harness = readout.harness();
        List<Section> sections = new ArrayList<>();
        readout.analysis()
                .ifPresent(results -> sections.add(new Facts(
                        "Results",
                        List.of(
                                Fact.of(
                                        "Wires to make",
                                        String.valueOf(results.totals().wires())),
                                Fact.of(
                                        "Length of them",
                                        readout.units().metres(results.totals().lengthMetres())),
                                Fact.of(
                                        "Copper",
                                        Formats.kilograms(results.totals().copperKg())),
                                Fact.of(
                                        "Connectors to fit",
                                        String.valueOf(results.totals().connectors())),
                                Fact.of(
                                        "Largest drop of a load",
                                        Formats.volts(results.totals().worstDropVolts()))))));
        DesignRules rules = harness.rules();
        sections.add(new Facts(
                "Judged by",
                List.of(
                        Fact.of("Design basis", rules.basis()),
                        Fact.of("Nominal voltage", Formats.volts(rules.nominalVolts())),
                        Fact.of("Allowed drop", Formats.percent(rules.allowedDropFraction())),
                        Fact.of("Ambient", readout.units().celsius(rules.ambientCelsius())),
                        Fact.of("Insulation", rules.insulation()))));
        sections.add(Facts.entered("Title block", new RecordFacts(readout.units()).of(harness.titleBlock())));
        harness.notes().all().forEach(note -> sections.add(new Prose("Note", note.text(), Tone.PLAIN)));
        return new Inspection(
                harness.titleBlock().title(),
                harness.titleBlock().number() + ", revision "
                        + harness.titleBlock().currentRevision(),
                sections);
    }
}
