package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.WarmNetwork;

/**
 * One solved state in which branches are opened and closed again, each time solved from the voltages before.
 *
 * <p>Every output with a duty counts as on, which is the worst moment. Sources keep the voltages they were solved to. Relays
 * follow their coils: a contact whose coil falls below its drop-out voltage opens, one whose coil reaches its pull-in voltage closes,
 * for up to {@link #MOST_ROUNDS} rounds. A reference supply or converter whose input has lost its supply gives nothing.
 */
final class OpenedNetwork {

    private static final int MOST_ROUNDS = 4;

    /** Supply below which a reference supply or converter gives nothing, V. */
    private static final double DEAD_VOLTS = 1;

    private final Map<BranchId, Law> laws = new TreeMap<>();
    private final List<Branch> contacts = new ArrayList<>();
    private final List<Branch> inputs = new ArrayList<>();
    private final List<BranchId> all;
    private final WarmNetwork warm;

    OpenedNetwork(Solution solution, BooleanSupplier cancelled) {
        Map<BranchId, Law> changed = new TreeMap<>();
        for (BranchFlow flow : solution.flows().values()) {
            Branch branch = flow.branch();
            Law law = momentLaw(branch.law());
            if (branch.law() instanceof Law.CoilOperated contact) {
                contacts.add(branch);
                // open ones stay in the network as a resistance first, so that they can close later
                law = new Law.Resistance(contact.ohms());
            } else if (law instanceof Law.PowerOf || law instanceof Law.CurrentOf) {
                inputs.add(branch);
            }
            changed.put(branch.id(), law);
        }
        laws.putAll(changed);
        warm = new WarmNetwork(solution.network().withLaws(changed), cancelled);
        for (Branch contact : contacts) {
            boolean closed = solution.flow(contact.id())
                    .filter(flow -> flow.ohms().isPresent())
                    .isPresent();
            if (!closed) {
                set(contact.id(), new Law.Open());
            }
        }
        all = List.copyOf(changed.keySet());
    }

    private static Law momentLaw(Law law) {
        if (law instanceof Law.SwitchedResistance output) {
            return new Law.Resistance(output.onOhms());
        }
        return law instanceof Law.Cycled cycled ? cycled.law() : law;
    }

    private void set(BranchId branch, Law law) {
        laws.put(branch, law);
        warm.set(branch, law);
    }

    /** Currents of all branches with nothing opened, A; empty when there is no solution. */
    Optional<Map<BranchId, Double>> whole() {
        return with(List.of());
    }

    /** Currents of all branches with these opened, A; empty when there is no solution. Closes them again. */
    Optional<Map<BranchId, Double>> with(List<BranchId> opened) {
        Map<BranchId, Law> before = new HashMap<>(laws);
        opened.forEach(branch -> set(branch, new Law.Open()));
        boolean solved = warm.solve().isEmpty();
        for (int round = 0; solved && round < MOST_ROUNDS && follow(opened); round++) {
            solved = warm.solve().isEmpty();
        }
        Map<BranchId, Double> amps = new HashMap<>();
        if (solved) {
            all.forEach(branch -> amps.put(branch, laws.get(branch) instanceof Law.Open ? 0.0 : warm.amps(branch)));
        }
        before.forEach((branch, law) -> {
            if (!law.equals(laws.get(branch))) {
                set(branch, law);
            }
        });
        return solved ? Optional.of(amps) : Optional.empty();
    }

    /** Lets relays and fed outputs follow; whether anything changed. */
    private boolean follow(List<BranchId> opened) {
        boolean changed = false;
        for (Branch branch : contacts) {
            if (!opened.contains(branch.id())) {
                Law.CoilOperated contact = (Law.CoilOperated) branch.law();
                double coilVolts = Math.abs(warm.volts(contact.coil()));
                boolean closed = !(laws.get(branch.id()) instanceof Law.Open);
                boolean pulledIn = closed != contact.closedAtRest();
                boolean now = pulledIn ? coilVolts >= contact.dropOutVolts() : coilVolts >= contact.pullInVolts();
                if (now != pulledIn) {
                    boolean close = now != contact.closedAtRest();
                    set(branch.id(), close ? new Law.Resistance(contact.ohms()) : new Law.Open());
                    changed = true;
                }
            }
        }
        for (Branch input : inputs) {
            BranchId output =
                    input.law() instanceof Law.PowerOf power ? power.output() : ((Law.CurrentOf) input.law()).output();
            if (warm.volts(input.id()) < DEAD_VOLTS
                    && !(laws.getOrDefault(output, new Law.Open()) instanceof Law.Open)) {
                set(output, new Law.Open());
                changed = true;
            }
        }
        return changed;
    }
}
