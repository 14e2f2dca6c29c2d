package org.ohmloom.review;

import java.util.List;
import java.util.stream.Stream;

/** The cautions every surface shows once: start screen, findings list, pages of the pack, command line summary. */
public final class Cautions {

    /** What the results are and are not. */
    public static final String STANDING =
            "Results are a design aid. Local codes, the vehicle maker's instructions and a"
                    + " licensed or qualified person come first.";

    /** The usual cautions, most urgent first. */
    public static final List<String> ALL = List.of(
            "Disconnect the battery before you work: negative first, every battery.",
            "Protect every feed at its source.",
            "Airbag, ignition, fuel and brake circuits are for the maker's procedures and qualified people.",
            "Batteries vent hydrogen and can deliver thousands of amperes: ventilate, insulate tools, no sparks.",
            "Systems of 60 V DC and above are out of scope.");

    private Cautions() {}

    /** All of it, what the results are first. */
    public static List<String> everything() {
        return Stream.concat(Stream.of(STANDING), ALL.stream()).toList();
    }

    /** All of it as one paragraph. */
    public static String paragraph() {
        return String.join(" ", everything());
    }
}
