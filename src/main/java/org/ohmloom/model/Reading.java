package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

/**
 * One line of the as-built record: what a test of one built harness found.
 *
 * @param id                 identity
 * @param measured            what was measured, and its value
 * @param serialNumber       which built harness of this design; empty where only one is built
 * @param revision           revision it was built to, if known
 * @param conductorCelsius   temperature of the conductors while it was measured, deg C, -100 to 300; empty counts as 20
 * @param method             with two wires or with four; empty counts as the one the test sheet asks for
 * @param instrument         the instrument, if known
 * @param instrumentErrorOhms what it adds to a resistance at most, ohm, more than 0; empty takes the table of the test sheet
 * @param by                 who measured it
 * @param measuredAt         when, as ISO 8601 date or date and time
 * @param remark             what else there is to say
 * @param replaces           its resistance takes the place of the calculated one of the wire or joint
 */
public record Reading(
        ReadingId id,
        Measured measured,
        Optional<String> serialNumber,
        Optional<String> revision,
        OptionalDouble conductorCelsius,
        Optional<Method> method,
        Optional<String> instrument,
        OptionalDouble instrumentErrorOhms,
        Optional<String> by,
        Optional<String> measuredAt,
        Optional<String> remark,
        boolean replaces)
        implements Element {

    /** How a resistance is measured. */
    public enum Method {
        /** Current and voltage over the same two leads, which are zeroed before. */
        TWO_WIRE,
        /** The voltage taken at the ends by leads of its own, so that leads and probes do not count. */
        FOUR_WIRE
    }

    public Reading {
        serialNumber.ifPresent(value -> notBlank(value, "serial number of reading %s", id));
        revision.ifPresent(value -> notBlank(value, "revision of reading %s", id));
        conductorCelsius.ifPresent(value -> within(value, -100, 300, "conductor temperature of reading %s", id));
        instrument.ifPresent(value -> notBlank(value, "instrument of reading %s", id));
        instrumentErrorOhms.ifPresent(value -> positive(value, "instrument error of reading %s", id));
        by.ifPresent(value -> notBlank(value, "name under reading %s", id));
        measuredAt.ifPresent(value -> IsoText.check(value, Refusals.text("reading %s", id)));
        remark.ifPresent(value -> notBlank(value, "remark of reading %s", id));
        that(
                !replaces || measured.ohms().isPresent(),
                "reading %s cannot replace a resistance: it is %s",
                id,
                measured.words());
    }

    /**
     * What was measured on which built harness: two readings of the same are a measurement made again.
     *
     * @param kind         how it was measured
     * @param place        where
     * @param serialNumber on which built harness
     */
    public record Thing(Class<? extends Measured> kind, String place, Optional<String> serialNumber) {}

    /** What it is a reading of. */
    public Thing thing() {
        return new Thing(measured.getClass(), measured.place(), serialNumber);
    }

    /** A value and nothing else said. */
    public static Reading of(ReadingId id, Measured measured) {
        return new Reading(
                id,
                measured,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** This reading with another value or of another thing; what cannot replace a resistance any more does not. */
    public Reading with(Measured changed) {
        return new Reading(
                id,
                changed,
                serialNumber,
                revision,
                conductorCelsius,
                method,
                instrument,
                instrumentErrorOhms,
                by,
                measuredAt,
                remark,
                replaces && changed.ohms().isPresent());
    }

    /** This reading taking the place of the calculated resistance, or not. */
    public Reading replacing(boolean changed) {
        return new Reading(
                id,
                measured,
                serialNumber,
                revision,
                conductorCelsius,
                method,
                instrument,
                instrumentErrorOhms,
                by,
                measuredAt,
                remark,
                changed);
    }
}
