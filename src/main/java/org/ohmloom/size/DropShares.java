package org.ohmloom.size;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/**
 * Shares out what each load may lose among the wires on its way.
 *
 * <p>Along the way from the source to a load and back the drops of all branches add up to the load's drop. What contacts,
 * devices, chassis and the wires taken as they are lose is subtracted from the limit; the rest goes to the other wires in
 * proportion to their length, the same volts per metre for each, so that when each keeps to its share the load keeps to
 * its limit. A wire that serves several loads keeps to the smallest of its shares. Which wires share:
 *
 * <ul>
 *   <li>for a wire without a size: all wires of the way without a size;
 *   <li>for a wire with a size, while the load is within its limit: it alone, the others as they are;
 *   <li>for a wire with a size, when the load loses too much: every wire of the way that may be changed.
 * </ul>
 *
 * Wires already in the vehicle, measured ones and those without a length are never shared to, but an existing wire is
 * still told what the others leave it. The currents are those of the solution; whoever changes sizes solves again.
 */
final class DropShares {
    private final SizingInput input;
    private final Map<WireId, DropShare> tightest = new HashMap<>();

    DropShares(SizingInput input) {
        this.input = input;
        input.solutions()
                .forEach((state, solution) -> solution.loads().values().forEach(load -> share(state, solution, load)));
    }

    /** The share that asks most of a wire; empty when no load's way passes it. */
    Optional<DropShare> of(Wire wire) {
        return Optional.ofNullable(tightest.get(wire.id()));
    }

    private void share(StateId state, Solution solution, LoadVolts load) {
        List<Wire> way = wires(load);
        for (Wire wire : way) {
            double amps =
                    flow(solution, wire).map(flow -> Math.abs(flow.onAmps())).orElse(0.0);
            List<Wire> sharing = sharing(wire, way, load);
            if (amps == 0 || !sharing.contains(wire)) {
                continue;
            }
            double sharedVolts = sharing.stream()
                    .flatMap(each -> flow(solution, each).stream())
                    .mapToDouble(flow -> Math.abs(flow.onDropVolts()))
                    .sum();
            double metres = sharing.stream()
                    .mapToDouble(each -> input.routes().lengthMetres(each).orElse(0))
                    .sum();
            DropShare share = new DropShare(
                    state, load.load(), load.limitVolts(), load.onDropVolts() - sharedVolts, metres, amps);
            tightest.merge(wire.id(), share, (a, b) -> b.ohmsPerMetre() < a.ohmsPerMetre() ? b : a);
        }
    }

    private List<Wire> sharing(Wire wire, List<Wire> way, LoadVolts load) {
        if (!hasShare(wire)) {
            return List.of();
        }
        if (wire.gauge().isEmpty()) {
            return way.stream()
                    .filter(each -> isFree(each) && each.gauge().isEmpty())
                    .toList();
        }
        boolean within = load.onDropVolts() <= load.limitVolts();
        return within ? List.of(wire) : way.stream().filter(this::isFree).toList();
    }

    /** Whether the size of a wire may be changed and what it loses follows from it. */
    private boolean isFree(Wire wire) {
        return hasShare(wire) && !wire.existing();
    }

    private boolean hasShare(Wire wire) {
        return wire.measuredOhms().isEmpty()
                && input.routes().lengthMetres(wire).isPresent();
    }

    private List<Wire> wires(LoadVolts load) {
        Harness harness = input.harness();
        Set<WireId> ids = new LinkedHashSet<>();
        Stream.concat(load.feedPath().stream(), load.returnPath().stream())
                .map(branch -> new WireId(branch.value()))
                .filter(harness.wires()::has)
                .forEach(ids::add);
        List<Wire> wires = new ArrayList<>();
        ids.forEach(id -> wires.add(harness.wires().get(id)));
        return wires;
    }

    private static Optional<BranchFlow> flow(Solution solution, Wire wire) {
        return solution.flow(new BranchId(wire.id().value()));
    }
}
