package org.ohmloom.size.protection;

import java.util.Optional;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Wire;

/** What each wire stands, at its size and its running temperature. */
final class ConductorLimits {
    private final ProtectionInput input;
    private final ConductorResistance resistance;

    ConductorLimits(ProtectionInput input) {
        this.input = input;
        this.resistance = new ConductorResistance(input.tables(), input.basis());
    }

    /** What a wire stands; empty when no table has its ampacity or its insulation. */
    Optional<ConductorLimit> of(Wire wire) {
        return Optional.ofNullable(input.ratings().get(wire.id())).flatMap(rating -> limit(wire, rating));
    }

    private Optional<ConductorLimit> limit(Wire wire, WireRating rating) {
        return rating.ampacity()
                .flatMap(ampacity -> ConductorLimit.of(
                        input.tables(),
                        wire.id(),
                        wire.insulation().orElse(input.harness().rules().insulation()),
                        resistance.row(wire, rating.gauge()),
                        ampacity,
                        rating.celsius()));
    }
}
