package org.ohmloom.signal.bus;

import java.util.OptionalDouble;

/**
 * How late one message can come.
 *
 * @param message         the message
 * @param frameSeconds    its longest frame, s
 * @param blockingSeconds longest frame of lower priority that may have begun just before, s
 * @param responseSeconds longest time from the begin of its period to the end of its frame, s; empty when the bus is too busy for
 *                        any to be told
 */
public record MessageTiming(
        Message message, double frameSeconds, double blockingSeconds, OptionalDouble responseSeconds) {

    /** Whether it always arrives in time. */
    public boolean isInTime() {
        return responseSeconds.isPresent() && responseSeconds.getAsDouble() <= message.deadlineSeconds();
    }
}
