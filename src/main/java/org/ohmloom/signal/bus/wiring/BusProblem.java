package org.ohmloom.signal.bus.wiring;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ElementId;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * Something wrong with the wiring of a data bus.
 *
 * @param kind     what
 * @param words    a sentence without its full stop
 * @param elements what it is about, besides the bus
 * @param value    the number that is beyond its limit, in the canonical unit, if there is one
 * @param limit    the limit, if there is one
 * @param unit     unit of both
 * @param source   where the limit is from
 */
public record BusProblem(
        Kind kind,
        Text words,
        List<ElementId> elements,
        OptionalDouble value,
        OptionalDouble limit,
        Unit unit,
        String source) {

    /** What a problem belongs to. */
    public enum Topic {
        /** Lines that do not lead where they should. */
        JOINING,
        /** Terminations. */
        TERMINATION,
        /** Lengths, counts and resistances. */
        LIMIT,
        /** Twist and shield. */
        PAIR
    }

    /** What can be wrong. */
    public enum Kind {
        NOT_JOINED(Topic.JOINING),
        SWAPPED(Topic.JOINING),
        SHORTED(Topic.JOINING),
        LOOP(Topic.JOINING),
        TERMINATION_COUNT(Topic.TERMINATION),
        TERMINATION_OHMS(Topic.TERMINATION),
        TERMINATION_NOT_AT_END(Topic.TERMINATION),
        TOO_LONG(Topic.LIMIT),
        STUB_TOO_LONG(Topic.LIMIT),
        STUBS_TOO_LONG(Topic.LIMIT),
        STUB_ON_STUB(Topic.LIMIT),
        TOO_MANY_NODES(Topic.LIMIT),
        LINE_OHMS(Topic.LIMIT),
        RATE_NOT_LISTED(Topic.LIMIT),
        NOT_TWISTED(Topic.PAIR),
        SHIELD(Topic.PAIR);

        private final Topic topic;

        Kind(Topic topic) {
            this.topic = topic;
        }

        /** What it belongs to. */
        public Topic topic() {
            return topic;
        }
    }

    public BusProblem {
        elements = List.copyOf(elements);
    }

    /** Something wrong without a number. */
    static BusProblem of(Kind kind, Text words, List<? extends ElementId> elements, String source) {
        return new BusProblem(
                kind, words, List.copyOf(elements), OptionalDouble.empty(), OptionalDouble.empty(), Unit.METRE, source);
    }

    /** A number beyond its limit. */
    static BusProblem beyond(
            Kind kind,
            Text words,
            List<? extends ElementId> elements,
            double value,
            double limit,
            Unit unit,
            String source) {
        return new BusProblem(
                kind, words, List.copyOf(elements), OptionalDouble.of(value), OptionalDouble.of(limit), unit, source);
    }
}
