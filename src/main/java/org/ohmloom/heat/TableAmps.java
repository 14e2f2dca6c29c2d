package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.tables.AmpacityTable;
import org.ohmloom.tables.BundleFactors;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Currents by the tables of a design basis: the table's current for size and insulation, times a factor for the hottest air
 * along the wire ({@link AmbientFactor}), times a factor for the loaded conductors that lie with it. A basis that asks for the
 * bundle factor only from some voltage up gets none below, and says so.
 */
final class TableAmps {

    private final DesignBasis basis;
    private final WireTables tables;
    private final double nominalVolts;
    private final AmpacityTable table;
    private final AmbientFactor ambientFactor;

    TableAmps(WireTables tables, DesignBasis basis, double nominalVolts) {
        this.tables = tables;
        this.basis = basis;
        this.nominalVolts = nominalVolts;
        this.table = tables.ampacity(basis.ampacityTable());
        this.ambientFactor = AmbientFactor.of(tables, basis);
    }

    /** Air temperature the table holds for, deg C. */
    double baseAmbientCelsius() {
        return table.baseAmbientCelsius();
    }

    /** What a conductor may carry in places of that ambient, deg C; empty when the table has no current for it. */
    Optional<Ampacity> of(
            ConductorRow row, InsulationType insulation, double ambientCelsius, boolean engineSpace, int loadedCount) {
        double limitCelsius = insulation.maximumCelsius();
        Optional<CitedValue> listed =
                basis.byHeatBalance() ? table.ampsAlong(row, limitCelsius) : table.amps(row, limitCelsius);
        return listed.map(base -> {
            List<Ampacity.Factor> factors = new ArrayList<>();
            factors.add(ambientFactor.factor(ambientCelsius, engineSpace, insulation));
            bundle(loadedCount, row).ifPresent(factors::add);
            return Ampacity.of(base, factors, ambientCelsius, limitCelsius, loadedCount);
        });
    }

    /** The basis's factor for so many loaded conductors together; empty when it has no table of them. */
    Optional<Ampacity.Factor> bundle(int loadedCount, ConductorRow row) {
        if (basis.bundleTable().isEmpty()) {
            return Optional.empty();
        }
        BundleFactors factors = tables.bundleFactors(basis.bundleTable().get());
        CitedValue factor = factors.factor(loadedCount, row.copperAreaMm2());
        Text together =
                loadedCount == 1 ? HeatTexts.text("one-loaded") : HeatTexts.text("loaded-together", loadedCount);
        if (nominalVolts >= basis.bundleFromVolts()) {
            return Optional.of(new Ampacity.Factor(together, factor.value(), factor.citation()));
        }
        Citation from = factor.citation();
        String fromVolts = String.format(Locale.ROOT, "asked for from %s up", Formats.volts(basis.bundleFromVolts()));
        return Optional.of(new Ampacity.Factor(
                HeatTexts.text("no-factor", together, Formats.volts(basis.bundleFromVolts())),
                1,
                new Citation(from.document(), from.edition(), from.table(), fromVolts, from.status())));
    }
}
