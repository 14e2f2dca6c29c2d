package org.ohmloom.analysis.tolerance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.analysis.Variation;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Sensing;
import org.ohmloom.model.WireId;

/** A value for every input. */
final class DrawnValues implements Variation {

    private final Map<BranchId, Double> factors = new HashMap<>();
    private final Map<String, Double> heatRatios = new HashMap<>();
    private double kelvin;

    /** Those values, one for each input in order. */
    DrawnValues(List<SpreadInput> inputs, double[] values) {
        for (int k = 0; k < values.length; k++) {
            SpreadInput input = inputs.get(k);
            if (input.kind() == SpreadKind.AMBIENT) {
                kelvin = values[k];
            }
            for (BranchId branch : input.branches()) {
                factors.merge(branch, 1 + values[k], (one, other) -> one * other);
                if (input.kind() == SpreadKind.CONDUCTOR) {
                    heatRatios.put(branch.value(), 1 + values[k]);
                }
            }
        }
    }

    @Override
    public Network of(Network drawn) {
        Map<BranchId, Law> laws = new HashMap<>();
        factors.forEach((id, factor) -> drawn.branch(id).ifPresent(branch -> laws.put(id, law(branch, factor))));
        List<Sensing> sensings = drawn.sensings().stream()
                .map(each -> new Sensing(
                        each.source(), each.sense(), each.setPointVolts() * factors.getOrDefault(each.source(), 1.0)))
                .toList();
        return drawn.withLaws(laws).withSensings(sensings);
    }

    private static Law law(Branch branch, double factor) {
        return ScaledLaw.of(branch.kind().part(), branch.law(), factor);
    }

    @Override
    public double heatRatio(WireId wire) {
        return heatRatios.getOrDefault(wire.value(), 1.0);
    }

    @Override
    public double airKelvin() {
        return kelvin;
    }
}
