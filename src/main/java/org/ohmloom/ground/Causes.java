package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.SwitchedLoads.SwitchedLoad;
import org.ohmloom.model.ElementId;
import org.ohmloom.solve.Solution;

/**
 * Who makes the current of a branch.
 *
 * <p>The element the branch belongs to: a load, a sensor, a control unit for its own draw and its reference supplies, a
 * converter, a source, the wire whose present current it is. The current of an output that switches, of its freewheel diode
 * and its clamp is made by the load behind the output; of several loads there, by each in the ratio of their mean currents.
 */
public final class Causes {

    /**
     * One who makes a part of a current.
     *
     * @param element       the cause
     * @param shareFraction its part; those of one branch sum to 1
     */
    public record Cause(ElementId element, double shareFraction) {}

    private static final List<String> BESIDE = List.of("~freewheel", ".freewheel", "~clamp", ".clamp");

    private final Solution solution;
    private final Map<BranchId, List<ElementId>> behind = new HashMap<>();

    private Causes(Solution solution) {
        this.solution = solution;
    }

    /**
     * The causes in one solution.
     *
     * @param switched what each output switches
     * @param solution the solution
     */
    public static Causes of(List<SwitchedLoad> switched, Solution solution) {
        Causes causes = new Causes(solution);
        switched.forEach(each -> causes.behind
                .computeIfAbsent(each.output(), output -> new ArrayList<>())
                .add(each.load()));
        return causes;
    }

    /** Who makes the current of a branch; empty for one that belongs to nothing. */
    public List<Cause> of(Branch branch) {
        List<ElementId> loads = behind.getOrDefault(output(branch), List.of());
        if (loads.size() == 1) {
            return List.of(new Cause(loads.get(0), 1));
        }
        double sum = loads.stream().mapToDouble(this::amps).sum();
        if (sum > 0) {
            return loads.stream().map(load -> new Cause(load, amps(load) / sum)).toList();
        }
        return branch.element().map(element -> List.of(new Cause(element, 1))).orElse(List.of());
    }

    private double amps(ElementId load) {
        return solution.flow(new BranchId(load.value()))
                .map(flow -> Math.abs(flow.amps()))
                .orElse(0.0);
    }

    /** The output a branch is or lies beside. */
    private static BranchId output(Branch branch) {
        String id = branch.id().value();
        if (branch.kind() == BranchKind.FREEWHEEL_DIODE || branch.kind() == BranchKind.CLAMP) {
            for (String beside : BESIDE) {
                if (id.endsWith(beside)) {
                    return new BranchId(id.substring(0, id.length() - beside.length()));
                }
            }
        }
        return branch.id();
    }
}
