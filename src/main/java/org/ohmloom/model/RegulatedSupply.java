package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

import java.util.List;

/**
 * A battery charger or a bench supply: a regulated voltage up to a current limit, no current back.
 * Terminals {@code +} and {@code -}. Off unless the operating state says it runs.
 *
 * @param use          what it is
 * @param outputVolts  regulated voltage, V, more than 0
 * @param internalOhms fall of voltage per ampere below the limit, ohm, 0 or more
 * @param limitAmps    most current it gives, A, more than 0
 */
public record RegulatedSupply(Use use, double outputVolts, double internalOhms, double limitAmps) implements Device {

    /** What a regulated supply is for. */
    public enum Use {
        /** Charges a battery from the shore or the mains. */
        CHARGER,
        /** Feeds the harness on the bench. */
        BENCH_SUPPLY
    }

    public RegulatedSupply {
        positive(outputVolts, "regulated voltage");
        notNegative(internalOhms, "internal resistance of the supply");
        positive(limitAmps, "current limit of the supply");
    }

    @Override
    public List<String> terminals() {
        return List.of(POSITIVE, NEGATIVE);
    }

    @Override
    public boolean isSource() {
        return true;
    }
}
