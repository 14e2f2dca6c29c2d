package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.remedy.Effect;
import org.ohmloom.remedy.Remedy;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** What was tried on copies against the findings on returns: for each the best few, with what they do and take. */
final class RemedySection {

    /** Most remedies shown for one finding. */
    private static final int MOST_SHOWN = 4;

    private static final List<Column> COLUMNS = List.of(
            Column.words("Finding"),
            Column.words("Remedy"),
            Column.words("Clears it"),
            Column.words("What it does"),
            Column.number("Added copper", Unit.GRAM, 0),
            Column.number("Added length", Unit.METRE, 2),
            Column.count("Gone", 0),
            Column.count("New", 0));

    private static final double GRAMS_IN_KILOGRAM = 1000;

    private final List<RemedyList> lists;

    RemedySection(List<RemedyList> lists) {
        this.lists = lists;
    }

    List<Block> blocks() {
        if (lists.isEmpty()) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        for (RemedyList list : lists) {
            boolean first = true;
            for (Remedy remedy : list.remedies()
                    .subList(0, Math.min(MOST_SHOWN, list.remedies().size()))) {
                rows.add(row(first ? list.finding().message() : "", remedy));
                first = false;
            }
            if (first) {
                rows.add(Row.of(
                        Cell.text(list.finding().message()),
                        Cell.missing("none of the usual remedies applies"),
                        Cell.empty(),
                        Cell.empty(),
                        Cell.empty(),
                        Cell.empty(),
                        Cell.empty(),
                        Cell.empty()));
            }
        }
        return List.of(
                new Block.Heading("Remedies"),
                new Block.Prose("Each was tried on a copy of the harness, which was solved and judged anew; the best "
                        + MOST_SHOWN
                        + " of each finding are shown, best first: what clears it and brings nothing as severe comes before what"
                        + " does not, then what brings least and takes least copper. Gone and new count findings."),
                new Block.Table("remedies", COLUMNS, rows, ""));
    }

    private static Row row(String finding, Remedy remedy) {
        return Row.of(
                Cell.text(finding).toned(Cell.Tone.STRONG),
                Cell.text(Text.joined("; ", remedy.steps()).english().replace("mm2", "mm²")),
                Cell.text(remedy.clears() ? "yes" : "no"),
                Cell.text(remedy.effect().map(Effect::words).map(Text::english).orElse("")),
                Cell.number(GRAMS_IN_KILOGRAM * remedy.addedCopperKg()),
                remedy.unmeasured().isEmpty()
                        ? Cell.number(remedy.addedMetres())
                        : Cell.missing("length of " + String.join(", ", remedy.unmeasured()) + " not entered"),
                Cell.number(remedy.removed().size()),
                Cell.number(remedy.added().size()));
    }
}
