package org.ohmloom.signal.study;

import java.util.Optional;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.PackedMessage;

/**
 * A channel on a bus its unit is a node of.
 *
 * @param bus     the bus
 * @param message the message its value is sent in; empty where it is in none
 * @param timing  how late that message can come
 */
public record ChannelOnBus(DataBus bus, Optional<PackedMessage> message, Optional<MessageTiming> timing) {

    /** What comes of a value on its bus. */
    public enum Check {
        /** It always arrives before its deadline. */
        IN_TIME,
        /** It can come too late, or never. */
        LATE,
        /** No message has it. */
        NOT_SENT
    }

    /** What comes of the value. */
    public Check check() {
        if (message.isEmpty() || timing.isEmpty()) {
            return Check.NOT_SENT;
        }
        return timing.get().isInTime() ? Check.IN_TIME : Check.LATE;
    }
}
