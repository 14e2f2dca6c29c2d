package org.ohmloom.signal.calibration;

import org.ohmloom.words.Text;

/**
 * Why a sensor or its calibration does not serve.
 *
 * @param kind  what is wrong
 * @param words what is wrong, with its numbers, as the end of a sentence that begins with the sensor
 */
public record CalibrationProblem(Kind kind, Text words) {

    /** What can be wrong. */
    public enum Kind {
        /** The values met in use go beyond what the sensor or its calibration tells. */
        RANGE_TOO_SMALL,
        /** The signal leaves what the input converts or counts. */
        BEYOND_INPUT,
        /** Two values give the same signal. */
        NOT_MONOTONE,
        /** It gives a share of a supply that is not the one the input goes by. */
        OTHER_SUPPLY,
        /** One step of the converter is worth more than the error allowed. */
        TOO_COARSE
    }
}
