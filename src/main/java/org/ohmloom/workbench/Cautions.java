package org.ohmloom.workbench;

import java.util.List;

/** What a person must know before trusting a number or touching a wire, said once and plainly. */
final class Cautions {

    /** The one line that stays in sight. */
    static final String SHORT =
            "An aid for planning, not an approval. Check every result; follow the vehicle maker's procedure.";

    /** The cautions, most important first. */
    static final List<String> ALL = List.of(
            "Ohmloom is an aid for planning, not an approval. A competent person must check the harness before it is built"
                    + " and again before it is powered. Follow the vehicle maker's procedure.",
            "Results are only as good as what was entered: lengths, loads, temperatures and the condition of existing parts.",
            "A battery can deliver hundreds of amperes. Take off jewellery, insulate tools, disconnect the negative cable"
                    + " first and connect it last.",
            "Charging batteries give off hydrogen. Ventilate, and keep sparks and flames away.",
            "Never cut, probe or power the wiring of airbags or belt tensioners.",
            "60 V DC and above, and traction circuits, are outside its scope.");

    private Cautions() {}
}
