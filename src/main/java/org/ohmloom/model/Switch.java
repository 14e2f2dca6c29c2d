package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A hand switch with a common terminal {@code 1} and one or more positions, each closing the common terminal to a
 * terminal of its own. Open unless the operating state puts it on; "on" without a position means the first.
 *
 * @param positions   names of the terminals of the positions, at least one, for example {@code 2}
 * @param contactOhms resistance of a closed contact, ohm, more than 0
 * @param limitAmps   most continuous current, A, more than 0
 * @param ratedVolts  highest system voltage it is made for, V, more than 0, if known
 */
public record Switch(List<String> positions, double contactOhms, double limitAmps, OptionalDouble ratedVolts)
        implements Device {

    /** Name of the common terminal. */
    public static final String COMMON = "1";

    public Switch {
        positions = List.copyOf(positions);
        that(!positions.isEmpty(), "a switch needs at least one position");
        positions.forEach(name -> notBlank(name, "position of a switch"));
        that(!positions.contains(COMMON), "'%s' is the common terminal of a switch, not a position", COMMON);
        that(positions.stream().distinct().count() == positions.size(), "switch positions repeat: %s", positions);
        positive(contactOhms, "contact resistance of a switch");
        positive(limitAmps, "current limit of a switch");
        ratedVolts.ifPresent(value -> positive(value, "voltage rating of a switch"));
    }

    /** A switch whose voltage rating is not known. */
    public Switch(List<String> positions, double contactOhms, double limitAmps) {
        this(positions, contactOhms, limitAmps, OptionalDouble.empty());
    }

    @Override
    public List<String> terminals() {
        List<String> names = new ArrayList<>(List.of(COMMON));
        names.addAll(positions);
        return List.copyOf(names);
    }
}
