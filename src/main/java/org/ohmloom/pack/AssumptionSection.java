package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.Replacement;
import org.ohmloom.graph.Assumption;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/** What the calculation takes for granted: how it is done, and values that nobody entered. */
final class AssumptionSection {
    private static final List<String> METHOD = List.of(
            "Direct current. Inductance counts where an output switches an inductive load or a motor; what conductors add to"
                    + " it, and radio effects, are left out.",
            "Every conductor, contact, fuse, switch, joint and stretch of chassis is a resistance; the chassis is not 0 V.",
            "Conductor resistance is the listed one of its family at 20 °C, times (234.5 + T) / 254.5 for a copper"
                    + " temperature T in °C.",
            "Currents switched at a duty heat by their RMS value and drop voltage by their value while on; where the period is"
                    + " not short against the conductor's own warming, by the peak of the transient.",
            "Conductor temperature is that of a heat balance: natural convection, radiation, insulation and the bundle round"
                    + " it; it is an estimate, not a measurement.",
            "Lengths are cut lengths: entered, otherwise the way and the allowances of each end; a wire without either has no"
                    + " resistance here and is reported.");

    private static final List<Column> COLUMNS =
            List.of(Column.code("About"), Column.words("Taken for granted"), Column.words("Source"));

    private static final List<Column> MEASURED = List.of(
            Column.code("Of"),
            Column.number("Used, wires at 20 °C", Unit.MILLIOHM, 2),
            Column.number("Instead of", Unit.MILLIOHM, 2),
            Column.code("Reading"),
            Column.code("Serial number"),
            Column.words("How it comes about"));

    private final Analysis analysis;

    AssumptionSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        Set<Assumption> all = new LinkedHashSet<>();
        for (Solution solution : analysis.evidence().solutions().values()) {
            all.addAll(solution.network().assumptions());
        }
        List<Row> rows = new ArrayList<>();
        for (Assumption assumption : all) {
            rows.add(Row.of(
                    Cell.text(assumption.element().value()).toned(Cell.Tone.STRONG),
                    Cell.text(assumption.text()),
                    Cell.text(assumption.source())));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Assumptions"));
        blocks.add(new Block.Points(METHOD));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table("assumptions", COLUMNS, rows, ""));
        }
        blocks.addAll(measured());
        return blocks;
    }

    private List<Block> measured() {
        List<Row> rows = Replacement.of(analysis.evidence().bench()).stream()
                .map(each -> Row.of(
                        Cell.text(each.subject()).toned(Cell.Tone.STRONG),
                        Cell.number(each.ohms() * 1e3),
                        each.insteadOhms().isPresent()
                                ? Cell.number(each.insteadOhms().getAsDouble() * 1e3)
                                : Cell.empty(),
                        Cell.text(each.reading().id().value()),
                        Cell.text(each.reading().serialNumber()),
                        Cell.text(each.steps())))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        new Block.Heading("Measured resistances in the place of calculated ones"),
                        new Block.Table("measured-resistances", MEASURED, rows, ""));
    }
}
