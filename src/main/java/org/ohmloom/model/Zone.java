package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.within;

/**
 * A place in the vehicle with an ambient temperature.
 *
 * @param id             identity
 * @param name           what people call it
 * @param ambientCelsius highest air temperature there, deg C, -60 to 400
 * @param engineSpace    whether it is an engine space in the sense of 33 CFR 183.425 Table 5 note 1
 */
public record Zone(ZoneId id, String name, double ambientCelsius, boolean engineSpace) implements Element {

    public Zone {
        notBlank(name, "name of zone %s", id);
        within(ambientCelsius, -60, 400, "ambient of zone %s", id);
    }
}
