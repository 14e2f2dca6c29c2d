package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;

/**
 * How the cavities of a connector lie in rows and columns, as its maker's sheet shows them.
 *
 * @param seenFrom the side it is seen from
 * @param columns  places of a row, 1 or more
 * @param places   names of the cavities, row by row from the top left; an empty text is a place without a cavity
 */
public record CavityGrid(Side seenFrom, int columns, List<String> places) {

    /** The sides a connector is seen from. */
    public enum Side {
        /** Where the wires enter. */
        WIRE_SIDE,
        /** Where it mates. */
        MATING_SIDE
    }

    public CavityGrid {
        positive(columns, "columns of a grid of cavities");
        places = List.copyOf(places);
        that(!places.isEmpty(), "a grid of cavities needs at least one place");
        List<String> names = places.stream().filter(name -> !name.isEmpty()).toList();
        that(new HashSet<>(names).size() == names.size(), "names in a grid of cavities repeat: %s", names);
    }

    /** The rows as seen from a side; from behind, left and right change places. Each has as many places as columns. */
    public List<List<String>> rows(Side side) {
        List<List<String>> rows = new ArrayList<>();
        for (int from = 0; from < places.size(); from += columns) {
            List<String> row = new ArrayList<>(places.subList(from, Math.min(places.size(), from + columns)));
            while (row.size() < columns) {
                row.add("");
            }
            if (side != seenFrom) {
                Collections.reverse(row);
            }
            rows.add(List.copyOf(row));
        }
        return rows;
    }

    /** Refuses a grid that does not hold each of these cavities once and nothing else. */
    void requireWhole(ConnectorId connector, List<String> cavities) {
        for (String name : places) {
            that(
                    name.isEmpty() || cavities.contains(name),
                    "the grid of connector %s has no cavity '%s'",
                    connector,
                    name);
        }
        for (String name : cavities) {
            that(places.contains(name), "cavity '%s' of connector %s has no place in its grid", name, connector);
        }
    }
}
