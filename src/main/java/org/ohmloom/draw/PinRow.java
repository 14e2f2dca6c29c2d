package org.ohmloom.draw;

import java.util.Optional;
import org.ohmloom.model.WireColour;

/**
 * One line of a pin table.
 *
 * @param at     cavity or terminal
 * @param wire   id of the wire; empty for a note over the whole line
 * @param size   conductor size
 * @param colour insulation colour
 * @param use    circuit, otherwise what it carries
 * @param goesTo other end
 * @param note   a note instead of a wire
 */
record PinRow(
        String at, String wire, String size, Optional<WireColour> colour, String use, String goesTo, String note) {

    static PinRow note(String at, String note) {
        return new PinRow(at, "", "", Optional.empty(), "", "", note);
    }
}
