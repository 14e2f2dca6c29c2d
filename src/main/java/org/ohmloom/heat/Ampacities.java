package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.AmpacityTable;
import org.ohmloom.tables.BundleFactors;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/**
 * What wires may carry where they lie, by the tables of a design basis.
 *
 * <p>The table's current for size and insulation, times a factor for the hottest air along the wire
 * ({@link AmbientFactor}), times a factor for the loaded conductors that lie with it. A basis that asks for the bundle
 * factor only from some voltage up gets none below, and says so. AC 43.13-1B Table 11-9 already holds 70 C air and a
 * bundle of 33 wires at 20 % load, so the basis's own factors only bite beyond that. Safe for any number of threads.
 */
public final class Ampacities {

    private final Harness harness;
    private final WireTables tables;
    private final DesignBasis basis;
    private final Routes routes;
    private final ConductorResistance resistance;
    private final AmpacityTable table;
    private final AmbientFactor ambientFactor;

    /** Ampacities of the wires of a harness. */
    public Ampacities(Harness harness, WireTables tables, DesignBasis basis, Routes routes) {
        this.harness = harness;
        this.tables = tables;
        this.basis = basis;
        this.routes = routes;
        this.resistance = new ConductorResistance(tables, basis);
        this.table = tables.ampacity(basis.ampacityTable());
        this.ambientFactor = AmbientFactor.of(tables, basis);
    }

    /** The hottest air along the wire, deg C: zones of its segments and ends, the default where one has no zone. */
    public double ambientCelsius(Wire wire) {
        return WirePlaces.of(harness, routes, wire)
                .hottestCelsius(harness.rules().ambientCelsius());
    }

    /** The wire's insulation, the design rules' own when it names none; empty when the tables do not have it. */
    public Optional<InsulationType> insulation(Wire wire) {
        return tables.findInsulation(wire.insulation().orElse(harness.rules().insulation()));
    }

    /**
     * What the wire may carry with a size; empty when no table has its size or its insulation.
     *
     * @param wire        the wire
     * @param gauge       a size, its own or one to be tried
     * @param loadedCount loaded conductors lying together, the wire among them, 1 or more
     */
    public Optional<Ampacity> of(Wire wire, Gauge gauge, int loadedCount) {
        return insulation(wire).flatMap(insulation -> of(wire, gauge, loadedCount, insulation));
    }

    private Optional<Ampacity> of(Wire wire, Gauge gauge, int loadedCount, InsulationType insulation) {
        ConductorRow row = resistance.row(wire, gauge);
        double limitCelsius = insulation.maximumCelsius();
        return table.amps(row, limitCelsius).map(base -> {
            WirePlaces places = WirePlaces.of(harness, routes, wire);
            double ambient = places.hottestCelsius(harness.rules().ambientCelsius());
            List<Ampacity.Factor> factors = new ArrayList<>();
            factors.add(ambientFactor.factor(ambient, places.engineSpace(), insulation));
            bundleFactor(loadedCount, row).ifPresent(factors::add);
            double amps = base.value();
            for (Ampacity.Factor factor : factors) {
                amps *= factor.ratio();
            }
            return new Ampacity(amps, base, factors, ambient, limitCelsius, loadedCount);
        });
    }

    private Optional<Ampacity.Factor> bundleFactor(int loadedCount, ConductorRow row) {
        if (basis.bundleTable().isEmpty()) {
            return Optional.empty();
        }
        BundleFactors factors = tables.bundleFactors(basis.bundleTable().get());
        CitedValue factor = factors.factor(loadedCount, row.copperAreaMm2());
        String together = loadedCount == 1 ? "1 loaded conductor" : loadedCount + " loaded conductors together";
        if (harness.rules().nominalVolts() >= basis.bundleFromVolts()) {
            return Optional.of(new Ampacity.Factor(together, factor.value(), factor.citation()));
        }
        Citation from = factor.citation();
        String fromVolts = String.format(Locale.ROOT, "asked for from %s up", Formats.volts(basis.bundleFromVolts()));
        return Optional.of(new Ampacity.Factor(
                together + ", no factor below " + Formats.volts(basis.bundleFromVolts()),
                1,
                new Citation(from.document(), from.edition(), from.table(), fromVolts, from.status())));
    }

    /**
     * The conductor temperature at a steady RMS current, deg C, by {@link ConductorTemperature}; the ambient when the
     * ampacity is not known, never above the melting point of copper.
     */
    public double celsius(Wire wire, Optional<Ampacity> ampacity, double amps) {
        double melting = tables.copper().meltingPoint().value();
        return ampacity.map(
                        each -> Math.min(melting, ConductorTemperature.celsius(each, table.baseAmbientCelsius(), amps)))
                .orElseGet(() -> ambientCelsius(wire));
    }
}
