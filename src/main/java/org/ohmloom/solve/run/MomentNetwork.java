package org.ohmloom.solve.run;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * The network of a solved state at its worst instant: every output that switches at a duty is on, relays and converters
 * stand as the solution has them, and an inductive load behind such an output carries the current its mean voltage gives
 * it, its resistance over the duty as the feed sees it.
 */
final class MomentNetwork {

    /** Voltage along the input of a converter from which its output is taken as on, V. */
    private static final double AWAKE_VOLTS = 1;

    private static final double LEAST_DUTY = 1e-3;

    private final Solution solution;
    private final Harness harness;
    private final Set<BranchId> asleep = new HashSet<>();

    private MomentNetwork(Solution solution, Harness harness) {
        this.solution = solution;
        this.harness = harness;
        for (Branch branch : solution.network().branches().values()) {
            output(branch.law())
                    .filter(output -> flow(branch).onDropVolts() < AWAKE_VOLTS)
                    .ifPresent(asleep::add);
        }
    }

    /** The network of a solved state at its worst instant. */
    static Network of(Solution solution, Harness harness) {
        MomentNetwork moment = new MomentNetwork(solution, harness);
        Map<BranchId, Law> laws = new HashMap<>();
        solution.network().branches().forEach((id, branch) -> laws.put(id, moment.law(branch)));
        return solution.network().withLaws(new TreeMap<>(laws));
    }

    private static Optional<BranchId> output(Law input) {
        if (input instanceof Law.PowerOf power) {
            return Optional.of(power.output());
        }
        return input instanceof Law.CurrentOf current ? Optional.of(current.output()) : Optional.empty();
    }

    private BranchFlow flow(Branch branch) {
        return solution.flow(branch.id()).orElseThrow();
    }

    private Law law(Branch branch) {
        Law law = branch.law();
        if (law instanceof Law.CoilOperated contact) {
            return isClosed(solution, branch) ? new Law.Resistance(contact.ohms()) : new Law.Open();
        }
        if (asleep.contains(branch.id())) {
            return new Law.Open();
        }
        if (branch.kind() == BranchKind.LOAD
                && !(law instanceof Law.Open)
                && draw(branch).orElse(null) instanceof Draw.Inductive inductive) {
            return new Law.Resistance(inductive.resistanceOhms() / dutyFraction(solution, branch));
        }
        if (law instanceof Law.Cycled cycled) {
            return cycled.law();
        }
        return law instanceof Law.SwitchedResistance switched ? new Law.Resistance(switched.onOhms()) : law;
    }

    private Optional<Draw> draw(Branch branch) {
        return branch.element()
                .filter(ComponentId.class::isInstance)
                .flatMap(id -> harness.components().find((ComponentId) id))
                .filter(component -> component.device() instanceof Load)
                .map(component -> ((Load) component.device()).draw());
    }

    /** Whether the solution has a relay contact closed: only then it publishes a resistance. */
    static boolean isClosed(Solution solution, Branch contact) {
        return solution.flow(contact.id())
                .filter(flow -> flow.ohms().isPresent())
                .isPresent();
    }

    /** Share of the time a load is fed: its mean voltage over its on-state voltage. */
    static double dutyFraction(Solution solution, Branch load) {
        BranchFlow flow = solution.flow(load.id()).orElseThrow();
        double share = flow.onDropVolts() > 0 ? flow.dropVolts() / flow.onDropVolts() : 1;
        return Math.min(1, Math.max(LEAST_DUTY, share));
    }
}
