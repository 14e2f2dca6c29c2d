package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.OptionalDouble;

/**
 * An entry of the harness's parts list; the bill of materials counts them.
 *
 * @param id          identity: the part number
 * @param maker       maker of the part
 * @param description what it is
 * @param massKg      mass of one, kg, more than 0, if known
 */
public record Part(PartId id, String maker, String description, OptionalDouble massKg) implements Element {

    public Part {
        notBlank(maker, "maker of part " + id);
        notBlank(description, "description of part " + id);
        massKg.ifPresent(value -> positive(value, "mass of part " + id));
    }
}
