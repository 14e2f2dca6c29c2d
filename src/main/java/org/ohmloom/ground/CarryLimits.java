package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ContactLimits;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/** What conductors, contacts and pins of control units may carry, as far as it is known. */
public final class CarryLimits {

    /**
     * A limit.
     *
     * @param branch branch whose current it limits
     * @param member who is damaged beyond it
     * @param amps   most current, A
     * @param source what it is and where it comes from
     */
    public record Limit(BranchId branch, ElementId member, double amps, String source) {}

    private final Harness harness;
    private final Network network;
    private final List<Limit> limits = new ArrayList<>();
    private final Map<String, BranchId> contacts = new HashMap<>();

    private CarryLimits(Harness harness, Network network) {
        this.harness = harness;
        this.network = network;
    }

    /** All limits: ampacities of wires, limits of contacts at the ambient of their connector, limits of pins. */
    public static List<Limit> of(Harness harness, Network network, Map<WireId, Ampacity> ampacities) {
        CarryLimits found = new CarryLimits(harness, network);
        ampacities.forEach((wire, ampacity) -> found.add(
                new BranchId(wire.value()),
                wire,
                ampacity.limitAmps(),
                "ampacity, " + ampacity.base().citation().text()));
        for (Branch branch : network.branches().values()) {
            if (branch.kind() == BranchKind.CONTACT) {
                for (String cavity : branch.id().value().split("~")) {
                    found.contacts.put(cavity, branch.id());
                }
            }
        }
        harness.connectors().all().forEach(found::contacts);
        harness.components().all().forEach(found::pins);
        return Collections.unmodifiableList(found.limits);
    }

    private void add(BranchId branch, ElementId member, double amps, String source) {
        if (network.branch(branch).isPresent()) {
            limits.add(new Limit(branch, member, amps, source));
        }
    }

    private void contacts(Connector connector) {
        for (Cavity cavity : connector.cavities()) {
            String place = connector.id() + "." + cavity.name();
            BranchId branch = contacts.get(place);
            if (branch != null) {
                cavity.contact()
                        .flatMap(harness.contacts()::find)
                        .map(contact -> ContactLimits.amps(contact, harness.ambientCelsius(connector)))
                        .ifPresent(limit -> limit.ifPresent(amps -> add(
                                branch, connector.id(), amps, "contact in " + place + ", as entered in this harness")));
            }
        }
    }

    private void pins(Component component) {
        if (component.device() instanceof ControlUnit unit) {
            for (Pin pin : unit.pins()) {
                pin.limitAmps().ifPresent(amps -> outside(component.id(), pin)
                        .forEach(branch -> add(
                                branch,
                                component.id(),
                                amps,
                                "pin " + pin.name() + " of " + component.id() + ", as entered in this harness")));
            }
        }
    }

    /** The contacts of a pin; where they have no resistance, and so no branch, its wires. */
    private List<BranchId> outside(ComponentId unit, Pin pin) {
        List<BranchId> branches = new ArrayList<>();
        List<WireEnd> places = new ArrayList<>(List.of(new WireEnd.AtTerminal(unit, pin.name())));
        for (Connector connector : harness.connectors().all()) {
            for (Cavity cavity : connector.cavities()) {
                if (connector.component().equals(Optional.of(unit))
                        && cavity.terminal().equals(Optional.of(pin.name()))) {
                    BranchId own = contacts.get(connector.id() + "." + cavity.name());
                    if (own != null) {
                        branches.add(own);
                    } else {
                        places.add(new WireEnd.AtCavity(connector.id(), cavity.name()));
                    }
                }
            }
        }
        for (Wire wire : harness.wires().all()) {
            if (wire.ends().stream().anyMatch(places::contains)) {
                branches.add(new BranchId(wire.id().value()));
            }
        }
        return branches;
    }
}
