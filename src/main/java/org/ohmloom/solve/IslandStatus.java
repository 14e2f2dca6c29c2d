package org.ohmloom.solve;

import java.util.Locale;

/** How far the solution of one island got. */
public enum IslandStatus {
    /** Kirchhoff's laws hold to within {@link Tolerances}. */
    SOLVED,
    /** No source feeds it: nothing flows. */
    NO_SOURCE,
    /** Not joined to the datum: currents are known, voltages only against each other. */
    FLOATING,
    /** The equations have no unique answer, for example two ideal sources in parallel. */
    SINGULAR,
    /** The iteration did not settle, for example a relay that opens its own feed. */
    NOT_CONVERGED,
    /** A constant-power load asks for more than the wiring can bring at any voltage. */
    OVERLOADED;

    /** In words: "no source". */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
