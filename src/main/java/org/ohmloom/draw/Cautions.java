package org.ohmloom.draw;

import java.util.List;

/** What everyone who works by a drawing must know, in plain words; on every sheet. */
public final class Cautions {

    /** One sentence or two each; the source of a rule is named where there is one. */
    public static final List<String> ALL = List.of(
            "An aid, not an approval: calculated values rest on the data entered. Follow the vehicle maker's procedure.",
            "Take the negative battery cable off first and fit it last. With several batteries take every negative off"
                    + " before any other work.",
            "A 12 V battery drives hundreds of amperes through a tool or a ring: insulate tools, wear no jewellery.",
            "Batteries give off hydrogen: ventilate, no flame or spark nearby (29 CFR 1910.178(g)).",
            "Never cut, probe or feed airbag or belt tensioner wiring; wait the time the vehicle maker states.",
            "For supplies below 60 V DC only; not for traction circuits.");

    private Cautions() {}
}
