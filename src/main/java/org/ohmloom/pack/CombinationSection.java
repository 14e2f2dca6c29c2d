package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.CombinationCharts;
import org.ohmloom.draw.study.WorstCase;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** The worst currents and drops over all combinations of loads that are allowed. */
final class CombinationSection {

    private static final int MOST_BARS = 10;

    /** How much worse than in the states, and how near to what is allowed, a wire must be to be listed. */
    private static final double WORSE = 0.005;

    private static final double NEARLY = 0.8;

    private static final List<Column> CURRENTS = columns("Wire", Unit.AMP, 2);
    private static final List<Column> DROPS = columns("Load", Unit.VOLT, 3);

    private final Analysis analysis;
    private final SceneFonts fonts;

    CombinationSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    private static List<Column> columns(String what, Unit unit, int decimals) {
        return List.of(
                Column.words(what),
                Column.number("Worst", unit, decimals),
                Column.number("In states", unit, decimals),
                Column.number("Allowed", unit, decimals),
                Column.words("Certain"),
                Column.words("While these run"),
                Column.words("With"));
    }

    List<Block> blocks() {
        List<WorstCase> currents = WorstCase.currents(analysis);
        List<WorstCase> drops = WorstCase.drops(analysis);
        if (currents.isEmpty() && drops.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Worst combination of loads"));
        blocks.add(new Block.Prose("Heating current of every wire and drop of every load over all combinations that the"
                + " load groups allow and the wiring makes possible, beside the worst of the operating states that last."
                + " \"proven\": no allowed combination is worse; \"found\": the worst that was found. Left out are"
                + " wires that are no worse off than in the states and well below what they may carry."
                + (analysis.evidence().envelope().hasGroups()
                        ? ""
                        : " No load groups are entered, so everything the wiring makes possible counts as allowed.")));
        blocks.add(new Block.Table(
                "combinations-wires", CURRENTS, rows(currents), "No wire is worse off than in the states."));
        blocks.add(new Block.Table("combinations-loads", DROPS, rows(drops), "No load runs."));
        List<Scene> pictures = new ArrayList<>();
        CombinationCharts.currents(analysis, MOST_BARS)
                .ifPresent(chart -> pictures.add(chart.scene(fonts, Block.Pictures.HALF_MM)));
        CombinationCharts.drops(analysis, MOST_BARS)
                .ifPresent(chart -> pictures.add(chart.scene(fonts, Block.Pictures.HALF_MM)));
        blocks.add(new Block.Pictures(pictures));
        List<String> notes = Text.english(analysis.evidence().envelope().notes());
        if (!notes.isEmpty()) {
            blocks.add(new Block.Points(notes));
        }
        return blocks;
    }

    private static List<Row> rows(List<WorstCase> cases) {
        return cases.stream()
                .filter(each -> each.isDrop() || each.moreRatio() > WORSE || each.useRatio() > NEARLY)
                .sorted(Comparator.comparingDouble(WorstCase::useRatio).reversed())
                .map(CombinationSection::row)
                .toList();
    }

    private static Row row(WorstCase each) {
        Cell worst = Cell.number(each.worst());
        return Row.of(
                Cell.text(each.label()).toned(Cell.Tone.STRONG),
                each.isTooMuch() ? worst.toned(Cell.Tone.ALERT) : worst,
                Cell.number(each.named()),
                Cell.number(each.allowed()),
                Cell.text(each.proven() ? "proven" : "found"),
                Cell.text(each.loadsText()),
                Cell.text(each.situation()));
    }
}
