package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Part;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The parts as a list, with where they are bought and what they cost. */
final class PartSheet implements ElementSheet<Part> {
    private static final Words WORDS = Words.of("lists");

    @Override
    public String title() {
        return WORDS.get("part.parts");
    }

    @Override
    public List<Column<Part>> columns() {
        return List.of(
                Column.text(WORDS.term("part.part"), WORDS.get("part.part.about"), 12, part -> part.id()
                        .value()),
                Column.text(WORDS.term("part.description"), WORDS.get("part.description.about"), 34, Part::description),
                Column.text(WORDS.term("part.maker"), WORDS.get("part.maker.about"), 12, Part::maker),
                ColumnEdits.words(
                        WORDS.term("part.supplier"),
                        WORDS.get("part.supplier.about"),
                        16,
                        part -> part.supplier().orElse(""),
                        PartEdits::supplier),
                ColumnEdits.words(
                        WORDS.term("part.order-number-2"),
                        WORDS.get("part.order-number-2.about"),
                        14,
                        part -> part.orderNumber().orElse(""),
                        PartEdits::orderNumber),
                Column.<Part>number(WORDS.term("part.price"), "", WORDS.get("part.price.about"), PartSheet::price)
                        .edited(ColumnEdits.of(
                                part -> true,
                                part -> part.unitPrice().isPresent()
                                        ? TypedNumbers.exact(part.unitPrice().getAsDouble())
                                        : "",
                                part -> part,
                                PartEdits::price)),
                ColumnEdits.words(
                        WORDS.term("part.alternates"),
                        WORDS.get("part.alternates.about"),
                        24,
                        part -> String.join(", ", part.alternates()),
                        PartEdits::alternates),
                ColumnEdits.words(
                        WORDS.term("part.customer-supplies"),
                        WORDS.get("part.customer-supplies.about"),
                        16,
                        part -> TypedNumbers.yesIf(part.customerSupplied()),
                        PartEdits::customerSupplied));
    }

    /** To a hundredth, as prices are written. */
    private static CellText price(Part part) {
        return part.unitPrice().isPresent()
                ? CellText.of(
                        String.format(Locale.ROOT, "%.2f", part.unitPrice().getAsDouble()),
                        part.unitPrice().getAsDouble())
                : CellText.EMPTY;
    }

    @Override
    public List<Part> rows(Readout readout) {
        return List.copyOf(readout.harness().parts().all());
    }

    @Override
    public ElementId id(Part part) {
        return part.id();
    }
}
