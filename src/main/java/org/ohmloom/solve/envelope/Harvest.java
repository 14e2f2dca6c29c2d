package org.ohmloom.solve.envelope;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;

/** The worst of some combinations solved in full, for every branch and load; ties go to the earlier combination. */
final class Harvest {
    /** A branch that carries less in every combination is left out, A. */
    private static final double NOTHING_AMPS = 1e-9;

    /** More by less than this share is the same, so that rounding breaks no tie. */
    private static final double MORE_RATIO = 1 + 1e-9;

    private final SortedMap<BranchId, Worst> on = new TreeMap<>();
    private final SortedMap<BranchId, Worst> rms = new TreeMap<>();
    private final SortedMap<ComponentId, Drop> drops = new TreeMap<>();

    private record Worst(double amps, String combination) {
        Worst or(Worst other) {
            return Math.abs(other.amps) > Math.abs(amps) * MORE_RATIO ? other : this;
        }
    }

    private record Drop(double volts, String combination, double limitVolts) {
        Drop or(Drop other) {
            return other.volts > volts ? other : this;
        }
    }

    Harvest(List<Combination> combinations) {
        for (Combination each : combinations) {
            for (BranchFlow flow : each.solution().flows().values()) {
                on.merge(flow.branch().id(), new Worst(flow.onAmps(), each.id()), Worst::or);
                rms.merge(flow.branch().id(), new Worst(flow.rmsAmps(), each.id()), Worst::or);
            }
            for (LoadVolts load : each.solution().loads().values()) {
                if (each.loads().contains(load.load())) {
                    drops.merge(load.load(), new Drop(load.onDropVolts(), each.id(), load.limitVolts()), Drop::or);
                }
            }
        }
    }

    SortedMap<BranchId, BranchEnvelope> branches(Bounds bounds) {
        SortedMap<BranchId, BranchEnvelope> branches = new TreeMap<>();
        on.forEach((id, most) -> {
            Worst heat = rms.get(id);
            if (Math.abs(most.amps) > NOTHING_AMPS || heat.amps > NOTHING_AMPS) {
                double size = Math.abs(most.amps);
                OptionalDouble onBound = bounds.on(id, size);
                OptionalDouble rmsBound = bounds.rms(id, heat.amps);
                branches.put(
                        id,
                        new BranchEnvelope(
                                id,
                                most.amps,
                                most.combination,
                                onBound,
                                Bounds.proves(onBound, size),
                                heat.amps,
                                heat.combination,
                                rmsBound,
                                Bounds.proves(rmsBound, heat.amps)));
            }
        });
        return branches;
    }

    SortedMap<ComponentId, LoadEnvelope> loads(Bounds bounds) {
        SortedMap<ComponentId, LoadEnvelope> loads = new TreeMap<>();
        drops.forEach((id, worst) -> {
            OptionalDouble bound = bounds.drop(id, worst.volts);
            loads.put(
                    id,
                    new LoadEnvelope(
                            id,
                            worst.volts,
                            worst.combination,
                            bound,
                            Bounds.proves(bound, worst.volts),
                            worst.limitVolts));
        });
        return loads;
    }
}
