package org.ohmloom.solve;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;

/**
 * Which relays are pulled in and which fed outputs are on: the part of a solution that is yes or no. Each is known by
 * the branch whose voltage decides: the coil of a relay, the input of a converter or a reference supply.
 *
 * @param watched what each deciding branch decides about
 * @param active  the deciding branches that are pulled in or on; at rest none
 */
record Switching(SortedMap<BranchId, Watched> watched, SortedSet<BranchId> active) {

    /** Share of {@link DrawnPower#WAKE_VOLTS} below which an output goes off again. */
    private static final double STOP_RATIO = 0.3;

    /** A voltage so near to its threshold reaches it: 12.000 V over 12 V coils must not hang on the last digit. */
    private static final double MARGIN_RATIO = 1e-9;

    /**
     * A voltage that decides.
     *
     * @param onVolts  voltage, either sign for a coil, from which it acts, V
     * @param offVolts voltage below which it stops, V
     * @param coil     whether it is a relay coil; otherwise the input of a converter or reference supply
     */
    record Watched(double onVolts, double offVolts, boolean coil) {}

    Switching {
        watched = Collections.unmodifiableSortedMap(new TreeMap<>(watched));
        active = Collections.unmodifiableSortedSet(new TreeSet<>(active));
    }

    /** Everything at rest: relays released, outputs that need an input off. */
    static Switching atRest(Network network) {
        SortedMap<BranchId, Watched> watched = new TreeMap<>();
        for (Branch branch : network.branches().values()) {
            if (branch.law() instanceof Law.CoilOperated contact) {
                watched.put(contact.coil(), new Watched(contact.pullInVolts(), contact.dropOutVolts(), true));
            } else if (branch.law() instanceof Law.PowerOf || branch.law() instanceof Law.CurrentOf) {
                watched.put(branch.id(), new Watched(DrawnPower.WAKE_VOLTS, DrawnPower.WAKE_VOLTS * STOP_RATIO, false));
            }
        }
        return new Switching(watched, new TreeSet<>());
    }

    /** The branches of the network with the laws this switching gives them. */
    List<Branch> branches(Network network) {
        SortedMap<BranchId, BranchId> inputOf = new TreeMap<>();
        for (Branch branch : network.branches().values()) {
            if (branch.law() instanceof Law.PowerOf power) {
                inputOf.put(power.output(), branch.id());
            } else if (branch.law() instanceof Law.CurrentOf current) {
                inputOf.put(current.output(), branch.id());
            }
        }
        return network.branches().values().stream()
                .map(branch -> with(branch, law(branch, inputOf)))
                .toList();
    }

    private Law law(Branch branch, SortedMap<BranchId, BranchId> inputOf) {
        if (branch.law() instanceof Law.CoilOperated contact) {
            boolean closed = active.contains(contact.coil()) != contact.closedAtRest();
            return closed ? new Law.Resistance(contact.ohms()) : new Law.Open();
        }
        BranchId input = inputOf.get(branch.id());
        return input == null || active.contains(input) ? branch.law() : new Law.Open();
    }

    private static Branch with(Branch branch, Law law) {
        return law.equals(branch.law())
                ? branch
                : new Branch(branch.id(), branch.kind(), branch.from(), branch.to(), branch.element(), law);
    }

    /** Whether a deciding branch wants to change at a voltage V(from) - V(to). */
    boolean wantsChange(BranchId deciding, double volts) {
        Watched limits = watched.get(deciding);
        double size = limits.coil() ? Math.abs(volts) : volts;
        return active.contains(deciding)
                ? size < limits.offVolts() * (1 - MARGIN_RATIO)
                : size >= limits.onVolts() * (1 - MARGIN_RATIO);
    }

    /** This with deciding branches the other way. */
    Switching toggled(Set<BranchId> deciding) {
        SortedSet<BranchId> changed = new TreeSet<>(active);
        deciding.forEach(each -> {
            if (!changed.remove(each)) {
                changed.add(each);
            }
        });
        return new Switching(watched, changed);
    }

    /** This with some deciding branches at rest for good, nobody watching them. */
    Switching pinned(BranchId deciding) {
        SortedMap<BranchId, Watched> others = new TreeMap<>(watched);
        others.remove(deciding);
        SortedSet<BranchId> changed = new TreeSet<>(active);
        changed.remove(deciding);
        return new Switching(others, changed);
    }
}
