package org.ohmloom.size.protection;

import java.util.List;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Constants;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/**
 * A device of one type, at the rating and voltage of that type that meets most.
 *
 * @param device  the device
 * @param checks  what it meets and what not, as for the device in place, and against the rule of the basis
 * @param outcome what comes of it
 * @param why     why, in words and numbers
 * @param source  the table rows it rests on
 */
public record TypeCandidate(ProtectiveDevice device, List<Check> checks, Outcome outcome, Text why, Text source) {

    static final MessageBundle TEXTS = MessageBundle.beside(TypeCandidate.class, "proposals");

    /** What comes of a type. */
    public enum Outcome {
        /** Proposed. */
        CHOSEN,
        /** Would serve; another comes first. */
        WOULD_SERVE,
        /** Not proposed. */
        REFUSED
    }

    public TypeCandidate {
        checks = List.copyOf(checks);
    }

    /** What is judged and not met. */
    public List<Check> failed() {
        return having(Check.Verdict.NOT_MET);
    }

    /** What cannot be judged. */
    public List<Check> open() {
        return having(Check.Verdict.NOT_JUDGED);
    }

    private List<Check> having(Check.Verdict verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).toList();
    }

    /** Whether a point is judged and not met. */
    public boolean fails(Check.Aspect aspect) {
        return failed().stream().anyMatch(check -> check.aspect() == aspect);
    }

    /** Why, in words and numbers, in English. */
    public String reason() {
        return why.english();
    }

    /** The device in words: "ISO 8820-3 type C 10 A, made for 58 V". */
    public Text text() {
        String rating = Formats.amps(device.ratingAmps());
        return device.ratedVolts().isPresent()
                ? TEXTS.text(
                        "made-for",
                        device.series(),
                        rating,
                        Formats.volts(device.ratedVolts().getAsDouble()))
                : Text.of(device.series() + " " + rating);
    }

    /** The device in words, in English. */
    public String words() {
        return text().english();
    }

    /** What is not met, the first with its numbers. */
    Text failures() {
        Check first = failed().get(0);
        List<Check> others = failed().subList(1, failed().size());
        return others.isEmpty()
                ? TEXTS.text("fails", Constants.text(first.aspect()), first.told())
                : TEXTS.text("fails-also", Constants.text(first.aspect()), first.told(), aspects(others));
    }

    /** What some checks are about. */
    static Text aspects(List<Check> checks) {
        return Text.joined(
                ", ",
                checks.stream().map(check -> Constants.text(check.aspect())).toList());
    }

    TypeCandidate with(Outcome changed, Text reason) {
        return new TypeCandidate(device, checks, changed, reason, source);
    }
}
