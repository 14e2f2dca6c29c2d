package org.ohmloom.solve;

import java.util.HashMap;
import java.util.Map;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;

/**
 * The moment by which the voltage drop of a load is judged, see {@link LoadMoments}.
 *
 * @param volts voltage of the points of its island, V
 * @param amps  current of the branches of its island, A
 */
record OnMoment(Map<PointId, Double> volts, Map<BranchId, Double> amps) {

    static OnMoment of(Circuit circuit, IslandMoment moment) {
        Map<PointId, Double> volts = new HashMap<>();
        Map<BranchId, Double> amps = new HashMap<>();
        volts.put(circuit.datum(), 0.0);
        for (int point = 0; point < circuit.points().size(); point++) {
            volts.put(circuit.points().get(point), moment.volts().value(point));
        }
        for (int branch = 0; branch < circuit.branches().size(); branch++) {
            amps.put(circuit.branches().get(branch).id(), moment.amps().value(branch));
        }
        return new OnMoment(volts, amps);
    }

    /** Current of a branch, A; 0 for one outside. */
    double amps(Branch branch) {
        return amps.getOrDefault(branch.id(), 0.0);
    }
}
