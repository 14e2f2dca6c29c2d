package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

import java.util.OptionalDouble;

/**
 * The electronic current limit of an output: at most the limit flows, and after a while it opens.
 *
 * @param limitAmps    current it holds or trips at, A, more than 0
 * @param tripSeconds  time at the limit after which it opens, s, more than 0; empty means it holds the limit for good
 * @param retrySeconds time after which it tries again by itself, s, more than 0; empty means it stays open until reset
 */
public record ElectronicLimit(double limitAmps, OptionalDouble tripSeconds, OptionalDouble retrySeconds) {

    public ElectronicLimit {
        positive(limitAmps, "electronic current limit");
        tripSeconds.ifPresent(value -> positive(value, "trip time"));
        retrySeconds.ifPresent(value -> positive(value, "retry time"));
    }
}
