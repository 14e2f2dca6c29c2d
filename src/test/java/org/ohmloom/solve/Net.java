package org.ohmloom.solve;

import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Pulse;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/** Builds small networks for the tests, branch by branch, and solves them. */
final class Net {

    private final SortedMap<BranchId, Branch> branches = new TreeMap<>();
    private final SortedSet<PointId> points = new TreeSet<>();
    private Optional<PointId> datum = Optional.empty();

    /** A point of its own, without a branch. */
    Net point(String id) {
        points.add(new PointId(id));
        return this;
    }

    /** Any branch; its element is the part of the id before the first dot. */
    Net branch(String id, BranchKind kind, String from, String to, Law law) {
        PointId start = new PointId(from);
        PointId end = new PointId(to);
        points.add(start);
        points.add(end);
        Optional<ComponentId> element = Optional.of(new ComponentId(id.split("\\.")[0]));
        branches.put(new BranchId(id), new Branch(new BranchId(id), kind, start, end, element.map(each -> each), law));
        return this;
    }

    /** A source without current limits; the first one gives the datum. */
    Net battery(String id, String negative, String positive, double emfVolts, double ohms) {
        datum = datum.or(() -> Optional.of(new PointId(negative)));
        return branch(id, BranchKind.SOURCE, negative, positive, Law.VoltageSource.battery(emfVolts, ohms));
    }

    /** A source that gives 0 to a limit; the first one gives the datum. */
    Net regulated(String id, String negative, String positive, double setVolts, double ohms, double limitAmps) {
        datum = datum.or(() -> Optional.of(new PointId(negative)));
        return branch(
                id, BranchKind.SOURCE, negative, positive, Law.VoltageSource.regulated(setVolts, ohms, limitAmps));
    }

    /** A wire. */
    Net wire(String id, String from, String to, double ohms) {
        return branch(id, BranchKind.WIRE, from, to, new Law.Resistance(ohms));
    }

    /** A load of constant resistance. */
    Net heater(String id, String from, String to, double ohms) {
        return branch(id, BranchKind.LOAD, from, to, new Law.Resistance(ohms));
    }

    /** A load of constant current. */
    Net current(String id, String from, String to, double amps) {
        return branch(id, BranchKind.LOAD, from, to, new Law.ConstantCurrent(amps));
    }

    /** A load of constant power. */
    Net power(String id, String from, String to, double watts) {
        return branch(id, BranchKind.LOAD, from, to, new Law.ConstantPower(watts));
    }

    /** A filament lamp with the exponent 0.55. */
    Net lamp(String id, String from, String to, double ratedAmps, double ratedVolts) {
        return branch(id, BranchKind.LOAD, from, to, new Law.PowerLaw(ratedAmps, ratedVolts, 0.55));
    }

    /** A diode. */
    Net diode(String id, String from, String to, double forwardVolts, double ohms) {
        return branch(id, BranchKind.DIODE, from, to, new Law.Threshold(forwardVolts, ohms));
    }

    /** An output that switches at a duty of a clock all of these share, 1 kHz, its on-time at the start of the period. */
    Net output(String id, String from, String to, double onOhms, double dutyFraction) {
        return output(id, from, to, onOhms, new Pulse("clock", 1000, 0, dutyFraction));
    }

    /** An output that switches when the pulse says so. */
    Net output(String id, String from, String to, double onOhms, Pulse pulse) {
        return branch(id, BranchKind.SOLID_STATE_OUTPUT, from, to, new Law.SwitchedResistance(onOhms, pulse));
    }

    /** An open switch. */
    Net open(String id, String from, String to) {
        return branch(id, BranchKind.SWITCH, from, to, new Law.Open());
    }

    /** A relay coil. */
    Net coil(String id, String from, String to, double ohms) {
        return branch(id, BranchKind.RELAY_COIL, from, to, new Law.Resistance(ohms));
    }

    /** A make contact that pulls in at 8 V and drops out below 3 V, 1 mohm. */
    Net make(String id, String coil, String from, String to) {
        return contact(id, coil, from, to, false);
    }

    /** A break contact of the same relay. */
    Net breaks(String id, String coil, String from, String to) {
        return contact(id, coil, from, to, true);
    }

    private Net contact(String id, String coil, String from, String to, boolean closedAtRest) {
        return branch(
                id,
                BranchKind.RELAY_CONTACT,
                from,
                to,
                new Law.CoilOperated(new BranchId(coil), 8, 3, 0.001, closedAtRest));
    }

    /** The network. */
    Network network() {
        return new Network(new StateId("run"), points, branches, datum);
    }

    /** Its solution. */
    Solved solve() {
        return new Solved(NetworkSolver.solve(network(), () -> false));
    }
}
