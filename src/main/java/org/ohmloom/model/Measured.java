package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * What a test of a built harness found. It names things by their ids as texts and does not hold them fast: the record of a
 * harness that was built stays when the design goes on.
 */
public sealed interface Measured {

    /** What it is, in words that follow "a reading of". */
    Text words();

    /** What tells it from other readings of the same kind, as {@code X1.1 to X4.2}. */
    String place();

    /** The resistance that may take the place of a calculated one, ohm; empty where there is none. */
    default OptionalDouble ohms() {
        return OptionalDouble.empty();
    }

    /** Ids of the elements of the harness it names; none where any of a kind will do, as the crimps of a set-up. */
    default List<String> names() {
        return List.of(place());
    }

    /**
     * The element that tells where an end of a test sheet belongs: the connector of {@code X1.3}, the wire of
     * {@code G2, terminal of W7}.
     */
    private static String owner(String end) {
        String of = " of ";
        int at = end.indexOf(of);
        String word = at < 0 ? end : end.substring(at + of.length());
        return word.split("[.\\s]", 2)[0];
    }

    /**
     * Resistance from one end of a net to another.
     *
     * @param from one end as the test sheet names it: {@code X1.3}; {@code G2, terminal of W7}
     * @param to   the other end
     * @param pathOhms resistance, ohm, 0 or more
     */
    record Path(String from, String to, double pathOhms) implements Measured {
        public Path {
            notBlank(from, "first end of a path");
            notBlank(to, "other end of a path");
            notNegative(pathOhms, "resistance of a path");
        }

        @Override
        public Text words() {
            return Refusals.text("continuity");
        }

        @Override
        public String place() {
            return from + " to " + to;
        }

        @Override
        public List<String> names() {
            return List.of(owner(from), owner(to));
        }

        @Override
        public OptionalDouble ohms() {
            return OptionalDouble.of(pathOhms);
        }
    }

    /**
     * Isolation of a net from all others joined together.
     *
     * @param isolated      an end of the net
     * @param isolationOhms resistance, ohm, 0 or more
     * @param testVolts     voltage it was tested at, V, more than 0, if known
     * @param beyondRange   the instrument showed no end of it: it is that resistance or more
     */
    record Isolation(String isolated, double isolationOhms, OptionalDouble testVolts, boolean beyondRange)
            implements Measured {
        public Isolation {
            notBlank(isolated, "isolated end");
            notNegative(isolationOhms, "isolation");
            testVolts.ifPresent(value -> positive(value, "voltage of an isolation test"));
        }

        @Override
        public Text words() {
            return Refusals.text("isolation");
        }

        @Override
        public String place() {
            return isolated;
        }

        @Override
        public List<String> names() {
            return List.of(owner(isolated));
        }
    }

    /**
     * A check of a cable, a twisted pair or a shield.
     *
     * @param cable   id of the cable
     * @param check   which check: {@code cores}, {@code twist}, {@code shield W5}
     * @param outcome what was found
     */
    record CableCheck(String cable, String check, Outcome outcome) implements Measured {

        /** What a check that is no number found. */
        public enum Outcome {
            PASSED,
            FAILED
        }

        public CableCheck {
            notBlank(cable, "cable of a check");
            notBlank(check, "check of a cable");
        }

        @Override
        public Text words() {
            return Refusals.text("a check of a cable");
        }

        @Override
        public String place() {
            return cable + ", " + check;
        }

        @Override
        public List<String> names() {
            return List.of(cable);
        }
    }

    /**
     * The lowest force of the crimps pulled of one set-up.
     *
     * @param terminal     what was crimped, as the test sheet names it: the id of a contact
     * @param conductor    size of conductor
     * @param lowestNewtons lowest force, N, 0 or more
     * @param pulledCount  crimps pulled, a count, 1 or more, if known
     */
    record Pull(String terminal, Gauge conductor, double lowestNewtons, OptionalDouble pulledCount)
            implements Measured {
        public Pull {
            notBlank(terminal, "terminal of a pull test");
            notNegative(lowestNewtons, "force of a pull test");
            pulledCount.ifPresent(value -> that(
                    value >= 1 && value == Math.rint(value),
                    "crimps pulled must be a whole number from 1, was %s",
                    value));
        }

        @Override
        public Text words() {
            return Refusals.text("a pull test");
        }

        @Override
        public String place() {
            return terminal + ", " + conductor.text();
        }

        @Override
        public List<String> names() {
            return List.of();
        }
    }

    /**
     * What a load gets with the harness under power; at least one value.
     *
     * @param load        id of the load
     * @param state       id of the operating state it was tested in
     * @param loadVolts   voltage at the load, V, 0 or more
     * @param dropVolts   voltage lost on its feed and return together, V
     * @param loadAmps    its current, A
     */
    record Powered(
            String load, String state, OptionalDouble loadVolts, OptionalDouble dropVolts, OptionalDouble loadAmps)
            implements Measured {
        public Powered {
            notBlank(load, "load under power");
            notBlank(state, "state of a test under power");
            loadVolts.ifPresent(value -> notNegative(value, "voltage at load %s", load));
            dropVolts.ifPresent(value -> notNegative(value, "drop to load %s", load));
            loadAmps.ifPresent(value -> notNegative(value, "current of load %s", load));
            that(
                    Stream.of(loadVolts, dropVolts, loadAmps).anyMatch(OptionalDouble::isPresent),
                    "a test of load %s under power has a voltage, a drop or a current",
                    load);
        }

        @Override
        public Text words() {
            return Refusals.text("a test under power");
        }

        @Override
        public String place() {
            return load + " in " + state;
        }

        @Override
        public List<String> names() {
            return List.of(load, state);
        }
    }

    /**
     * End-to-end resistance of one wire, without its contacts.
     *
     * @param wire     id of the wire
     * @param wireOhms resistance, ohm, 0 or more
     */
    record OfWire(String wire, double wireOhms) implements Measured {
        public OfWire {
            notBlank(wire, "measured wire");
            notNegative(wireOhms, "resistance of wire %s", wire);
        }

        @Override
        public Text words() {
            return Refusals.text("the resistance of a wire");
        }

        @Override
        public String place() {
            return wire;
        }

        @Override
        public OptionalDouble ohms() {
            return OptionalDouble.of(wireOhms);
        }
    }

    /**
     * Resistance of one joint: a ground point to its body, a strap from body to body, a mated contact with its crimp, or a
     * splice from one of its wires to another, which is two of its joints.
     *
     * @param joint     id of the ground point, strap or splice, or the cavity as {@code X1.3}
     * @param jointOhms resistance, ohm, 0 or more
     */
    record OfJoint(String joint, double jointOhms) implements Measured {
        public OfJoint {
            notBlank(joint, "measured joint");
            notNegative(jointOhms, "resistance of joint %s", joint);
        }

        @Override
        public Text words() {
            return Refusals.text("the resistance of a joint");
        }

        @Override
        public String place() {
            return joint;
        }

        @Override
        public List<String> names() {
            return List.of(owner(joint));
        }

        @Override
        public OptionalDouble ohms() {
            return OptionalDouble.of(jointOhms);
        }
    }
}
