package org.ohmloom.analysis;

import java.util.OptionalDouble;
import java.util.SortedSet;
import org.ohmloom.bundle.length.CutLengths;
import org.ohmloom.graph.FuseOhms;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.Ampacities;
import org.ohmloom.heat.BundleHeat;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.heat.PassingHeat;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * What stays the same during one analysis: the harness, the tables of its basis and the ways of its wires.
 *
 * @param harness    the harness
 * @param tables     published tables
 * @param basis      the design basis
 * @param routes     ways of the wires, with the cut lengths
 * @param lengths    cut lengths of the wires, part by part
 * @param resistance resistances by the tables
 * @param ampacities ampacities by the tables
 * @param lasting    the states that last
 * @param fuseOhms   resistances of protective devices by the tables
 * @param bundleHeat steady temperatures by the heat balance
 * @param passingHeat temperatures on the way
 * @param variation  how the harness that is solved differs from the one that is drawn
 * @param networks   the networks of its states
 * @param before     where searches for its states ended when they were last begun anew
 * @param cancel     asks to stop; looked at for every wire wherever all of them are gone through
 */
record Bench(
        Harness harness,
        WireTables tables,
        DesignBasis basis,
        Routes routes,
        CutLengths lengths,
        ConductorResistance resistance,
        Ampacities ampacities,
        SortedSet<StateId> lasting,
        FuseOhms fuseOhms,
        BundleHeat bundleHeat,
        PassingHeat passingHeat,
        Variation variation,
        StateNetworks networks,
        SolvedBefore before,
        Cancel cancel) {

    /**
     * Sets everything out for a harness.
     *
     * @param cancel asks to stop
     * @throws AnalysisRefusedException when the design basis or a named family or insulation is not in the tables
     */
    static Bench of(Harness harness, WireTables tables, Cancel cancel) {
        DesignBasis basis = KnownNames.basis(harness, tables);
        KnownNames.check(harness, tables);
        ConductorResistance resistance = new ConductorResistance(tables, basis, MeasuredOhms.of(harness));
        LaidWires laid = LaidWires.of(harness, tables, resistance);
        Routes routes = laid.routes();
        Ampacities ampacities = new Ampacities(harness, tables, basis, routes);
        return new Bench(
                harness,
                tables,
                basis,
                routes,
                laid.lengths(),
                resistance,
                ampacities,
                ContinuousStates.of(harness),
                FuseOhms.of(tables),
                new BundleHeat(harness, tables, routes, ampacities),
                new PassingHeat(ampacities),
                Variation.NONE,
                new StateNetworks(harness, tables),
                new SolvedBefore(),
                cancel);
    }

    /** The same for a harness that differs in its operating states or the resistances of its joints alone. */
    Bench inStatesOrJointsOf(Harness changed) {
        return new Bench(
                changed,
                tables,
                basis,
                routes,
                lengths,
                resistance,
                ampacities,
                ContinuousStates.of(changed),
                fuseOhms,
                bundleHeat,
                passingHeat,
                variation,
                new StateNetworks(changed, tables),
                new SolvedBefore(),
                cancel);
    }

    /** The same, stopped by another. */
    Bench under(Cancel other) {
        return with(before, other);
    }

    /** The same, its searches begun near where others ended. */
    Bench near(SolvedBefore others) {
        return with(others, cancel);
    }

    private Bench with(SolvedBefore others, Cancel other) {
        return new Bench(
                harness,
                tables,
                basis,
                routes,
                lengths,
                resistance,
                ampacities,
                lasting,
                fuseOhms,
                bundleHeat,
                passingHeat,
                variation,
                networks,
                others,
                other);
    }

    /** The same, built with other values in other air; what wires may carry is worked out anew for that air. */
    Bench varied(Variation changed) {
        Harness warmed = VariedAir.of(harness, changed.airKelvin());
        Ampacities around = warmed == harness ? ampacities : new Ampacities(warmed, tables, basis, routes);
        return new Bench(
                warmed,
                tables,
                basis,
                routes,
                lengths,
                resistance,
                around,
                lasting,
                fuseOhms,
                warmed == harness ? bundleHeat : new BundleHeat(warmed, tables, routes, around),
                warmed == harness ? passingHeat : new PassingHeat(around),
                changed,
                warmed == harness ? networks : new StateNetworks(warmed, tables),
                new SolvedBefore(),
                cancel);
    }

    /** End-to-end resistance of a wire with a size at a temperature, ohm. */
    double ohms(Wire wire, Gauge gauge, double celsius) {
        return resistance.ohms(wire, gauge, length(wire), celsius);
    }

    /** Length of a wire as cut, m, if known. */
    OptionalDouble length(Wire wire) {
        return routes.lengthMetres(wire);
    }
}
