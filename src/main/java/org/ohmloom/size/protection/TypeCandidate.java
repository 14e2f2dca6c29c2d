package org.ohmloom.size.protection;

import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.units.Formats;

/**
 * A device of one type, at the rating and voltage of that type that meets most.
 *
 * @param device  the device
 * @param checks  what it meets and what not, as for the device in place, and against the rule of the basis
 * @param outcome what comes of it
 * @param reason  why, in words and numbers
 * @param source  the table rows it rests on
 */
public record TypeCandidate(
        ProtectiveDevice device, List<Check> checks, Outcome outcome, String reason, String source) {

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

    /** The device in words: "ISO 8820-3 type C 10 A, made for 58 V". */
    public String words() {
        return words(device);
    }

    static String words(ProtectiveDevice device) {
        return device.series() + " " + Formats.amps(device.ratingAmps())
                + (device.ratedVolts().isPresent()
                        ? ", made for " + Formats.volts(device.ratedVolts().getAsDouble())
                        : "");
    }

    /** What is not met, the first with its numbers. */
    String failures() {
        List<Check> all = failed();
        String first =
                "fails: " + all.get(0).aspect().words() + " (" + all.get(0).sentence() + ")";
        return all.size() == 1
                ? first
                : first + "; also: "
                        + all.stream()
                                .skip(1)
                                .map(check -> check.aspect().words())
                                .collect(Collectors.joining(", "));
    }

    TypeCandidate with(Outcome changed, String why) {
        return new TypeCandidate(device, checks, changed, why, source);
    }
}
