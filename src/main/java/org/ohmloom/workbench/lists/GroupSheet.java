package org.ohmloom.workbench.lists;

import java.util.List;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.Words;

/** The rules on which loads may run together, as a list. */
final class GroupSheet implements ElementSheet<GroupSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    /**
     * One rule.
     *
     * @param group   the rule
     * @param harness the harness it is of
     */
    record Row(LoadGroup group, Harness harness) {}

    @Override
    public String title() {
        return WORDS.get("group.load-groups");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("group.group"), WORDS.get("group.group.about"), 8, row -> row.group()
                        .id()
                        .value()),
                ColumnEdits.words(
                        WORDS.term("group.name"),
                        WORDS.get("group.name.about"),
                        26,
                        row -> row.group().name(),
                        (rows, typed) -> GroupEdits.name(groups(rows), typed)),
                ColumnEdits.words(
                        WORDS.term("group.rule"),
                        WORDS.get("group.rule.about"),
                        16,
                        row -> GroupEdits.rule(row.group()),
                        (rows, typed) -> GroupEdits.rule(groups(rows), typed)),
                ColumnEdits.words(
                        WORDS.term("group.loads"),
                        WORDS.get("group.loads.about"),
                        44,
                        row -> GroupEdits.loads(row.group()),
                        (rows, typed) -> GroupEdits.loads(rows.get(0).harness(), groups(rows), typed)),
                Column.number(
                        WORDS.term("group.most-on"),
                        "",
                        WORDS.get("group.most-on.about"),
                        row -> CellText.of(row.group().mostOn())));
    }

    private static List<LoadGroup> groups(List<Row> rows) {
        return rows.stream().map(Row::group).toList();
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().loadGroups().all().stream()
                .map(group -> new Row(group, readout.harness()))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.group().id();
    }
}
