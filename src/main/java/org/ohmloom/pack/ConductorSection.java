package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.BudgetCharts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.Requirement;
import org.ohmloom.units.Formats;

/** What asks for which size of every wire, and how the open sizes were chosen together. */
final class ConductorSection {
    /** Loads in the chart, few enough that it stands below its heading. */
    private static final int CHART_ROWS = 12;

    private final Analysis analysis;
    private final SceneFonts fonts;

    ConductorSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    List<Block> blocks() {
        if (analysis.conductors().isEmpty()) {
            return List.of();
        }
        JointChoice joint = analysis.evidence().joint();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Conductors chosen together"));
        blocks.add(new Block.Prose(Wording.printed(joint.sentence())));
        blocks.add(new Block.Facts(facts(joint)));
        BudgetCharts.of(analysis.harness(), joint, CHART_ROWS)
                .ifPresent(chart ->
                        blocks.add(new Block.Pictures(List.of(chart.scene(fonts, Block.Pictures.WIDTH_MM * 0.75)))));
        blocks.add(new Block.Heading("Size each requirement asks for"));
        blocks.add(new Block.Table(
                "conductor-requirements",
                columns(),
                analysis.conductors().values().stream().map(this::row).toList(),
                ""));
        return blocks;
    }

    private static List<Block.Fact> facts(JointChoice joint) {
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("Copper before", Formats.kilograms(joint.beforeKg())));
        facts.add(new Block.Fact("Copper as chosen", Formats.kilograms(joint.afterKg())));
        if (joint.outcome() != JointChoice.Outcome.NOTHING_OPEN) {
            facts.add(new Block.Fact("No choice takes less than", sum(joint, joint.lowerBound())));
            facts.add(new Block.Fact("With sizes between the listed ones", sum(joint, joint.continuousBound())));
            facts.add(new Block.Fact(
                    "At most above the least",
                    joint.isProvenLeast() ? "nothing: proven" : Formats.percent(joint.gapRatio())));
        }
        return facts;
    }

    private static String sum(JointChoice joint, double value) {
        return joint.isPrice() ? String.format(Locale.ROOT, "%.2f", value) : Formats.kilograms(value);
    }

    private static List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.code("Wire"));
        columns.add(Column.code("Has"));
        columns.add(Column.code("Needs"));
        columns.add(Column.code("Governed by"));
        for (Governor governor : Governor.values()) {
            columns.add(Column.words(governor.words().substring(0, 1).toUpperCase(Locale.ROOT)
                    + governor.words().substring(1)));
        }
        return columns;
    }

    private Row row(ConductorChoice choice) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.text(choice.wire().value()).toned(Cell.Tone.STRONG));
        cells.add(Wording.size(analysis.harness().wires().get(choice.wire())));
        cells.add(choice.gauge().map(Wording::size).map(Cell::text).orElseGet(() -> Cell.missing("none serves")));
        cells.add(Cell.text(choice.governing().governor().words()));
        for (Governor governor : Governor.values()) {
            cells.add(choice.requirements().stream()
                    .filter(each -> each.governor() == governor)
                    .findFirst()
                    .map(each -> asked(choice, each))
                    .orElse(Cell.empty()));
        }
        return new Row(Row.Kind.ITEM, cells);
    }

    private static Cell asked(ConductorChoice choice, Requirement required) {
        if (required.smallest().isEmpty()) {
            return Cell.missing("none serves");
        }
        Cell cell = Cell.text(Wording.size(required.smallest().get()));
        return required.equals(choice.governing()) ? cell.toned(Cell.Tone.STRONG) : cell;
    }
}
