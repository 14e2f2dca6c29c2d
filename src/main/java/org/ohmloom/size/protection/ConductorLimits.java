package org.ohmloom.size.protection;

import java.util.List;
import java.util.Optional;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.ShortTimeLimit;

/** Puts together what each wire stands: its copper, its insulation, its running temperature and how it loses heat. */
final class ConductorLimits {
    private final ProtectionInput input;
    private final ConductorResistance resistance;

    ConductorLimits(ProtectionInput input) {
        this.input = input;
        this.resistance = new ConductorResistance(input.tables(), input.basis());
    }

    /** What a wire stands; empty when no table has its ampacity or its insulation. */
    Optional<ConductorLimit> of(Wire wire) {
        WireRating rating = input.ratings().get(wire.id());
        if (rating == null || rating.ampacity().isEmpty()) {
            return Optional.empty();
        }
        String insulation = wire.insulation().orElse(input.harness().rules().insulation());
        Optional<ShortTimeLimit> listed = input.tables().findShortTimeLimit(insulation);
        Optional<InsulationType> type = input.tables().findInsulation(insulation);
        return type.flatMap(found -> listed.map(limit -> limit(wire, rating, found, limit)));
    }

    private ConductorLimit limit(Wire wire, WireRating rating, InsulationType type, ShortTimeLimit shortTime) {
        Ampacity ampacity = rating.ampacity().orElseThrow();
        ConductorRow row = resistance.row(wire, rating.gauge());
        double running = Math.min(Math.max(rating.celsius(), ampacity.ambientCelsius()), type.maximumCelsius());
        return new ConductorLimit(
                wire.id(),
                rating.gauge().text(),
                row.copperAreaMm2(),
                ampacity.limitAmps(),
                ampacity.ambientCelsius(),
                running,
                ampacity.limitCelsius(),
                shortTime,
                LumpedHeating.of(
                        input.tables().copper(),
                        row.copperAreaMm2(),
                        row.ohmsPerMetreAt20Celsius(),
                        ampacity.limitAmps(),
                        ampacity.limitCelsius(),
                        ampacity.ambientCelsius()),
                input.tables().copper(),
                List.of(
                        shortTime.overload().citation(),
                        input.tables().copper().adiabaticK().citation(),
                        ampacity.base().citation()));
    }
}
