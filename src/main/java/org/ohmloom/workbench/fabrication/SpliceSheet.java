package org.ohmloom.workbench.fabrication;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.edit.ChangeFabrication;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The splices: where they lie and which stay there. */
final class SpliceSheet implements ElementSheet<SpliceSheet.Row> {
    private static final Words WORDS = Words.of("fabrication");

    /**
     * One splice.
     *
     * @param splice  the splice
     * @param harness the harness as it is
     */
    record Row(Splice splice, Harness harness) {

        boolean stays() {
            return harness.rules().fabricationRules().fixedSplices().contains(splice.id());
        }
    }

    @Override
    public String title() {
        return WORDS.get("splice.splices");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("splice.splice"), WORDS.get("splice.splice.about"), 9, row -> row.splice()
                        .id()
                        .value()),
                Column.text(WORDS.term("splice.name"), WORDS.get("splice.name.about"), 30, row -> row.splice()
                        .name()),
                Column.<Row>text(WORDS.term("splice.where"), WORDS.get("splice.where.about"), 30, row -> row.splice()
                                .place()
                                .map(TradeWords::place)
                                .orElse(""))
                        .quantities(),
                ColumnEdits.words(
                        WORDS.term("splice.stays"),
                        WORDS.get("splice.stays.about"),
                        8,
                        row -> TypedNumbers.yesIf(row.stays()),
                        (rows, typed) -> stay(rows, TypedNumbers.yes(typed))));
    }

    private static Edit stay(List<Row> rows, boolean yes) {
        FabricationRules rules = rows.get(0).harness().rules().fabricationRules();
        List<SpliceId> fixed = new ArrayList<>(rules.fixedSplices());
        for (Row row : rows) {
            fixed.remove(row.splice().id());
            if (yes) {
                fixed.add(row.splice().id());
            }
        }
        String which =
                rows.size() == 1 ? rows.get(0).splice().id().value() : WORDS.get("splice.splices-2", rows.size());
        return new ChangeFabrication(
                WORDS.text(yes ? "splice.keep-place-of" : "splice.free-place-of", which),
                FabricationParts.withFixed(rules, fixed));
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().splices().all().stream()
                .map(splice -> new Row(splice, readout.harness()))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.splice().id();
    }
}
