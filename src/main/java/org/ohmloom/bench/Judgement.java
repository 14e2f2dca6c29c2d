package org.ohmloom.bench;

import java.util.Optional;
import org.ohmloom.model.Reading;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;
import org.ohmloom.words.Text;

/**
 * A reading held against what the test asks for.
 *
 * @param reading    the reading
 * @param verdict    what comes of it
 * @param value      the measured value that is judged; none of a check that is no number
 * @param limit      what it is held against
 * @param atMost     whether the value may be the limit at most; otherwise at least
 * @param why        how the limit comes about, or why nothing is judged
 * @param source     the tables behind the limit; empty where there are none
 * @param implausible less than this is not to be believed: a share of what the wires alone must have, if the value is below it
 * @param superseded the later reading of the same thing on the same harness that counts instead
 */
public record Judgement(
        Reading reading,
        Verdict verdict,
        Optional<Quantity> value,
        Optional<Quantity> limit,
        boolean atMost,
        Text why,
        String source,
        Optional<Quantity> implausible,
        Optional<Reading> superseded) {

    /** A value against the most it may be. */
    static Judgement atMost(Reading reading, Quantity value, Quantity limit, Text why, String source) {
        return new Judgement(
                reading,
                value.canonical() <= limit.canonical() ? Verdict.PASSED : Verdict.FAILED,
                Optional.of(value),
                Optional.of(limit),
                true,
                why,
                source,
                Optional.empty(),
                Optional.empty());
    }

    /** A value against the least it must be. */
    static Judgement atLeast(Reading reading, Quantity value, Quantity limit, Text why, String source) {
        return new Judgement(
                reading,
                value.canonical() >= limit.canonical() ? Verdict.PASSED : Verdict.FAILED,
                Optional.of(value),
                Optional.of(limit),
                false,
                why,
                source,
                Optional.empty(),
                Optional.empty());
    }

    /** A value that cannot be judged. */
    static Judgement none(Reading reading, Optional<Quantity> value, Text why) {
        return new Judgement(
                reading,
                Verdict.NOT_JUDGED,
                value,
                Optional.empty(),
                true,
                why,
                "",
                Optional.empty(),
                Optional.empty());
    }

    /** What a check found that is no number. */
    static Judgement of(Reading reading, Verdict verdict, Text why) {
        return new Judgement(
                reading,
                verdict,
                Optional.empty(),
                Optional.empty(),
                true,
                why,
                "",
                Optional.empty(),
                Optional.empty());
    }

    /** This, but a value that would pass proves nothing. */
    Judgement provingNothing(Text but) {
        return new Judgement(
                reading,
                verdict == Verdict.PASSED ? Verdict.NOT_JUDGED : verdict,
                value,
                limit,
                atMost,
                TestTexts.text("but", but, why),
                source,
                implausible,
                superseded);
    }

    /** This, but failed where the value is below what it typically is at least. */
    Judgement atLeastToo(Quantity least, Text typically) {
        boolean below =
                value.filter(each -> each.canonical() < least.canonical()).isPresent();
        return below
                ? new Judgement(
                        reading,
                        Verdict.FAILED,
                        value,
                        Optional.of(least),
                        false,
                        typically,
                        source,
                        implausible,
                        superseded)
                : this;
    }

    /** This with the least that is to be believed, kept where the value is below it. */
    Judgement believable(Quantity least) {
        boolean below =
                value.filter(each -> each.canonical() < least.canonical()).isPresent();
        return new Judgement(
                reading,
                verdict,
                value,
                limit,
                atMost,
                why,
                source,
                below ? Optional.of(least) : Optional.empty(),
                superseded);
    }

    /** This with a later reading that counts instead. */
    Judgement supersededBy(Optional<Reading> later) {
        return new Judgement(reading, verdict, value, limit, atMost, why, source, implausible, later);
    }

    /** Whether it counts: no later reading of the same thing on the same harness takes its place. */
    public boolean stands() {
        return superseded.isEmpty();
    }

    /** How the limit comes about, or why nothing is judged, in English. */
    public String because() {
        return why.english();
    }

    /** The limit as people read it: {@code at most 12.3 mΩ}; empty where there is none. */
    public Text limitTold() {
        return limit.map(each -> TestTexts.text(atMost ? "limit.at-most" : "limit.at-least", text(each)))
                .orElse(Text.NONE);
    }

    /** The same in English. */
    public String limitText() {
        return limitTold().english();
    }

    /** The value as people read it: with {@code >} before one beyond the range of the instrument, {@code passed} of a check. */
    public String valueText() {
        return ValueText.of(reading.measured());
    }

    static String text(Quantity quantity) {
        return Formats.quantity(quantity.canonical(), quantity.unit().dimension());
    }
}
