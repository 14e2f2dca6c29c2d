package org.ohmloom.graph;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.Component;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * Branches of wires, of their joints in splices, and of the current they carry already.
 *
 * <p>A wire end in a splice with joint resistance is a place of its own, {@code S1.W3}, before the joint of that name.
 *
 * <p>The present current of a wire flows in it from {@code from} to {@code to} for equipment that is not modelled. On a
 * feed or signal wire that equipment sits behind the {@code to} end and its return is not modelled either: a fixed
 * current goes from there straight to the negative terminal of the first source. On a return or shield the equipment
 * sits before the {@code from} end: a fixed current comes from the first source's positive terminal. It flows only
 * while that source is on, and of a mesh of wires it takes the share that the resistances give it.
 */
final class WireBranches {
    static final String FROM = "from";
    static final String TO = "to";

    private final NetworkDraft network;
    private final Harness harness;
    private final ConductorOhms ohms;
    private final MeasuredOhms measured;
    private final Set<PointId> arrivals = new HashSet<>();

    WireBranches(NetworkDraft network, Harness harness, ConductorOhms ohms, MeasuredOhms measured) {
        this.network = network;
        this.harness = harness;
        this.ohms = ohms;
        this.measured = measured;
    }

    /** Adds the branches of all wires; {@code source} is the one present currents are taken from. */
    void add(Optional<Component> source) {
        harness.splices().all().forEach(splice -> network.place(PointName.splice(splice.id())));
        for (Wire wire : harness.wires().all()) {
            network.branch(
                    wire.id().value(),
                    wire.signalClass() == SignalClass.SHIELD ? BranchKind.SHIELD : BranchKind.WIRE,
                    end(wire, wire.from(), FROM),
                    end(wire, wire.to(), TO),
                    wire.id(),
                    new Law.Resistance(ohms.of(wire)));
            source.ifPresent(component -> present(wire, component));
        }
    }

    /** The places where wires arrive: cavities, terminals, splices, ground points. */
    Set<PointId> arrivals() {
        return Set.copyOf(arrivals);
    }

    private PointName end(Wire wire, WireEnd end, String side) {
        PointName place = PointName.of(end, wire.id(), side);
        arrivals.add(place.id());
        if (end instanceof WireEnd.AtSplice at) {
            Splice splice = harness.splices().get(at.splice());
            double jointOhms = measured.jointOhms(splice.id().value(), splice.jointOhms());
            if (jointOhms > 0) {
                String joint = splice.id() + "." + wire.id() + (wire.from().equals(wire.to()) ? "." + side : "");
                PointName own = PointName.wireEnd(joint);
                network.resistance(joint, BranchKind.JOINT, own, place, splice.id(), jointOhms);
                return own;
            }
        }
        return place;
    }

    private void present(Wire wire, Component source) {
        double presentAmps = wire.presentAmps().orElse(0);
        if (presentAmps == 0) {
            return;
        }
        boolean on = network.state().sourceOn(source.id(), source.device());
        boolean goingBack =
                switch (wire.signalClass()) {
                    case RETURN, REFERENCE_RETURN, SHIELD -> true;
                    default -> false;
                };
        network.branch(
                wire.id() + ".present",
                BranchKind.PRESENT_LOAD,
                goingBack ? PointName.terminal(source.id(), Device.POSITIVE) : PointName.of(wire.to(), wire.id(), TO),
                goingBack
                        ? PointName.of(wire.from(), wire.id(), FROM)
                        : PointName.terminal(source.id(), Device.NEGATIVE),
                wire.id(),
                on ? new Law.FixedCurrent(presentAmps) : new Law.Open());
    }
}
