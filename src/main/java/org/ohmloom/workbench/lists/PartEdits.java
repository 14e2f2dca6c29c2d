package org.ohmloom.workbench.lists;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about parts and how they are bought, and about contacts, as edits. */
final class PartEdits {
    private static final Words WORDS = Words.of("lists");

    private PartEdits() {}

    static Edit supplier(List<Part> parts, String typed) {
        return all(
                parts,
                WORDS.get("part.supplier-2"),
                part -> new Part(
                        part.id(),
                        part.maker(),
                        part.description(),
                        part.massKg(),
                        words(typed),
                        part.orderNumber(),
                        part.unitPrice(),
                        part.alternates(),
                        part.customerSupplied()));
    }

    static Edit orderNumber(List<Part> parts, String typed) {
        return all(
                parts,
                WORDS.get("part.order-number"),
                part -> new Part(
                        part.id(),
                        part.maker(),
                        part.description(),
                        part.massKg(),
                        part.supplier(),
                        words(typed),
                        part.unitPrice(),
                        part.alternates(),
                        part.customerSupplied()));
    }

    /** A price, "2.35" or "2,35"; nothing takes it away. */
    static Edit price(List<Part> parts, String typed) {
        OptionalDouble price = TypedNumbers.optional(typed, Unit.FRACTION);
        return all(
                parts,
                WORDS.get("part.price-2"),
                part -> new Part(
                        part.id(),
                        part.maker(),
                        part.description(),
                        part.massKg(),
                        part.supplier(),
                        part.orderNumber(),
                        price,
                        part.alternates(),
                        part.customerSupplied()));
    }

    /** Parts that may be fitted instead, with commas between them. */
    static Edit alternates(List<Part> parts, String typed) {
        List<String> names = Arrays.stream(typed.split("[,;]"))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
        return all(
                parts,
                WORDS.get("part.alternates-2"),
                part -> new Part(
                        part.id(),
                        part.maker(),
                        part.description(),
                        part.massKg(),
                        part.supplier(),
                        part.orderNumber(),
                        part.unitPrice(),
                        names,
                        part.customerSupplied()));
    }

    static Edit customerSupplied(List<Part> parts, String typed) {
        boolean supplied = TypedNumbers.yes(typed);
        return all(
                parts,
                WORDS.get("part.supply"),
                part -> new Part(
                        part.id(),
                        part.maker(),
                        part.description(),
                        part.massKg(),
                        part.supplier(),
                        part.orderNumber(),
                        part.unitPrice(),
                        part.alternates(),
                        supplied));
    }

    /** The crimping tool of contacts, by its part number; nothing leaves it open. */
    static Edit tool(Harness harness, List<ContactPart> contacts, String typed) {
        Optional<PartId> tool = words(typed).map(number -> part(harness, number));
        return contacts(
                contacts,
                "tool",
                contact -> new ContactPart(
                        contact.id(),
                        contact.part(),
                        contact.contactOhms(),
                        contact.limits(),
                        contact.conductorMinMm2(),
                        contact.conductorMaxMm2(),
                        contact.insulationMinMm(),
                        contact.insulationMaxMm(),
                        contact.doubleCrimps(),
                        contact.stripLengthMm(),
                        contact.plating(),
                        contact.seal(),
                        tool,
                        contact.ratedVolts()));
    }

    /** The length contacts' wires are stripped, "5" or "5 mm". A bare number is mm. */
    static Edit strip(List<ContactPart> contacts, String typed) {
        double stripMm = Unit.MILLIMETRE.fromCanonical(
                TypedNumbers.needed(typed, Unit.MILLIMETRE, WORDS.get("part.a-strip-length")));
        return contacts(
                contacts,
                WORDS.get("part.strip-length"),
                contact -> new ContactPart(
                        contact.id(),
                        contact.part(),
                        contact.contactOhms(),
                        contact.limits(),
                        contact.conductorMinMm2(),
                        contact.conductorMaxMm2(),
                        contact.insulationMinMm(),
                        contact.insulationMaxMm(),
                        contact.doubleCrimps(),
                        stripMm,
                        contact.plating(),
                        contact.seal(),
                        contact.tool(),
                        contact.ratedVolts()));
    }

    /** The current limits of contacts, "24 A at 20 °C; 18 A at 85 °C"; nothing where they are not known. */
    static Edit limits(List<ContactPart> contacts, String typed) {
        List<ContactLimit> limits = PointsText.limits(typed);
        return contacts(
                contacts,
                Words.of("lists").get("current-limits").toLowerCase(Locale.ROOT),
                contact -> new ContactPart(
                        contact.id(),
                        contact.part(),
                        contact.contactOhms(),
                        limits,
                        contact.conductorMinMm2(),
                        contact.conductorMaxMm2(),
                        contact.insulationMinMm(),
                        contact.insulationMaxMm(),
                        contact.doubleCrimps(),
                        contact.stripLengthMm(),
                        contact.plating(),
                        contact.seal(),
                        contact.tool(),
                        contact.ratedVolts()));
    }

    private static PartId part(Harness harness, String typed) {
        return harness.parts().ids().stream()
                .filter(id -> id.value().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get("part.there-is-no-part", typed)));
    }

    private static Optional<String> words(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(typed.strip());
    }

    private static Edit all(List<Part> parts, String what, UnaryOperator<Part> change) {
        List<Edit> edits = parts.stream()
                .map(part -> (Edit) ChangeElements.tried(WORDS.text("part.set-of", what, part.id()), part, change))
                .toList();
        return TypedNumbers.together(WORDS.text("part.set-of-parts", what, parts.size()), edits);
    }

    private static Edit contacts(List<ContactPart> contacts, String what, UnaryOperator<ContactPart> change) {
        List<Edit> edits = contacts.stream()
                .map(contact ->
                        (Edit) ChangeElements.tried(WORDS.text("part.set-of", what, contact.id()), contact, change))
                .toList();
        return TypedNumbers.together(WORDS.text("part.set-of-contacts", what, contacts.size()), edits);
    }
}
