package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.Optional;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * The design basis and limits a harness is judged by.
 *
 * @param basis               id of a design basis of the tables, for example {@code road-vehicle}
 * @param nominalVolts        nominal supply voltage, V, more than 0; 60 V DC and above is out of scope and refused
 * @param allowedDropFraction most voltage drop, feed and return together, as a share of the nominal voltage, for loads
 *                            without a limit of their own; more than 0, less than 1
 * @param gaugeSystem         whether sizes are chosen in AWG or mm2
 * @param insulation          insulation type of wires that name none
 * @param minimumGauge        mechanical minimum for single wires; empty takes the basis's own
 * @param ambientCelsius      ambient where no zone says otherwise, deg C
 * @param sizing              what is asked of the choice of sizes beyond the basis
 * @param returns             what is asked of the return paths
 * @param fabrication         what is asked of how the harness is made
 * @param wiring              what is asked of wires and pins made from sensors and units
 */
public record DesignRules(
        String basis,
        double nominalVolts,
        double allowedDropFraction,
        GaugeSystem gaugeSystem,
        String insulation,
        Optional<Gauge> minimumGauge,
        double ambientCelsius,
        Optional<SizingRules> sizing,
        Optional<ReturnRules> returns,
        Optional<FabricationRules> fabrication,
        Optional<WiringRules> wiring) {

    public DesignRules {
        notBlank(basis, "design basis");
        positive(nominalVolts, "nominal voltage");
        that(nominalVolts < 60, "nominal voltage %s V: 60 V DC and above is out of scope", nominalVolts);
        that(
                allowedDropFraction > 0 && allowedDropFraction < 1,
                "allowed drop must be a share between 0 and 1 of the nominal voltage, was %s",
                allowedDropFraction);
        notBlank(insulation, "insulation type");
        within(ambientCelsius, -60, 400, "default ambient");
    }

    /** Rules that ask nothing of the choice of sizes beyond the basis. */
    public DesignRules(
            String basis,
            double nominalVolts,
            double allowedDropFraction,
            GaugeSystem gaugeSystem,
            String insulation,
            Optional<Gauge> minimumGauge,
            double ambientCelsius) {
        this(
                basis,
                nominalVolts,
                allowedDropFraction,
                gaugeSystem,
                insulation,
                minimumGauge,
                ambientCelsius,
                Optional.empty(),
                Optional.empty());
    }

    /** Rules that ask nothing of how the harness is made. */
    public DesignRules(
            String basis,
            double nominalVolts,
            double allowedDropFraction,
            GaugeSystem gaugeSystem,
            String insulation,
            Optional<Gauge> minimumGauge,
            double ambientCelsius,
            Optional<SizingRules> sizing,
            Optional<ReturnRules> returns) {
        this(
                basis,
                nominalVolts,
                allowedDropFraction,
                gaugeSystem,
                insulation,
                minimumGauge,
                ambientCelsius,
                sizing,
                returns,
                Optional.empty());
    }

    /** Rules that ask nothing of wires and pins made from sensors and units. */
    public DesignRules(
            String basis,
            double nominalVolts,
            double allowedDropFraction,
            GaugeSystem gaugeSystem,
            String insulation,
            Optional<Gauge> minimumGauge,
            double ambientCelsius,
            Optional<SizingRules> sizing,
            Optional<ReturnRules> returns,
            Optional<FabricationRules> fabrication) {
        this(
                basis,
                nominalVolts,
                allowedDropFraction,
                gaugeSystem,
                insulation,
                minimumGauge,
                ambientCelsius,
                sizing,
                returns,
                fabrication,
                Optional.empty());
    }

    /** These with something else asked of how the harness is made. */
    public DesignRules withFabrication(FabricationRules changed) {
        return with(Optional.of(changed), wiring);
    }

    /** These with something else asked of wires and pins made from sensors and units. */
    public DesignRules withWiring(WiringRules changed) {
        return with(fabrication, Optional.of(changed));
    }

    /** These with another ambient where no zone says otherwise, deg C. */
    public DesignRules withAmbientCelsius(double changed) {
        return with(changed, fabrication, wiring);
    }

    private DesignRules with(Optional<FabricationRules> itsFabrication, Optional<WiringRules> itsWiring) {
        return with(ambientCelsius, itsFabrication, itsWiring);
    }

    private DesignRules with(
            double itsAmbientCelsius, Optional<FabricationRules> itsFabrication, Optional<WiringRules> itsWiring) {
        return new DesignRules(
                basis,
                nominalVolts,
                allowedDropFraction,
                gaugeSystem,
                insulation,
                minimumGauge,
                itsAmbientCelsius,
                sizing,
                returns,
                itsFabrication,
                itsWiring);
    }

    /** What is asked of wires and pins made from sensors and units, nothing when nothing is said. */
    public WiringRules wiringRules() {
        return wiring.orElse(WiringRules.NONE);
    }

    /** What is asked of how the harness is made, nothing when nothing is said. */
    public FabricationRules fabricationRules() {
        return fabrication.orElse(FabricationRules.NONE);
    }

    /** What is asked of the return paths, nothing when nothing is said. */
    public ReturnRules returnRules() {
        return returns.orElse(ReturnRules.NONE);
    }

    /** What is asked of the choice of sizes, nothing when nothing is said. */
    public SizingRules sizingRules() {
        return sizing.orElse(SizingRules.NONE);
    }

    /** The allowed drop of loads without a limit of their own, V. */
    public double allowedDropVolts() {
        return allowedDropFraction * nominalVolts;
    }
}
