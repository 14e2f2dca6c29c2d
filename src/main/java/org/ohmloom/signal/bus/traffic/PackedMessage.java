package org.ohmloom.signal.bus.traffic;

import java.util.List;
import java.util.Locale;
import org.ohmloom.model.ComponentId;
import org.ohmloom.signal.bus.FrameFormat;
import org.ohmloom.signal.bus.Message;

/**
 * A message with what is in it.
 *
 * @param message the message
 * @param sender  the unit that sends it
 * @param signals values in it, the first in the first bits; empty for one a data sheet gives
 */
public record PackedMessage(Message message, ComponentId sender, List<BusSignal> signals) {
    public PackedMessage {
        signals = List.copyOf(signals);
    }

    /** Its identifier as it is set: three hexadecimal digits of 11 bits, eight of 29. */
    public String identifierText() {
        String digits = Integer.toHexString(message.identifier()).toUpperCase(Locale.ROOT);
        int length = message.format() == FrameFormat.EXTENDED ? 8 : 3;
        return "0x" + "0".repeat(Math.max(0, length - digits.length())) + digits;
    }
}
