package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.way.Ways;

/**
 * Makes the wires of one line from a pin to all its ends. Between two pairs of connectors there is one splice where it branches, on
 * the last stretch that all branches share; a line goes through each pair once.
 */
final class LineMaking {
    private final Harness harness;
    private final Places places;
    private final FreshIds fresh;
    private final SplicePlaces splicePlaces;
    private final SignalClass signalClass;
    private final String circuit;
    private final List<Wire> wires = new ArrayList<>();
    private final List<Splice> splices = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    LineMaking(
            Harness harness,
            Places places,
            FreshIds fresh,
            SplicePlaces splicePlaces,
            SignalClass signalClass,
            String circuit) {
        this.harness = harness;
        this.places = places;
        this.fresh = fresh;
        this.splicePlaces = splicePlaces;
        this.signalClass = signalClass;
        this.circuit = circuit;
    }

    List<Wire> wires() {
        return wires;
    }

    List<Splice> splices() {
        return splices;
    }

    List<String> problems() {
        return problems;
    }

    /** Makes the wires from an end that is there to the targets. */
    void from(WireEnd root, List<LineTarget> targets) {
        from(root, places.at(root), places.assembly(root), targets);
    }

    /** Makes the wires from an end, which lies at a place and belongs to an assembly, to the targets. */
    void from(WireEnd root, Optional<BreakoutId> at, Optional<AssemblyId> assembly, List<LineTarget> targets) {
        Map<ConnectorId, List<LineTarget>> through = new LinkedHashMap<>();
        List<LineTarget> local = new ArrayList<>();
        for (LineTarget target : targets) {
            int pair = target.firstPair();
            if (pair < 0) {
                local.add(target);
            } else {
                through.computeIfAbsent(target.way().get(pair).near().orElseThrow(), id -> new ArrayList<>())
                        .add(target);
            }
        }
        WireEnd from = root;
        if (local.size() + through.size() > 1) {
            from = splice(root, at, assembly, targets);
        }
        for (LineTarget target : local) {
            boolean drain = target.signalClass() == SignalClass.SHIELD;
            double metres = target.way().stream().mapToDouble(Ways.Step::metres).sum();
            wire(
                    from,
                    target.end(),
                    target.signalClass(),
                    target.circuit(),
                    target.cable(),
                    target.assembly().or(() -> assembly),
                    drain && metres > 0 ? OptionalDouble.of(metres) : OptionalDouble.empty());
        }
        for (Map.Entry<ConnectorId, List<LineTarget>> each : through.entrySet()) {
            pair(from, assembly, each.getKey(), each.getValue());
        }
    }

    private void pair(WireEnd from, Optional<AssemblyId> assembly, ConnectorId near, List<LineTarget> targets) {
        Connector entered = harness.connectors().get(near);
        Optional<String> cavity = places.freeCavity(entered);
        if (cavity.isEmpty()) {
            problems.add("no cavity of " + near + " and its mate is free for " + circuit
                    + ": a larger pair, or one more, on the way");
            return;
        }
        Connector left = harness.mate(entered).orElseThrow();
        WireEnd in = new WireEnd.AtCavity(near, cavity.get());
        WireEnd out = new WireEnd.AtCavity(left.id(), cavity.get());
        places.take(in);
        places.take(out);
        boolean single = targets.size() == 1;
        wire(
                from,
                in,
                signalClass,
                single ? targets.get(0).circuit() : circuit,
                Optional.empty(),
                entered.assembly().or(() -> assembly),
                OptionalDouble.empty());
        List<LineTarget> beyond = targets.stream()
                .map(target -> target.after(target.firstPair() + 1))
                .toList();
        from(out, harness.breakout(left), left.assembly(), beyond);
    }

    private WireEnd splice(
            WireEnd root, Optional<BreakoutId> at, Optional<AssemblyId> assembly, List<LineTarget> targets) {
        int shared = 0;
        while (isShared(targets, shared)) {
            shared++;
        }
        Optional<Ways.Step> last = shared == 0
                ? Optional.empty()
                : Optional.of(targets.get(0).way().get(shared - 1));
        Optional<Place> place = last.map(splicePlaces::before).or(() -> at.map(Place.AtBreakout::new));
        Optional<AssemblyId> own = last.flatMap(Ways.Step::segment)
                .flatMap(segment -> harness.segments().get(segment).assembly())
                .or(() -> assembly);
        Splice made = splicePlaces.splice(circuit, place, own);
        splices.add(made);
        WireEnd joint = new WireEnd.AtSplice(made.id());
        wire(root, joint, signalClass, circuit, Optional.empty(), own, OptionalDouble.empty());
        return joint;
    }

    /** Whether all targets have the same step there, along a segment. */
    private static boolean isShared(List<LineTarget> targets, int step) {
        Ways.Step first =
                targets.get(0).way().size() > step ? targets.get(0).way().get(step) : null;
        return first != null
                && !first.isThrough()
                && targets.stream()
                        .allMatch(target -> target.way().size() > step
                                && target.way().get(step).equals(first));
    }

    private void wire(
            WireEnd from,
            WireEnd to,
            SignalClass itsClass,
            String itsCircuit,
            Optional<CableId> cable,
            Optional<AssemblyId> assembly,
            OptionalDouble lengthMetres) {
        places.take(from);
        places.take(to);
        wires.add(new Wire(
                new WireId(fresh.next("W")),
                from,
                to,
                isPower(itsClass)
                        ? Optional.empty()
                        : harness.rules().wiringRules().signalGauge(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                lengthMetres,
                itsClass,
                Optional.of(itsCircuit),
                cable,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                assembly));
    }

    /** Power wires take the size that is chosen for their current. */
    private static boolean isPower(SignalClass signalClass) {
        return signalClass == SignalClass.FEED
                || signalClass == SignalClass.RETURN
                || signalClass == SignalClass.SWITCHED_OUTPUT;
    }
}
