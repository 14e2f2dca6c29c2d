package org.ohmloom.edit;

import org.ohmloom.model.BusId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;

/**
 * Sends a message of a data bus under an identifier.
 *
 * @param bus the bus
 * @param message    what people call the message
 * @param identifier its identifier afterwards
 */
public record SetIdentifier(BusId bus, String message, int identifier) implements Edit {

    @Override
    public String label() {
        return "Send " + message + " under 0x" + Integer.toHexString(identifier);
    }

    @Override
    public Harness apply(Harness before) {
        DataBus now = before.buses().get(bus);
        DataBus other = now.sendingUnder(message, identifier);
        return other.equals(now) ? before : before.with(other);
    }
}
