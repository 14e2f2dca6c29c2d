package org.ohmloom.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.NaturalOrder;

/**
 * Every load has a way back to a source.
 * <p>From each load's negative terminal over wires, contacts, chassis and devices, the latter taken as closed, to the
 * negative terminal of any source. Silent when the harness has no source; {@link NotChecked} says so.
 */
final class NoReturnPath implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "no-return-path",
            "A load has no return to a source",
            Severity.ERROR,
            "Kirchhoff's current law",
            "Current that cannot come back does not flow: the load does nothing, or finds its way back through a"
                    + " sensor, a shield or a bearing.",
            "Give the load a return wire or a ground point that leads to the source's negative terminal.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Collection<Branch> branches = evidence.drawn().all();
        Set<PointId> home = reachableFromNegatives(branches);
        if (home.isEmpty()) {
            return;
        }
        Set<String> stranded = new TreeSet<>(NaturalOrder.INSTANCE);
        for (Branch branch : branches) {
            if (needsReturn(branch.kind()) && !home.contains(branch.to())) {
                branch.element().ifPresent(element -> stranded.add(element.value()));
            }
        }
        for (String component : stranded) {
            report.accept(new FindingDraft(
                            INFO, "{name} ({component}) has no way back from its negative terminal to any source.")
                    .word("name", name(evidence, component))
                    .word("component", component)
                    .subject(component)
                    .build());
        }
    }

    private static String name(Evidence evidence, String component) {
        return evidence.harness().components().all().stream()
                .filter(candidate -> candidate.id().value().equals(component))
                .map(candidate -> candidate.name())
                .findFirst()
                .orElse(component);
    }

    private static boolean needsReturn(BranchKind kind) {
        return kind == BranchKind.LOAD
                || kind == BranchKind.RELAY_COIL
                || kind == BranchKind.CONTROL_UNIT
                || kind == BranchKind.SENSOR;
    }

    private static Set<PointId> reachableFromNegatives(Collection<Branch> branches) {
        Map<PointId, List<PointId>> neighbours = new HashMap<>();
        Deque<PointId> open = new ArrayDeque<>();
        Set<PointId> reached = new HashSet<>();
        for (Branch branch : branches) {
            if (branch.kind().part() == BranchKind.Part.SOURCE && reached.add(branch.from())) {
                open.add(branch.from());
            }
            if (branch.kind().isPassage()) {
                neighbours
                        .computeIfAbsent(branch.from(), key -> new ArrayList<>())
                        .add(branch.to());
                neighbours
                        .computeIfAbsent(branch.to(), key -> new ArrayList<>())
                        .add(branch.from());
            }
        }
        while (!open.isEmpty()) {
            for (PointId next : neighbours.getOrDefault(open.remove(), List.of())) {
                if (reached.add(next)) {
                    open.add(next);
                }
            }
        }
        return reached;
    }
}
