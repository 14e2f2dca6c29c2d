package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Sheet;

/** What is typed into the lists of parts and contacts and of what the shop is asked. */
class TypedPartsTest {
    private static final Harness HARNESS = AnalysedExamples.harness("teaching");

    private static <R> Harness typed(Sheet<R> sheet, int row, String column, String text) {
        List<R> rows = sheet.rows(new Readout(HARNESS, Optional.empty(), Optional.empty()));
        return sheet.columns().stream()
                .filter(each -> each.title().equals(column))
                .findFirst()
                .orElseThrow()
                .edit()
                .orElseThrow()
                .parse(rows.subList(row, row + 1), text)
                .apply(HARNESS);
    }

    private static Part part(String column, String text) {
        Part before = HARNESS.parts().all().iterator().next();
        return typed(new PartSheet(), 0, column, text).parts().get(before.id());
    }

    private static void refused(String line, org.junit.jupiter.api.function.Executable what) {
        assertEquals(line, assertThrows(IllegalArgumentException.class, what).getMessage());
    }

    @Test
    void aPartsSupplierNumberPriceAlternatesAndSupplyAreTyped() {
        assertEquals(
                Optional.of("Corner shop"), part("Supplier", " Corner shop ").supplier());
        assertEquals(Optional.empty(), part("Supplier", "").supplier());
        assertEquals(Optional.of("77-1"), part("Order number", "77-1").orderNumber());
        assertEquals(OptionalDouble.of(2.35), part("Price", "2,35").unitPrice());
        assertEquals(OptionalDouble.empty(), part("Price", "").unitPrice());
        assertEquals(
                List.of("EX-9", "any of the size"),
                part("Alternates", "EX-9, any of the size").alternates());
        assertEquals(true, part("Customer supplies", "yes").customerSupplied());
    }

    @Test
    void aPriceBelowNothingIsRefusedInOneLine() {
        Part first = HARNESS.parts().all().iterator().next();
        refused("price of part " + first.id() + " must be 0 or more, was -1.0", () -> part("Price", "-1"));
    }

    @Test
    void aContactsToolIsAPartOfTheListAndItsStripLengthIsInMillimetres() {
        ContactPart first = HARNESS.contacts().all().iterator().next();
        PartId tool = HARNESS.parts().ids().iterator().next();
        Harness tooled = typed(new ContactSheet(), 0, "Tool", tool.value().toLowerCase(Locale.ROOT));
        assertEquals(Optional.of(tool), tooled.contacts().get(first.id()).tool());
        Harness stripped = typed(new ContactSheet(), 0, "Strip", "0,6 cm");
        assertEquals(6, stripped.contacts().get(first.id()).stripLengthMm(), 1e-12);
        refused(
                "there is no part 'EX-NONE'; tools are named by their numbers in the list of parts",
                () -> typed(new ContactSheet(), 0, "Tool", "EX-NONE"));
    }

    @Test
    void classWasteAndCurrencyAreTypedAndTheImpossibleIsRefused() {
        FabricationRules rules =
                typed(new WorkshopSheet(), 0, "Value", "class 3").rules().fabricationRules();
        assertEquals(Optional.of(3), rules.workmanshipClass());
        assertEquals(HARNESS.rules().fabricationRules().currency(), rules.currency(), "what was asked before stays");
        assertEquals(
                0.125,
                typed(new WorkshopSheet(), 1, "Value", "12.5")
                        .rules()
                        .fabricationRules()
                        .wasteFraction()
                        .orElseThrow(),
                1e-12);
        assertEquals(
                Optional.of("CHF"),
                typed(new WorkshopSheet(), 2, "Value", "CHF")
                        .rules()
                        .fabricationRules()
                        .currency());
        refused("'4' is no class of workmanship: 1, 2 or 3", () -> typed(new WorkshopSheet(), 0, "Value", "4"));
        refused("waste of wire must be from 0.0 to 1.0, was 1.5", () -> typed(new WorkshopSheet(), 1, "Value", "150"));
        assertSame(HARNESS, typed(new WorkshopSheet(), 2, "Value", "EUR"));
    }
}
