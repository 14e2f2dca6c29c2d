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

/** The parts as a list, with where they are bought and what they cost. */
final class PartSheet implements ElementSheet<Part> {

    @Override
    public String title() {
        return "Parts";
    }

    @Override
    public List<Column<Part>> columns() {
        return List.of(
                Column.text("Part", "Part number", 12, part -> part.id().value()),
                Column.text("Description", "What it is", 34, Part::description),
                Column.text("Maker", "Who makes it", 12, Part::maker),
                ColumnEdits.words(
                        "Supplier", "Who sells it", 16, part -> part.supplier().orElse(""), PartEdits::supplier),
                ColumnEdits.words(
                        "Order number",
                        "The supplier's number of it",
                        14,
                        part -> part.orderNumber().orElse(""),
                        PartEdits::orderNumber),
                Column.<Part>number(
                                "Price",
                                "",
                                "Price of one, of a metre for what is bought by length, in the currency of the rules",
                                PartSheet::price)
                        .edited(ColumnEdits.of(
                                part -> true,
                                part -> part.unitPrice().isPresent()
                                        ? TypedNumbers.exact(part.unitPrice().getAsDouble())
                                        : "",
                                part -> part,
                                PartEdits::price)),
                ColumnEdits.words(
                        "Alternates",
                        "What may be fitted instead, with commas between: part numbers or words",
                        24,
                        part -> String.join(", ", part.alternates()),
                        PartEdits::alternates),
                ColumnEdits.words(
                        "Customer supplies",
                        "Whether the customer provides it: yes or no",
                        16,
                        part -> part.customerSupplied() ? "yes" : "",
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
