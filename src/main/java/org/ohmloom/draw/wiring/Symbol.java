package org.ohmloom.draw.wiring;

import java.util.List;
import java.util.Optional;

/**
 * Something wires meet at.
 *
 * @param key     identity on the diagram; the two poles of a source are two symbols
 * @param kind    how it is drawn
 * @param element id of the element it stands for
 * @param title   what it is called: its id
 * @param remark  what it is, in two or three words
 * @param name    what people call it; empty when that is its id
 * @param ways    ways through it from terminal to terminal
 * @param icon    what is drawn when no way through it can be
 */
record Symbol(
        String key,
        Kind kind,
        String element,
        String title,
        String remark,
        String name,
        List<Way> ways,
        Optional<Glyph> icon) {

    /** How a symbol is drawn. */
    enum Kind {
        /** One pole of a source. */
        SOURCE,
        /** A device with a few terminals. */
        DEVICE,
        /** A load or a sensor: what a circuit is for. */
        LOAD,
        /** A control unit. */
        UNIT,
        /** A bus bar or stud. */
        BAR,
        /** A connector, or a pair of them. */
        CONNECTOR,
        /** A splice. */
        SPLICE,
        /** A ground point. */
        GROUND,
        /** An end joined to nothing. */
        LOOSE,
        /** Where a shortened way goes on. */
        REFERENCE;

        /** Whether it is drawn as an upright bar that lines meet and leave. */
        boolean isUprightBar() {
            return this == SPLICE || this == GROUND;
        }

        /** Whether many circuits meet there, so that it ties none of them together. */
        boolean isHub() {
            return this == SOURCE || this == UNIT || this == BAR || this == GROUND;
        }
    }

    /**
     * A way through a symbol.
     *
     * @param from  terminal the current enters at
     * @param to    terminal it leaves at
     * @param glyph what lies between
     */
    record Way(String from, String to, Glyph glyph) {}

    Symbol {
        ways = List.copyOf(ways);
    }
}
