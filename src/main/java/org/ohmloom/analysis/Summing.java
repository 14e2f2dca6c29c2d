package org.ohmloom.analysis;

import java.util.SortedMap;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.LoadVolts;

/** Sums over the whole harness. */
final class Summing {

    private Summing() {}

    static Totals of(Bench bench, SortedMap<WireId, WireRating> ratings, HeatedSolutions heated) {
        int wires = 0;
        double lengthMetres = 0;
        double copperKg = 0;
        CopperMass copper = new CopperMass(bench.tables().copper().density());
        for (WireRating rating : ratings.values()) {
            if (!rating.wire().existing()) {
                wires++;
                double length = rating.lengthMetres().orElse(0);
                lengthMetres += length;
                copperKg += copper.kilograms(bench.resistance().row(rating.wire(), rating.gauge()), length);
            }
        }
        int connectors = (int) bench.harness().connectors().all().stream()
                .filter(connector -> !connector.existing())
                .count();
        double worstDropVolts = 0;
        for (OperatingState state : bench.harness().states().all()) {
            for (LoadVolts load : heated.solutions().get(state.id()).loads().values()) {
                if (state.asksOn(load.load())) {
                    worstDropVolts = Math.max(worstDropVolts, load.onDropVolts());
                }
            }
        }
        return new Totals(wires, lengthMetres, copperKg, connectors, worstDropVolts);
    }
}
