package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.that;

import java.util.List;

/**
 * A stud, bus bar or distribution block: all terminals joined, each through the same joint resistance. A ground stud
 * that is not the chassis itself is one of these.
 *
 * @param terminals names of the terminals, at least two, unique
 * @param jointOhms resistance from each terminal to the bar, ohm, 0 or more
 */
public record BusBar(List<String> terminals, double jointOhms) implements Device {

    public BusBar {
        terminals = List.copyOf(terminals);
        that(terminals.size() >= 2, "a bus bar needs at least two terminals");
        terminals.forEach(name -> notBlank(name, "terminal of a bus bar"));
        that(terminals.stream().distinct().count() == terminals.size(), "terminal names repeat: %s", terminals);
        notNegative(jointOhms, "joint resistance of a bus bar");
    }
}
