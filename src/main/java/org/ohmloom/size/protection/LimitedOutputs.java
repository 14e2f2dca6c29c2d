package org.ohmloom.size.protection;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/** The outputs with an electronic limit, and the wires that nothing feeds but through one of them. */
public final class LimitedOutputs {

    private LimitedOutputs() {}

    /** The branches of outputs that limit, with their limit. */
    static Map<Branch, ElectronicLimit> of(Harness harness, Upstream upstream) {
        Map<Branch, ElectronicLimit> limits = new LinkedHashMap<>();
        for (Branch branch : upstream.network().branches().values()) {
            if (branch.kind() == BranchKind.OUTPUT_PIN || branch.kind() == BranchKind.SOLID_STATE_OUTPUT) {
                branch.element()
                        .filter(ComponentId.class::isInstance)
                        .flatMap(id -> harness.components().find((ComponentId) id))
                        .flatMap(component -> component.driver(branch.id().value()))
                        .flatMap(Driver::limit)
                        .ifPresent(limit -> limits.put(branch, limit));
            }
        }
        return limits;
    }

    /** The smallest limit before each wire that is fed through a limiting output alone. */
    public static Map<WireId, ElectronicLimit> wires(Harness harness, Upstream upstream) {
        SortedMap<WireId, ElectronicLimit> wires = new TreeMap<>();
        of(harness, upstream).forEach((output, limit) -> {
            for (BranchId id : upstream.onlyBehind(output.id())) {
                upstream.network()
                        .branch(id)
                        .filter(branch -> branch.kind() == BranchKind.WIRE)
                        .ifPresent(branch -> wires.merge(
                                new WireId(id.value()),
                                limit,
                                (one, other) -> other.limitAmps() < one.limitAmps() ? other : one));
            }
        });
        return Collections.unmodifiableSortedMap(wires);
    }

    /** RMS current of a lasting fault, A: the limit when it never trips, limit x sqrt(trip / (trip + retry)), or 0. */
    public static double heatingAmps(ElectronicLimit limit) {
        if (limit.tripSeconds().isEmpty()) {
            return limit.limitAmps();
        }
        double trip = limit.tripSeconds().getAsDouble();
        return limit.retrySeconds().isEmpty()
                ? 0
                : limit.limitAmps()
                        * Math.sqrt(trip / (trip + limit.retrySeconds().getAsDouble()));
    }
}
