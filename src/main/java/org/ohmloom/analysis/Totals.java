package org.ohmloom.analysis;

import org.ohmloom.bundle.CopperMass;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.review.Evidence;
import org.ohmloom.solve.LoadVolts;

/**
 * Sums over the wires to be made, existing ones left out.
 *
 * @param wires         count of wires to be made
 * @param lengthMetres  length of all of them, m, as far as known
 * @param copperKg      copper in them, kg, as far as known
 * @param connectors    count of connectors to be fitted
 * @param worstDropVolts largest on-state drop of any load in any state that asks it on, V
 */
public record Totals(int wires, double lengthMetres, double copperKg, int connectors, double worstDropVolts) {

    /** The sums of a harness with what was found. */
    public static Totals of(Evidence evidence) {
        int wires = 0;
        double lengthMetres = 0;
        double copperKg = 0;
        CopperMass copper = new CopperMass(evidence.tables().copper().density());
        ConductorResistance conductors = new ConductorResistance(evidence.tables(), evidence.basis());
        for (WireRating rating : evidence.ratings().values()) {
            if (!rating.wire().existing()) {
                wires++;
                double length = rating.lengthMetres().orElse(0);
                lengthMetres += length;
                copperKg += copper.kilograms(conductors.row(rating.wire(), rating.gauge()), length);
            }
        }
        int connectors = (int) evidence.harness().connectors().all().stream()
                .filter(connector -> !connector.existing())
                .count();
        double worstDropVolts = 0;
        for (OperatingState state : evidence.harness().states().all()) {
            for (LoadVolts load : evidence.solutions().get(state.id()).loads().values()) {
                if (state.asksOn(load.load())) {
                    worstDropVolts = Math.max(worstDropVolts, load.onDropVolts());
                }
            }
        }
        return new Totals(wires, lengthMetres, copperKg, connectors, worstDropVolts);
    }
}
