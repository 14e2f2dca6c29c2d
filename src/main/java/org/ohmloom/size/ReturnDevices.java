package org.ohmloom.size;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/**
 * The protective device that limits a return: when every load that returns through a wire is fed through one and the
 * same device, an overload that the device lets through for good passes the return as well, so the return must bear it
 * like the feed. A return of loads behind several devices is judged by its current alone; both are common practice.
 */
final class ReturnDevices {
    private final SizingInput input;
    private final Map<BranchId, SortedSet<ComponentId>> byBranch = new HashMap<>();

    ReturnDevices(SizingInput input) {
        this.input = input;
        for (Solution solution : input.solutions().values()) {
            for (LoadVolts load : solution.loads().values()) {
                smallest(solution, load.feedPath()).ifPresent(device -> load.returnPath()
                        .forEach(branch -> byBranch.computeIfAbsent(branch, id -> new TreeSet<>())
                                .add(device)));
            }
        }
    }

    /** The one device that limits a return; none when there are several or the wire is no load's return. */
    List<ComponentId> of(WireId wire) {
        SortedSet<ComponentId> devices = byBranch.getOrDefault(new BranchId(wire.value()), new TreeSet<>());
        return devices.size() == 1 ? List.copyOf(devices) : List.of();
    }

    private Optional<ComponentId> smallest(Solution solution, List<BranchId> feedPath) {
        return feedPath.stream()
                .flatMap(branch -> solution.flow(branch).stream())
                .map(flow -> flow.branch())
                .filter(branch -> branch.kind() == BranchKind.FUSE || branch.kind() == BranchKind.BREAKER)
                .flatMap(branch -> component(branch).stream())
                .min(Comparator.comparingDouble(this::ratingAmps));
    }

    private static Optional<ComponentId> component(Branch branch) {
        return branch.element().filter(ComponentId.class::isInstance).map(ComponentId.class::cast);
    }

    private double ratingAmps(ComponentId id) {
        return input.harness().components().get(id).device() instanceof ProtectiveDevice device
                ? device.ratingAmps()
                : Double.POSITIVE_INFINITY;
    }
}
