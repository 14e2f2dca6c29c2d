package org.ohmloom.size.protection;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.heat.BundleHeat;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/** What each wire stands, at its size and its running temperature. */
final class ConductorLimits {
    private final ProtectionInput input;
    private final ConductorResistance resistance;
    private final Map<WireId, Optional<ConductorLimit>> known = new HashMap<>();
    private final BundleHeat.Neighbours neighbours;

    ConductorLimits(ProtectionInput input) {
        this.input = input;
        this.resistance = new ConductorResistance(input.tables(), input.basis());
        neighbours = input.bundleHeat()
                .neighbours(each -> rating(each).gauge(), each -> rating(each).worstAmps());
    }

    /** What a wire stands; empty when no table has its ampacity or its insulation. */
    Optional<ConductorLimit> of(Wire wire) {
        return known.computeIfAbsent(
                wire.id(), id -> Optional.ofNullable(input.ratings().get(id)).flatMap(rating -> limit(wire, rating)));
    }

    /** The smallest size of its family above its own that meets a condition. */
    Optional<Gauge> larger(Wire wire, Predicate<ConductorLimit> condition) {
        WireRating rating = rating(wire);
        return resistance.family(wire, rating.gauge().system()).rows().stream()
                .filter(row -> row.copperAreaMm2() > rating.areaMm2())
                .filter(row -> limit(wire, rating, row).filter(condition).isPresent())
                .map(ConductorRow::gauge)
                .findFirst();
    }

    private Optional<ConductorLimit> limit(Wire wire, WireRating rating) {
        return limit(wire, rating, resistance.row(wire, rating.gauge()));
    }

    private Optional<ConductorLimit> limit(Wire wire, WireRating rating, ConductorRow row) {
        return rating.ampacity().flatMap(ampacity -> ConductorLimit.of(
                        input.tables(),
                        wire.id(),
                        wire.insulation().orElse(input.harness().rules().insulation()),
                        row,
                        ampacity,
                        rating.celsius())
                .map(limit -> settled(wire, limit, row, ampacity.limitAmps())));
    }

    /** The limit with the wire's own losses: at its ampacity, its neighbours at their largest lasting currents. */
    private ConductorLimit settled(Wire wire, ConductorLimit limit, ConductorRow row, double amps) {
        return neighbours
                .settle(wire, row.gauge(), amps)
                .filter(heat -> !heat.runaway())
                .map(heat -> limit.settlingAt(heat.celsius(), amps, row.ohmsPerMetreAt20Celsius()))
                .orElse(limit);
    }

    private WireRating rating(Wire wire) {
        return input.ratings().get(wire.id());
    }
}
