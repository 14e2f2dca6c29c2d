package org.ohmloom.analysis.start;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

/**
 * A place where things sit.
 *
 * @param name           what people call it, unique in the plan
 * @param ambientCelsius highest air temperature there, deg C, -60 to 400
 * @param metres         length of the bundle from the fuse box to it, m, more than 0
 */
public record StartPlace(String name, double ambientCelsius, double metres) {

    public StartPlace {
        notBlank(name, "name of a place");
        within(ambientCelsius, -60, 400, "ambient of %s", name);
        positive(metres, "length of the bundle to %s", name);
    }
}
