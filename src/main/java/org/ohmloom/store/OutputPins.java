package org.ohmloom.store;

import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OutputPin;
import org.ohmloom.units.Texts;
import org.ohmloom.words.UnfitException;

/** Reads output pins: the unit and the pin with a dot between them, split at the first, since ids have none. */
final class OutputPins {
    private OutputPins() {}

    static OutputPin read(String text) {
        int dot = text.indexOf('.');
        if (dot < 0) {
            throw new UnfitException(
                    "%s does not name an output; write the unit, a dot and the pin, as in 'ECU1.A3'",
                    Texts.quoted(text));
        }
        return new OutputPin(new ComponentId(text.substring(0, dot)), text.substring(dot + 1));
    }
}
