package org.ohmloom.bench.record;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holds for every line of a sheet that does not say it itself.
 *
 * @param serialNumber     which built harness
 * @param revision         revision it was built to
 * @param conductorCelsius temperature of the conductors, deg C
 * @param instrument       the instrument
 * @param by               who measured
 * @param date             when, ISO 8601
 * @param state            id of the operating state of a test under power
 */
public record RecordDefaults(
        Optional<String> serialNumber,
        Optional<String> revision,
        OptionalDouble conductorCelsius,
        Optional<String> instrument,
        Optional<String> by,
        Optional<String> date,
        Optional<String> state) {

    /** Nothing said. */
    public static final RecordDefaults NONE = new RecordDefaults(
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
}
