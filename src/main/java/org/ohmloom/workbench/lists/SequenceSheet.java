package org.ohmloom.workbench.lists;

import java.util.List;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateSequence;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.Words;

/** Operating states one after another, as a list. */
final class SequenceSheet implements ElementSheet<SequenceSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    /**
     * One sequence.
     *
     * @param sequence the sequence
     * @param harness  the harness it is of
     */
    record Row(StateSequence sequence, Harness harness) {}

    @Override
    public String title() {
        return WORDS.get("sequence.sequences");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(
                        WORDS.term("sequence.sequence-2"),
                        WORDS.get("sequence.sequence-2.about"),
                        10,
                        row -> row.sequence().id().value()),
                ColumnEdits.words(
                        WORDS.term("sequence.name"),
                        WORDS.get("sequence.name.about"),
                        24,
                        row -> row.sequence().name(),
                        (rows, typed) -> SequenceEdits.name(sequences(rows), typed)),
                ColumnEdits.<Row>words(
                                WORDS.term("sequence.steps"),
                                WORDS.get("sequence.steps.about"),
                                60,
                                row -> SequenceEdits.steps(row.sequence()),
                                (rows, typed) -> SequenceEdits.steps(rows.get(0).harness(), sequences(rows), typed))
                        .quantities(),
                ColumnEdits.number(
                        WORDS.term("sequence.when-at"),
                        "V",
                        WORDS.get("sequence.when-at.about"),
                        row -> CellText.of(row.sequence().untilVolts()),
                        (rows, typed) -> SequenceEdits.until(sequences(rows), typed)),
                Column.<Row>text(
                                WORDS.term("sequence.lasts"),
                                WORDS.get("sequence.lasts.about"),
                                8,
                                row -> Formats.seconds(row.sequence().totalSeconds()))
                        .quantities());
    }

    private static List<StateSequence> sequences(List<Row> rows) {
        return rows.stream().map(Row::sequence).toList();
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().sequences().all().stream()
                .map(sequence -> new Row(sequence, readout.harness()))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.sequence().id();
    }
}
