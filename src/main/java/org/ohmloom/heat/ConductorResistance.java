package org.ohmloom.heat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.model.Reading;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.CopperConstants;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * End-to-end resistance of wires: listed resistance of the size at 20 C, times length, times (234.5 + T)/254.5.
 *
 * <p>The resistance comes from the row of the conductor family, never from the nominal area. A size the family does not
 * list takes the next thinner listed size, which resists more; one thinner than all listed sizes takes the thinnest and
 * the ratio of the areas. Safe for use by any number of threads.
 */
public final class ConductorResistance {

    /** Resistance that stands in for a wire whose length nobody has entered, ohm: too small to be seen in a result. */
    public static final double UNKNOWN_LENGTH_OHMS = 1e-6;

    private final WireTables tables;
    private final DesignBasis basis;
    private final CopperConstants copper;
    private final MeasuredOhms measured;

    /** Resistances from those tables, with the families of that basis for wires that name none. */
    public ConductorResistance(WireTables tables, DesignBasis basis) {
        this(tables, basis, MeasuredOhms.NONE);
    }

    /** The same, with measured resistances in the place of those from the tables where a wire has one. */
    public ConductorResistance(WireTables tables, DesignBasis basis, MeasuredOhms measured) {
        this.tables = tables;
        this.basis = basis;
        this.measured = measured;
        this.copper = tables.copper();
    }

    /** The wire's own family when the tables have it in that system, otherwise the basis's own for that system. */
    public ConductorFamily family(Wire wire, GaugeSystem system) {
        return wire.family()
                .flatMap(tables::findFamily)
                .filter(family -> family.system() == system)
                .orElseGet(() -> tables.family(
                        system == GaugeSystem.AWG ? basis.defaultAwgFamily() : basis.defaultMetricFamily()));
    }

    /** The row of that size in the wire's family; for a size not listed there a row that says what stands in for it. */
    public ConductorRow row(Wire wire, Gauge gauge) {
        ConductorFamily family = family(wire, gauge.system());
        return family.row(gauge).orElseGet(() -> standIn(family, gauge));
    }

    /** Resistance at a conductor temperature over resistance at 20 C: (234.5 + T)/254.5, T in deg C. */
    public double ratio(double celsius) {
        return copper.resistanceRatio(celsius);
    }

    /** Resistance of that size in the wire's family at a conductor temperature in deg C, ohm per metre. */
    public double ohmsPerMetre(Wire wire, Gauge gauge, double celsius) {
        return row(wire, gauge).ohmsPerMetreAt20Celsius() * ratio(celsius);
    }

    /**
     * The reading whose resistance a wire has with its own size: of several the one with the most resistance at 20 C. A reading
     * belongs to the conductor that was built in; with another size the wire has none.
     */
    public Optional<MeasuredOhms.Taken> taken(Wire wire, Gauge gauge) {
        return wire.gauge().filter(gauge::equals).isEmpty()
                ? Optional.empty()
                : measured.wire(wire.id()).stream().max(Comparator.comparingDouble(this::ohmsAt20Celsius));
    }

    /** A measured resistance brought to 20 C: divided by (234.5 + T)/254.5 of the temperature it was measured at, ohm. */
    public double ohmsAt20Celsius(MeasuredOhms.Taken taken) {
        return taken.ohms() / ratio(MeasuredOhms.celsius(taken.reading()));
    }

    /**
     * End-to-end resistance, ohm, more than 0: that of a reading which replaces the table's, brought to the temperature; otherwise
     * the one entered with the wire, at whatever temperature; otherwise the table's.
     *
     * @param wire         the wire
     * @param gauge        its size
     * @param lengthMetres its length, m; empty gives {@link #UNKNOWN_LENGTH_OHMS}
     * @param celsius      conductor temperature, deg C
     */
    public double ohms(Wire wire, Gauge gauge, OptionalDouble lengthMetres, double celsius) {
        Optional<MeasuredOhms.Taken> taken = taken(wire, gauge);
        if (taken.isPresent()) {
            return ohmsAt20Celsius(taken.get()) * ratio(celsius);
        }
        if (wire.measuredOhms().isPresent()) {
            return wire.measuredOhms().getAsDouble();
        }
        return lengthMetres.isPresent()
                ? ohmsPerMetre(wire, gauge, celsius) * lengthMetres.getAsDouble()
                : UNKNOWN_LENGTH_OHMS;
    }

    /** The reading or the table row the resistance comes from; empty for one entered with the wire. */
    public Optional<Citation> citation(Wire wire, Gauge gauge) {
        Optional<MeasuredOhms.Taken> taken = taken(wire, gauge);
        if (taken.isPresent()) {
            return taken.map(ConductorResistance::cite);
        }
        return wire.measuredOhms().isPresent()
                ? Optional.empty()
                : Optional.of(row(wire, gauge).citation());
    }

    private static Citation cite(MeasuredOhms.Taken taken) {
        Reading reading = taken.reading();
        String serial = reading.serialNumber()
                .map(number -> " of serial number " + number)
                .orElse("");
        return new Citation(
                "as-built record",
                "not stated",
                "reading " + reading.id() + serial + ", " + Formats.ohms(taken.ohms()) + " at "
                        + Formats.celsius(MeasuredOhms.celsius(reading)),
                "",
                Status.MEASURED);
    }

    private static ConductorRow standIn(ConductorFamily family, Gauge gauge) {
        List<ConductorRow> rows = family.rows();
        ConductorRow thinnest = rows.get(0);
        Optional<ConductorRow> thinner = rows.stream()
                .filter(row -> row.gauge().nominalAreaMm2() <= gauge.nominalAreaMm2())
                .max(Comparator.comparingDouble(ConductorRow::copperAreaMm2));
        if (thinner.isPresent()) {
            ConductorRow row = thinner.get();
            return new ConductorRow(
                    gauge,
                    row.copperAreaMm2(),
                    row.ohmsPerMetreAt20Celsius(),
                    row.outsideDiameterMm(),
                    cite(row, "standing in for " + gauge.text()));
        }
        double areaRatio = gauge.nominalAreaMm2() / thinnest.gauge().nominalAreaMm2();
        return new ConductorRow(
                gauge,
                thinnest.copperAreaMm2() * areaRatio,
                thinnest.ohmsPerMetreAt20Celsius() / areaRatio,
                OptionalDouble.empty(),
                cite(thinnest, "scaled by area to " + gauge.text()));
    }

    private static Citation cite(ConductorRow row, String words) {
        Citation from = row.citation();
        return new Citation(
                from.document(),
                from.edition(),
                from.table(),
                from.row() + ", " + words,
                from.status().weaker(Status.COMPUTED));
    }
}
