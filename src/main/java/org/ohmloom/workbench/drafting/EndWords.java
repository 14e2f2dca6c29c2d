package org.ohmloom.workbench.drafting;

import org.ohmloom.model.WireEnd;

/** What a person writes for an end of a wire, as {@code X1.3}. */
final class EndWords {

    private EndWords() {}

    static String of(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return at.connector() + "." + at.cavity();
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return at.component() + "." + at.terminal();
        }
        if (end instanceof WireEnd.AtSplice at) {
            return at.splice().value();
        }
        return end instanceof WireEnd.AtGround at ? at.ground().value() : "loose";
    }
}
