package org.ohmloom.signal.bus;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

/**
 * A message that is sent again and again.
 *
 * @param id              what people call it
 * @param format          length of its identifier
 * @param identifier      the identifier; the lower, the sooner it wins the bus
 * @param dataBytes       bytes of data, 0 to 8
 * @param periodSeconds   time from one sending to the next, s, more than 0
 * @param jitterSeconds   how late after that it may be ready to send, s, 0 or more
 * @param deadlineSeconds time from one period's begin in which it must have arrived, s, more than 0
 */
public record Message(
        String id,
        FrameFormat format,
        int identifier,
        int dataBytes,
        double periodSeconds,
        double jitterSeconds,
        double deadlineSeconds) {

    public Message {
        notBlank(id, "message");
        that(
                identifier >= 0 && identifier < 1 << format.identifierBits(),
                "identifier %s of message %s does not fit into %s bits",
                identifier,
                id,
                format.identifierBits());
        that(
                dataBytes >= 0 && dataBytes <= FrameFormat.MOST_BYTES,
                "message %s: a frame carries 0 to %s bytes, not %s",
                id,
                FrameFormat.MOST_BYTES,
                dataBytes);
        positive(periodSeconds, "period of message %s", id);
        notNegative(jitterSeconds, "jitter of message %s", id);
        positive(deadlineSeconds, "deadline of message %s", id);
    }

    /** A message that is ready on time and must have arrived before the next one. */
    public static Message of(String id, FrameFormat format, int identifier, int dataBytes, double periodSeconds) {
        return new Message(id, format, identifier, dataBytes, periodSeconds, 0, periodSeconds);
    }

    /** Time of its longest frame on the bus, s. */
    public double longestSeconds(double bitsPerSecond) {
        return format.mostBits(dataBytes) / bitsPerSecond;
    }

    /**
     * Where it stands when two begin at once: the identifiers are compared bit by bit, and a base frame wins over an extended one
     * with the same first 11 bits (ISO 11898-1: the bit after them is dominant in a base frame).
     */
    long arbitration() {
        return format == FrameFormat.BASE
                ? (long) identifier << 19
                : ((long) identifier >> 18) << 19 | 1L << 18 | identifier & 0x3FFFF;
    }
}
