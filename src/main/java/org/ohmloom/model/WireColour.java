package org.ohmloom.model;

import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * An insulation colour by the letter codes of IEC 60757:2021, with tracers: {@code RD}, {@code RDWH}, {@code GNYE}.
 *
 * @param base    code of the ground colour
 * @param tracers codes of the tracers in order, at most two
 */
public record WireColour(String base, List<String> tracers) {

    /** The letter codes of IEC 60757. */
    public static final Set<String> CODES =
            Set.of("BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "GD", "TQ", "SR");

    public WireColour {
        tracers = List.copyOf(tracers);
        known(base);
        tracers.forEach(WireColour::known);
        that(tracers.size() <= 2, "a colour has at most two tracers, not %s", tracers);
    }

    /**
     * Reads codes written together, as the standard does: {@code RDWH} is red with a white tracer.
     *
     * @throws IllegalArgumentException when the text is not two-letter codes of IEC 60757
     */
    public static WireColour parse(String text) {
        String letters = text.strip();
        that(
                !letters.isEmpty() && letters.length() % 2 == 0,
                "'%s' is not a colour of IEC 60757; write two letters per colour, for example RD or RDWH",
                text);
        List<String> codes = new ArrayList<>();
        for (int k = 0; k < letters.length(); k += 2) {
            codes.add(letters.substring(k, k + 2));
        }
        return new WireColour(codes.get(0), codes.subList(1, codes.size()));
    }

    /** The codes written together. */
    public String text() {
        return base + String.join("", tracers);
    }

    private static void known(String code) {
        that(
                CODES.contains(code),
                "'%s' is not a colour of IEC 60757; the codes are BK BN RD OG YE GN BU VT GY WH PK GD TQ SR",
                code);
    }

    /** Usual colour of a wire by what it carries: our own choice, no source; codes of IEC 60757. */
    public static WireColour usual(SignalClass signalClass) {
        return parse(
                switch (signalClass) {
                    case FEED -> "RD";
                    case SWITCHED_OUTPUT -> "OG";
                    case RETURN -> "BK";
                    case REFERENCE_SUPPLY -> "PK";
                    case REFERENCE_RETURN -> "GN";
                    case ANALOGUE_SIGNAL -> "BU";
                    case PULSE_SIGNAL -> "VT";
                    case DATA_BUS -> "YE";
                    case SHIELD -> "GY";
                });
    }
}
