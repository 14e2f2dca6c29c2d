package org.ohmloom.signal.bus;

import static org.ohmloom.units.Require.that;

/**
 * The two formats of a data frame on a classical CAN bus (ISO 11898-1).
 *
 * <p>Lengths count the three bits between frames. With s bytes of data, g = 34 or 54 of the bits beside them are open to
 * stuffing, 13 are not: g + 8 s + 13 bits without any stuff bit and floor((g + 8 s - 1) / 4) stuff bits at most, as every
 * stuff bit but the first may complete the next run by itself (Davis, Burns, Bril and Lukkien, Real-Time Systems 35, 2007,
 * section 3.1, from memory).
 */
public enum FrameFormat {
    /** Identifier of 11 bits. */
    BASE(11, 34),
    /** Identifier of 29 bits. */
    EXTENDED(29, 54);

    /** Most bytes of data in a frame. */
    public static final int MOST_BYTES = 8;

    private static final int UNSTUFFED_BITS = 13;

    private final int identifierBits;
    private final int stuffableBits;

    FrameFormat(int identifierBits, int stuffableBits) {
        this.identifierBits = identifierBits;
        this.stuffableBits = stuffableBits;
    }

    /** The format with identifiers of 11 bits, else that with 29. */
    public static FrameFormat ofIdentifierBits(int bits) {
        return bits == BASE.identifierBits ? BASE : EXTENDED;
    }

    /** Bits of the identifier. */
    public int identifierBits() {
        return identifierBits;
    }

    /** Bits of a frame without any stuff bit. */
    public int leastBits(int dataBytes) {
        return open(dataBytes) + UNSTUFFED_BITS;
    }

    /** Bits of a frame with the most stuff bits it can have. */
    public int mostBits(int dataBytes) {
        return leastBits(dataBytes) + (open(dataBytes) - 1) / 4;
    }

    private int open(int dataBytes) {
        that(dataBytes >= 0 && dataBytes <= MOST_BYTES, "a frame carries 0 to %s bytes, not %s", MOST_BYTES, dataBytes);
        return stuffableBits + 8 * dataBytes;
    }
}
