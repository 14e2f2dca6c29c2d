package org.ohmloom.workbench.lists;

import java.util.List;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.Words;

/** The kinds of contact as a list, with what crimps them. */
final class ContactSheet implements ElementSheet<ContactSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    /**
     * One kind of contact.
     *
     * @param contact the contact
     * @param harness the harness it is of
     */
    record Row(ContactPart contact, Harness harness) {}

    @Override
    public String title() {
        return WORDS.get("contact.contacts");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("contact.contact"), WORDS.get("contact.contact.about"), 10, row -> row.contact()
                        .id()
                        .value()),
                Column.text(WORDS.term("contact.part"), WORDS.get("contact.part.about"), 14, row -> row.contact()
                        .part()
                        .map(ElementId::value)
                        .orElse("")),
                ColumnEdits.words(
                        WORDS.term("contact.tool"),
                        WORDS.get("contact.tool.about"),
                        14,
                        row -> row.contact().tool().map(ElementId::value).orElse(""),
                        (rows, typed) -> PartEdits.tool(rows.get(0).harness(), contacts(rows), typed)),
                ColumnEdits.number(
                        WORDS.term("contact.strip"),
                        "mm",
                        WORDS.get("contact.strip.about"),
                        row -> CellText.of(row.contact().stripLengthMm()),
                        (rows, typed) -> PartEdits.strip(contacts(rows), typed)),
                Column.number(
                        WORDS.term("contact.from"),
                        "mm²",
                        WORDS.get("contact.from.about"),
                        row -> CellText.of(row.contact().conductorMinMm2())),
                Column.number(
                        WORDS.term("contact.to"),
                        "mm²",
                        WORDS.get("contact.to.about"),
                        row -> CellText.of(row.contact().conductorMaxMm2())),
                ColumnEdits.<Row>words(
                                Words.of("lists").term("current-limits"),
                                Words.of("lists").get("current-limits.about"),
                                34,
                                row -> PointsText.limits(row.contact()),
                                (rows, typed) -> PartEdits.limits(contacts(rows), typed))
                        .quantities(),
                Column.text(WORDS.term("contact.plating"), WORDS.get("contact.plating.about"), 8, row -> row.contact()
                        .plating()),
                Column.text(WORDS.term("contact.seal"), WORDS.get("contact.seal.about"), 14, row -> row.contact()
                        .seal()
                        .map(seal -> seal.part().value())
                        .orElse("")));
    }

    private static List<ContactPart> contacts(List<Row> rows) {
        return rows.stream().map(Row::contact).toList();
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().contacts().all().stream()
                .map(contact -> new Row(contact, readout.harness()))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.contact().id();
    }
}
