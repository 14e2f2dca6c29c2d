package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.Optional;

/**
 * An alternator with its regulator: holds its set point up to its current limit and takes no current back.
 * Terminals {@code +} and {@code -}. Off unless the operating state says it runs.
 *
 * @param setPointVolts regulated voltage at its terminals, V, more than 0
 * @param internalOhms  fall of voltage per ampere below the limit, ohm, 0 or more
 * @param limitAmps     most current it gives, A, more than 0
 * @param model         what else is known: where it senses, how set point and limit change
 */
public record Alternator(double setPointVolts, double internalOhms, double limitAmps, Optional<AlternatorModel> model)
        implements Device {

    public Alternator {
        positive(setPointVolts, "alternator set point");
        notNegative(internalOhms, "alternator internal resistance");
        positive(limitAmps, "alternator current limit");
    }

    /** An alternator that senses at its own terminals and has one limit. */
    public Alternator(double setPointVolts, double internalOhms, double limitAmps) {
        this(setPointVolts, internalOhms, limitAmps, Optional.empty());
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
