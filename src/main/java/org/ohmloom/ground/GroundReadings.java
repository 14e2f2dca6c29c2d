package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.ground.DividedState.Directed;
import org.ohmloom.ground.GroundReading.CurrentShare;
import org.ohmloom.ground.GroundReading.JointReading;
import org.ohmloom.model.Component;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.solve.BranchFlow;

/**
 * Reads off every ground point what lies on its stud and what passes its joint.
 *
 * <p>The current of the joint is that of its branch. A joint without resistance is none; there it is the sum of what the wires and
 * cases on the stud bring. A case bolted on without resistance brings what its component carries at that terminal, and what
 * the wires on that terminal bring.
 */
final class GroundReadings {

    private final Harness harness;
    private final Network drawn;
    private final SortedMap<StateId, DividedState> states;

    private GroundReadings(Harness harness, Network drawn, SortedMap<StateId, DividedState> states) {
        this.harness = harness;
        this.drawn = drawn;
        this.states = states;
    }

    /** The readings of all ground points. */
    static List<GroundReading> of(Harness harness, Network drawn, SortedMap<StateId, DividedState> states) {
        GroundReadings readings = new GroundReadings(harness, drawn, states);
        return harness.grounds().all().stream().map(readings::read).toList();
    }

    private GroundReading read(GroundPoint ground) {
        List<Directed> currents = currents(ground.id());
        SortedMap<StateId, JointReading> read = new TreeMap<>();
        Optional<StateId> worst = Optional.empty();
        for (StateId id : states.keySet()) {
            JointReading reading = joint(ground, currents, states.get(id));
            read.put(id, reading);
            double most = worst.map(read::get).map(JointReading::onAmps).orElse(0.0);
            if (Math.abs(reading.onAmps()) > Math.abs(most)) {
                worst = Optional.of(id);
            }
        }
        List<CurrentShare> returning =
                worst.map(id -> states.get(id).shares(currents)).orElse(List.of());
        return new GroundReading(
                ground.id(), stacked(harness, ground.id()), ground.studCount(), read, worst, returning);
    }

    /** What lies on a stud: wires, cases, straps. */
    static List<ElementId> stacked(Harness harness, GroundPointId ground) {
        List<ElementId> stacked = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            wire.ends().stream().filter(new WireEnd.AtGround(ground)::equals).forEach(end -> stacked.add(wire.id()));
        }
        for (Component component : harness.components().all()) {
            component
                    .caseGround()
                    .filter(bolt -> bolt.ground().equals(ground))
                    .ifPresent(bolt -> stacked.add(component.id()));
        }
        for (Strap strap : harness.straps().all()) {
            if (strap.from().equals(ground) || strap.to().equals(ground)) {
                stacked.add(strap.id());
            }
        }
        return stacked;
    }

    private JointReading joint(GroundPoint ground, List<Directed> currents, DividedState state) {
        double amps = 0;
        double onAmps = 0;
        for (Directed current : currents) {
            double sign = current.forward() ? 1 : -1;
            amps += sign * state.amps(current.branch());
            onAmps += sign * state.onAmps(current.branch());
        }
        double jointVolts = joint(ground.id())
                .flatMap(branch -> state.solution().flow(branch.id()))
                .map(BranchFlow::dropVolts)
                .orElse(0.0);
        double offsetVolts = drawn.index()
                .ground(ground.id())
                .map(point -> state.solution().volts(point).orElse(0))
                .orElse(0.0);
        return new JointReading(amps, onAmps, jointVolts, offsetVolts);
    }

    private Optional<Branch> joint(GroundPointId ground) {
        return drawn.branch(new BranchId(ground + ".joint"));
    }

    /** The currents that together are that of the joint, from the stack into the body. */
    private List<Directed> currents(GroundPointId ground) {
        Optional<Branch> joint = joint(ground);
        if (joint.isPresent()) {
            return List.of(new Directed(joint.get(), true));
        }
        List<Directed> currents = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            arriving(currents, wire, new WireEnd.AtGround(ground));
        }
        for (Component component : harness.components().all()) {
            component
                    .caseGround()
                    .filter(bolt -> bolt.ground().equals(ground))
                    .ifPresent(bolt -> bolted(currents, component, bolt.terminal(), ground));
        }
        return currents;
    }

    private void arriving(List<Directed> currents, Wire wire, WireEnd end) {
        Optional<Branch> branch = drawn.branch(wire.id());
        if (branch.isPresent() && wire.to().equals(end) != wire.from().equals(end)) {
            currents.add(new Directed(branch.get(), wire.to().equals(end)));
        }
    }

    private void bolted(List<Directed> currents, Component component, String terminal, GroundPointId ground) {
        Optional<Branch> bolt = drawn.branch(new BranchId(component.id() + "." + terminal + "@" + ground));
        if (bolt.isPresent()) {
            currents.add(new Directed(bolt.get(), true));
            return;
        }
        PointId stud = drawn.index().ground(ground).orElseThrow();
        for (Branch branch : drawn.of(component.id())) {
            if (branch.from().equals(stud) != branch.to().equals(stud)) {
                currents.add(new Directed(branch, branch.to().equals(stud)));
            }
        }
        for (Wire wire : harness.wires().all()) {
            arriving(currents, wire, new WireEnd.AtTerminal(component.id(), terminal));
        }
        for (Branch branch : drawn.branches().values()) {
            if (branch.kind() == BranchKind.CONTACT
                    && isOn(branch, component, terminal)
                    && branch.from().equals(stud) != branch.to().equals(stud)) {
                currents.add(new Directed(branch, branch.to().equals(stud)));
            }
        }
    }

    private boolean isOn(Branch contact, Component component, String terminal) {
        return harness.connectors().all().stream()
                .filter(connector ->
                        connector.component().filter(component.id()::equals).isPresent())
                .anyMatch(connector -> connector.cavities().stream()
                        .filter(cavity ->
                                cavity.terminal().filter(terminal::equals).isPresent())
                        .anyMatch(cavity -> contact.id().value().equals(connector.id() + "." + cavity.name())));
    }
}
