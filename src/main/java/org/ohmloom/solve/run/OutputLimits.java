package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.words.Text;

/**
 * Outputs with an electronic limit: a resistance while the current stays within the limit, the limit as a current where more
 * would flow. Which of the two it is, is found by trying: an output that gives its limit goes back when less than its own
 * resistance would be left along it.
 */
final class OutputLimits {

    private static final int MOST_ROUNDS = 12;
    private static final double SLACK_RATIO = 1e-9;

    private final List<Limited> outputs = new ArrayList<>();

    /** One output. */
    static final class Limited {
        private final ComponentId component;
        private final BranchId branch;
        private final ElectronicLimit limit;
        private final Law.Resistance law;
        private boolean limiting;

        Limited(ComponentId component, BranchId branch, ElectronicLimit limit, Law.Resistance law) {
            this.component = component;
            this.branch = branch;
            this.limit = limit;
            this.law = law;
        }

        ComponentId component() {
            return component;
        }

        BranchId branch() {
            return branch;
        }

        ElectronicLimit limit() {
            return limit;
        }

        private boolean turn(WarmNetwork network) {
            boolean before = limiting;
            limiting = limiting
                    ? network.volts(branch) > limit.limitAmps() * law.ohms() * (1 - SLACK_RATIO)
                    : network.amps(branch) > limit.limitAmps() * (1 + SLACK_RATIO);
            if (limiting != before) {
                network.set(branch, limiting ? new Law.FixedCurrent(limit.limitAmps()) : law);
            }
            return limiting != before;
        }
    }

    OutputLimits(Harness harness, Network moment) {
        for (Component component : harness.components().all()) {
            if (component.device() instanceof SolidStateOutput output) {
                add(component.id(), component.id().value(), output.driver(), moment);
            } else if (component.device() instanceof ControlUnit unit) {
                for (Pin pin : unit.pins()) {
                    add(component.id(), component.id() + "." + pin.name(), pin.driver(), moment);
                }
            }
        }
    }

    private void add(ComponentId component, String id, Optional<Driver> driver, Network moment) {
        Optional<ElectronicLimit> limit = driver.flatMap(Driver::limit);
        Optional<Branch> branch = moment.branch(new BranchId(id));
        if (limit.isPresent() && branch.isPresent() && branch.get().law() instanceof Law.Resistance law) {
            outputs.add(new Limited(component, branch.get().id(), limit.get(), law));
        }
    }

    /** The outputs that are on. */
    List<Limited> outputs() {
        return outputs;
    }

    /** Solves with every output within its limit; why there is no solution, if there is none. */
    Optional<Text> solve(WarmNetwork network) {
        Optional<Text> failure = network.solve();
        for (int round = 0; round < MOST_ROUNDS && failure.isEmpty(); round++) {
            boolean turned = false;
            for (Limited output : outputs) {
                turned |= output.turn(network);
            }
            if (!turned) {
                return failure;
            }
            failure = network.solve();
        }
        return failure;
    }
}
