package org.ohmloom.size;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.graph.BranchId;
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
 * devices, chassis and the wires taken as they are lose is subtracted from the limit. The rest goes to the other wires by
 * length times the root of their current, so that when each keeps to its share the load keeps to its limit; of all
 * ways to share, this one takes the least copper (the copper is the sum of length x area, the drop that of length x
 * current / area). Wires of one current lose the same per metre. A wire that serves several loads keeps to the smallest
 * of its shares. Which wires share:
 *
 * <ul>
 *   <li>for a wire without a size: all wires of the way without a size;
 *   <li>for a wire with a size, while the load is within its limit: it alone, the others as they are;
 *   <li>for a wire with a size, when the load loses too much: every wire of the way that may be changed.
 * </ul>
 *
 * Wires already in the vehicle, locked or measured ones and those without a length are never shared to, but an existing wire is
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
        if (!LoadWay.isJudged(input.harness(), load)) {
            return;
        }
        List<Wire> way = LoadWay.wires(input.harness(), solution, load);
        for (Wire wire : way) {
            double amps = amps(solution, wire);
            List<Wire> sharing = sharing(wire, way, load);
            if (amps == 0 || !sharing.contains(wire)) {
                continue;
            }
            double sharedVolts = 0;
            double metres = 0;
            double weight = 0;
            for (Wire each : sharing) {
                double length = input.routes().lengthMetres(each).orElse(0);
                sharedVolts += flow(solution, each)
                        .map(flow -> Math.abs(flow.onDropVolts()))
                        .orElse(0.0);
                metres += length;
                weight += length * Math.sqrt(amps(solution, each) / amps);
            }
            DropShare share = new DropShare(
                    state,
                    load.load(),
                    load.limitVolts(),
                    load.onDropVolts() - sharedVolts,
                    metres,
                    weight / metres,
                    amps);
            tightest.merge(wire.id(), share, (a, b) -> b.ohmsPerMetre() < a.ohmsPerMetre() ? b : a);
        }
    }

    private static double amps(Solution solution, Wire wire) {
        return flow(solution, wire).map(flow -> Math.abs(flow.onAmps())).orElse(0.0);
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
        return hasShare(wire) && SizeFreedom.mayChange(wire);
    }

    private boolean hasShare(Wire wire) {
        return wire.measuredOhms().isEmpty()
                && input.routes().lengthMetres(wire).isPresent();
    }

    private static Optional<BranchFlow> flow(Solution solution, Wire wire) {
        return solution.flow(new BranchId(wire.id().value()));
    }
}
