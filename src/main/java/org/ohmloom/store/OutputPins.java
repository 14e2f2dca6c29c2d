package org.ohmloom.store;

import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OutputPin;
import org.ohmloom.units.Texts;

/** Reads output pins: the unit and the pin with a dot between them, split at the first, since ids have none. */
final class OutputPins {
    private OutputPins() {}

    static OutputPin read(String text) {
        int dot = text.indexOf('.');
        if (dot < 0) {
            throw new IllegalArgumentException(Texts.quoted(text)
                    + " does not name an output; write the unit, a dot and the pin, as in 'ECU1.A3'");
        }
        return new OutputPin(new ComponentId(text.substring(0, dot)), text.substring(dot + 1));
    }
}
