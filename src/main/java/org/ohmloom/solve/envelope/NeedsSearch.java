package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.solve.LinearNetwork;
import org.ohmloom.solve.Solution;

/**
 * Finds what runs something in one solved operating state: every switch, output and relay contact that carries more when it
 * draws more, and, for a relay contact, what runs the coil; for the output of a converter, what runs its input.
 */
final class NeedsSearch {
    /** Share of a draw below which a branch does not carry it. */
    static final double CARRIED_RATIO = 1e-6;

    private static final double CLOSED_OHMS = 0.01;

    private final Solution solution;
    private final LinearNetwork network;
    private final Map<BranchId, LinearNetwork.Link> links = new HashMap<>();
    private final Map<BranchId, BranchId> inputOf = new HashMap<>();
    private final Map<BranchId, Needs> known = new HashMap<>();

    /** The branches that can decide about another: what is switched, diodes and outputs that are fed. */
    private final List<Branch> deciding = new ArrayList<>();

    private final Set<BranchId> open = new HashSet<>();

    NeedsSearch(Solution solution, BooleanSupplier cancelled) {
        this.solution = solution;
        for (Branch branch : solution.network().all()) {
            link(branch).ifPresent(link -> links.put(branch.id(), link));
            if (branch.law() instanceof Law.PowerOf power) {
                inputOf.put(power.output(), branch.id());
            } else if (branch.law() instanceof Law.CurrentOf current) {
                inputOf.put(current.output(), branch.id());
            }
        }
        for (Branch branch : solution.network().all()) {
            boolean decides = Control.of(branch).isPresent()
                    || branch.law() instanceof Law.CoilOperated
                    || branch.law() instanceof Law.Threshold
                    || inputOf.containsKey(branch.id());
            if (decides && links.containsKey(branch.id())) {
                deciding.add(branch);
            }
        }
        network = LinearNetwork.of(solution.network().points(), new ArrayList<>(links.values()), cancelled);
    }

    private Optional<LinearNetwork.Link> link(Branch branch) {
        if (branch.law() instanceof Law.Open || branch.kind().part() == BranchKind.Part.LOAD && !isSignal(branch)) {
            return Optional.empty();
        }
        if (branch.law() instanceof Law.VoltageSource source) {
            return Optional.of(new LinearNetwork.Link(
                    branch.from(), branch.to(), Math.max(source.ohms(), CLOSED_OHMS), source.emfVolts()));
        }
        if (branch.law() instanceof Law.CoilOperated contact) {
            return isClosed(branch.id()) ? Optional.of(closed(branch, contact.ohms())) : Optional.empty();
        }
        if (branch.law() instanceof Law.Threshold diode) {
            return conducts(branch) ? Optional.of(closed(branch, diode.ohms())) : Optional.empty();
        }
        if (branch.law() instanceof Law.Resistance resistance) {
            return Optional.of(closed(branch, resistance.ohms()));
        }
        return branch.kind().isPassage() ? Optional.of(closed(branch, CLOSED_OHMS)) : Optional.empty();
    }

    /** Whether a diode conducts while its circuit is on; a freewheel diode, which conducts in between, does not. */
    private boolean conducts(Branch diode) {
        return solution.flow(diode.id())
                .filter(flow -> flow.dropVolts() > 0 && flow.onAmps() > CARRIED_RATIO)
                .isPresent();
    }

    /** Whether a branch is the resistance a sensor shows: part of the wiring here. */
    static boolean isSignal(Branch branch) {
        return branch.kind() == BranchKind.SENSOR && branch.law() instanceof Law.Resistance;
    }

    private static LinearNetwork.Link closed(Branch branch, double ohms) {
        return new LinearNetwork.Link(branch.from(), branch.to(), ohms, 0);
    }

    private boolean isClosed(BranchId contact) {
        return solution.flow(contact).filter(flow -> flow.ohms().isPresent()).isPresent();
    }

    /** What lets current reach a branch; empty when nothing joins its two ends. */
    Optional<Needs> of(Branch branch) {
        Needs found = known.get(branch.id());
        if (found != null) {
            return Optional.of(found);
        }
        if (!network.together(branch.from(), branch.to()) || !open.add(branch.id())) {
            return Optional.empty();
        }
        Needs needs = search(branch);
        open.remove(branch.id());
        known.put(branch.id(), needs);
        return Optional.of(needs);
    }

    private Needs search(Branch drawing) {
        LinearNetwork.Response response = network.ofDraw(drawing.from(), drawing.to());
        SortedSet<Control> controls = new TreeSet<>();
        SortedSet<BranchId> atRest = new TreeSet<>();
        SortedSet<BranchId> carriers = new TreeSet<>();
        List<BranchId> dependsOn = new ArrayList<>();
        for (Branch branch : deciding) {
            if (Math.abs(response.amps(links.get(branch.id()))) < CARRIED_RATIO) {
                continue;
            }
            Optional<Control> control = Control.of(branch);
            if (control.isPresent()) {
                controls.add(control.get());
                carriers.add(branch.id());
            } else if (branch.law() instanceof Law.CoilOperated contact) {
                carriers.add(branch.id());
                if (contact.closedAtRest()) {
                    atRest.add(contact.coil());
                } else {
                    dependsOn.add(contact.coil());
                }
            } else if (branch.law() instanceof Law.Threshold) {
                carriers.add(branch.id());
            } else if (inputOf.containsKey(branch.id())) {
                dependsOn.add(inputOf.get(branch.id()));
            }
        }
        Needs needs = new Needs(controls, atRest, carriers);
        for (BranchId other : dependsOn) {
            needs = solution.network()
                    .branch(other)
                    .flatMap(this::of)
                    .map(needs::dependingOn)
                    .orElse(needs);
        }
        return needs;
    }
}
