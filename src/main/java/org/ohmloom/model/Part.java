package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An entry of the harness's parts list; the bill of materials counts them.
 *
 * @param id               identity: the part number
 * @param maker            maker of the part
 * @param description      what it is
 * @param massKg           mass of one, kg, more than 0, if known
 * @param supplier         who sells it
 * @param orderNumber      the supplier's order number
 * @param unitPrice        price of one, of a metre for what is bought by length, in the currency of the rules, 0 or more
 * @param alternates       what may be fitted instead: identities in the parts list, or words
 * @param customerSupplied whether the customer provides it
 */
public record Part(
        PartId id,
        String maker,
        String description,
        OptionalDouble massKg,
        Optional<String> supplier,
        Optional<String> orderNumber,
        OptionalDouble unitPrice,
        List<String> alternates,
        boolean customerSupplied)
        implements Element {

    public Part {
        notBlank(maker, "maker of part %s", id);
        notBlank(description, "description of part %s", id);
        massKg.ifPresent(value -> positive(value, "mass of part %s", id));
        supplier.ifPresent(value -> notBlank(value, "supplier of part %s", id));
        orderNumber.ifPresent(value -> notBlank(value, "order number of part %s", id));
        unitPrice.ifPresent(value -> notNegative(value, "price of part %s", id));
        alternates = List.copyOf(alternates);
        alternates.forEach(each -> {
            notBlank(each, "alternate of part %s", id);
            that(!each.equals(id.value()), "part %s cannot be its own alternate", id);
        });
        that(new HashSet<>(alternates).size() == alternates.size(), "alternates of part %s repeat: %s", id, alternates);
    }

    /** A part of which nothing is known about buying it. */
    public Part(PartId id, String maker, String description, OptionalDouble massKg) {
        this(
                id,
                maker,
                description,
                massKg,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                false);
    }
}
