package org.ohmloom.workbench.channel;

import java.util.Optional;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.study.BusReading;

/**
 * A bus as a whole, or one message on it.
 *
 * @param reading what is known of the bus
 * @param message the message; empty for the bus as a whole
 */
record BusRow(BusReading reading, Optional<PackedMessage> message) {

    Optional<MessageTiming> timing() {
        return message.flatMap(each -> reading.traffic().timingOf(each));
    }
}
