package org.ohmloom.edit;

import org.ohmloom.model.BusId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Sends a message of a data bus under an identifier.
 *
 * @param bus the bus
 * @param message    what people call the message
 * @param identifier its identifier afterwards
 */
public record SetIdentifier(BusId bus, String message, int identifier) implements Edit {

    @Override
    public Text label() {
        return Labels.text("send-under", message, Integer.toHexString(identifier));
    }

    @Override
    public Harness apply(Harness before) {
        DataBus now = before.buses().get(bus);
        DataBus other = now.sendingUnder(message, identifier);
        return other.equals(now) ? before : before.with(other);
    }
}
