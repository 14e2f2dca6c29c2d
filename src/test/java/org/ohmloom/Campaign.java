package org.ohmloom;

/**
 * How much of the long campaigns a build runs: a sample by a fixed seed, or every count in full with the system property
 * {@code ohmloom.campaign=full}.
 */
public final class Campaign {

    /** Whether everything runs in full. */
    public static final boolean FULL = "full".equals(System.getProperty("ohmloom.campaign"));

    private Campaign() {}

    /** A count, of the sample or in full. */
    public static int count(int sample, int full) {
        return FULL ? full : sample;
    }
}
