package org.ohmloom.workbench.record;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holds for values typed into the as-built record until it is changed.
 *
 * @param serialNumber which built harness
 * @param celsius      temperature of its conductors, deg C
 * @param instrument   the instrument
 * @param by           who measures
 * @param date         when, ISO 8601
 */
record RecordSettings(
        Optional<String> serialNumber,
        OptionalDouble celsius,
        Optional<String> instrument,
        Optional<String> by,
        Optional<String> date) {

    /** Nothing said. */
    static final RecordSettings NONE = new RecordSettings(
            Optional.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
