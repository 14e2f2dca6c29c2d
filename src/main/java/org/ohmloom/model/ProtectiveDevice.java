package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A fuse or a breaker between terminals {@code 1} (supply side) and {@code 2}. Closed in every operating state unless
 * the state says it is off (pulled or tripped).
 *
 * @param kind       fuse or breaker
 * @param series     the standard's own type, for example {@code ISO 8820-3 type C}; names rows of the fuse tables
 * @param ratingAmps rated current, A, more than 0
 * @param ohms       cold resistance, ohm, if measured; otherwise the table's typical value serves
 * @param ratedVolts highest system voltage it is made for, V, more than 0; empty takes its type's own
 * @param breakingAmps most current it can interrupt at that voltage, A, more than 0; empty takes its type's own
 */
public record ProtectiveDevice(
        Kind kind,
        String series,
        double ratingAmps,
        OptionalDouble ohms,
        OptionalDouble ratedVolts,
        OptionalDouble breakingAmps)
        implements Device {

    /** Kind of protective device. */
    public enum Kind {
        FUSE,
        BREAKER
    }

    /** Terminal names: supply side and load side. */
    public static final String SUPPLY_SIDE = "1", LOAD_SIDE = "2";

    public ProtectiveDevice {
        notBlank(series, "type of protective device");
        positive(ratingAmps, "rated current");
        ohms.ifPresent(value -> positive(value, "resistance of the protective device"));
        ratedVolts.ifPresent(value -> positive(value, "voltage rating of the protective device"));
        breakingAmps.ifPresent(value -> positive(value, "breaking capacity of the protective device"));
    }

    /** A device with the voltage rating and breaking capacity of its type. */
    public ProtectiveDevice(Kind kind, String series, double ratingAmps, OptionalDouble ohms) {
        this(kind, series, ratingAmps, ohms, OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Override
    public List<String> terminals() {
        return List.of(SUPPLY_SIDE, LOAD_SIDE);
    }

    /** This device with another rated current; a measured resistance no longer applies. */
    public ProtectiveDevice withRatingAmps(double changedAmps) {
        return changedAmps == ratingAmps
                ? this
                : new ProtectiveDevice(kind, series, changedAmps, OptionalDouble.empty(), ratedVolts, breakingAmps);
    }
}
