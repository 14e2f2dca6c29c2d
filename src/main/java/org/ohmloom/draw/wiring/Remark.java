package org.ohmloom.draw.wiring;

import java.util.Optional;
import org.ohmloom.model.WireId;

/**
 * A line of writing that tells where something goes on; the sheet is known only when all circuits have their place.
 *
 * @param words  what is written before the place
 * @param wire   the wire whose place is told, if one
 * @param symbol the symbol whose further sheets are told, if one
 */
record Remark(String words, Optional<WireId> wire, Optional<String> symbol) {

    static Remark plain(String words) {
        return new Remark(words, Optional.empty(), Optional.empty());
    }

    static Remark at(String words, WireId wire) {
        return new Remark(words, Optional.of(wire), Optional.empty());
    }

    static Remark sheetsOf(String symbol) {
        return new Remark("also on", Optional.empty(), Optional.of(symbol));
    }
}
