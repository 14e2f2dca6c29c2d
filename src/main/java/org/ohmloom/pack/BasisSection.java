package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Zone;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.AmpacityTable;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.units.Formats;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.units.Unit;

/** The summary, the design basis and the limits. */
final class BasisSection {
    private static final List<Column> ZONES = List.of(
            Column.code("Zone"),
            Column.words("Name"),
            Column.number("Ambient", Unit.DEGREE_CELSIUS, 0),
            Column.words("Engine space"));

    private final Analysis analysis;

    BasisSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Facts(List.of(
                new Block.Fact("Errors open", String.valueOf(analysis.count(Severity.ERROR))),
                new Block.Fact("Warnings open", String.valueOf(analysis.count(Severity.WARNING))),
                new Block.Fact("Notes open", String.valueOf(analysis.count(Severity.NOTE))),
                new Block.Fact(
                        "Accepted",
                        String.valueOf(analysis.findings().stream()
                                .filter(finding -> !finding.isOpen())
                                .count())),
                new Block.Fact(
                        "Operating states", String.valueOf(analysis.states().size())),
                new Block.Fact(
                        "Largest drop of a load",
                        Formats.volts(analysis.totals().worstDropVolts())),
                new Block.Fact(
                        "Wires to be made", String.valueOf(analysis.totals().wires())),
                new Block.Fact("Their length", Formats.metres(analysis.totals().lengthMetres())))));
        blocks.add(new Block.Heading("Design basis and limits"));
        blocks.add(new Block.Facts(facts()));
        List<Row> zones = new ArrayList<>();
        for (Zone zone : analysis.harness().zones().all()) {
            zones.add(Row.of(
                    Cell.text(zone.id().value()).toned(Cell.Tone.STRONG),
                    Cell.text(zone.name()),
                    Cell.number(zone.ambientCelsius()),
                    Cell.text(zone.engineSpace() ? "yes" : "no")));
        }
        if (!zones.isEmpty()) {
            blocks.add(new Block.Table("zones", ZONES, zones, ""));
        }
        return blocks;
    }

    private List<Block.Fact> facts() {
        DesignRules rules = analysis.harness().rules();
        DesignBasis basis = analysis.evidence().basis();
        AmpacityTable ampacity = analysis.evidence().tables().ampacity(basis.ampacityTable());
        String insulation = analysis.evidence()
                .tables()
                .findInsulation(rules.insulation())
                .map(type -> rules.insulation() + ", stands " + Formats.celsius(type.maximumCelsius()))
                .orElse(rules.insulation() + ", not in the tables");
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("Design basis", basis.title()));
        facts.add(new Block.Fact("Nominal voltage", Formats.volts(rules.nominalVolts())));
        facts.add(new Block.Fact(
                "Allowed drop, feed and return together, unless a load has its own",
                Formats.percent(rules.allowedDropFraction()) + " of nominal, "
                        + Formats.volts(rules.allowedDropVolts())));
        facts.add(new Block.Fact("Sizes chosen in", rules.gaugeSystem() == GaugeSystem.AWG ? "AWG" : "mm²"));
        facts.add(new Block.Fact("Insulation unless a wire names its own", insulation));
        facts.add(new Block.Fact(
                "Smallest single wire", rules.minimumGauge().map(Wording::size).orElse("that of the design basis")));
        facts.add(new Block.Fact("Ambient where no zone says otherwise", Formats.celsius(rules.ambientCelsius())));
        facts.add(new Block.Fact("Ampacity table", ampacity.title()));
        facts.add(new Block.Fact("Holds for air of", Formats.celsius(ampacity.baseAmbientCelsius())));
        return facts;
    }
}
