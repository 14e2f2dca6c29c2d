package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Sensing;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.solve.LinearNetwork;

/**
 * The network with every switch, output and relay contact closed that carries something in some combination, and nothing
 * that takes current. An open one that carries nothing changes nothing, so where each taker's current passes its own
 * controls alone this is the network of every combination.
 *
 * @param network   the network it is made of
 * @param links     its resistances, and sources that have no current limit of their own to stand at
 * @param sources   batteries, alternators and supplies that are on
 * @param carriers  switches, outputs, relay contacts and diodes that are closed for some combination
 * @param hasDiodes whether one of them is a diode
 */
record ClosedNetwork(
        Network network,
        SortedMap<BranchId, LinearNetwork.Link> links,
        List<Branch> sources,
        Set<BranchId> carriers,
        boolean hasDiodes) {
    /** What stands in for a source without resistance, ohm. */
    private static final double IDEAL_OHMS = 1e-7;

    /** Resistance of an output pin that states none, ohm; the same as the network takes. */
    private static final double OUTPUT_OHMS = 0.05;

    ClosedNetwork {
        links = Collections.unmodifiableSortedMap(new TreeMap<>(links));
        sources = List.copyOf(sources);
        carriers = Set.copyOf(carriers);
    }

    /** Closes the carriers of some takers in a network. */
    static ClosedNetwork of(Network network, Harness harness, List<Taker> takers) {
        Set<BranchId> carriers = new HashSet<>();
        takers.forEach(taker -> carriers.addAll(taker.needs().carriers()));
        SortedMap<BranchId, LinearNetwork.Link> links = new TreeMap<>();
        List<Branch> sources = new ArrayList<>();
        boolean hasDiodes = false;
        for (Branch branch : network.all()) {
            if (branch.kind() == BranchKind.SOURCE) {
                if (branch.law() instanceof Law.VoltageSource) {
                    sources.add(branch);
                }
                continue;
            }
            ohms(branch, harness, carriers)
                    .ifPresent(ohms -> links.put(
                            branch.id(),
                            new LinearNetwork.Link(branch.from(), branch.to(), ohms, emfVolts(branch.law()))));
            hasDiodes |= branch.law() instanceof Law.Threshold && carriers.contains(branch.id());
        }
        return new ClosedNetwork(network, links, sources, carriers, hasDiodes);
    }

    private static Optional<Double> ohms(Branch branch, Harness harness, Set<BranchId> carriers) {
        if (branch.law() instanceof Law.VoltageSource output) {
            return Optional.of(Math.max(output.ohms(), IDEAL_OHMS));
        }
        if (branch.kind().part() == BranchKind.Part.LOAD) {
            return NeedsSearch.isSignal(branch)
                    ? Optional.of(((Law.Resistance) branch.law()).ohms())
                    : Optional.empty();
        }
        boolean carries = carriers.contains(branch.id());
        if (branch.law() instanceof Law.Threshold diode) {
            return carries ? Optional.of(diode.ohms()) : Optional.empty();
        }
        if (branch.law() instanceof Law.CoilOperated contact) {
            return carries ? Optional.of(contact.ohms()) : Optional.empty();
        }
        if (Control.of(branch).isPresent()) {
            return carries ? Optional.of(controlOhms(branch, harness)) : Optional.empty();
        }
        return branch.law() instanceof Law.Resistance resistance ? Optional.of(resistance.ohms()) : Optional.empty();
    }

    private static double emfVolts(Law law) {
        if (law instanceof Law.Threshold diode) {
            return -diode.forwardVolts();
        }
        return law instanceof Law.VoltageSource output ? output.emfVolts() : 0;
    }

    /** Resistance of a control while it is on, also of a position of a switch that this network has not chosen. */
    private static double controlOhms(Branch branch, Harness harness) {
        if (branch.law() instanceof Law.Resistance resistance) {
            return resistance.ohms();
        }
        return branch.element()
                .filter(ComponentId.class::isInstance)
                .flatMap(id -> harness.components().find((ComponentId) id))
                .map(component -> {
                    if (component.device() instanceof Switch device) {
                        return device.contactOhms();
                    }
                    if (component.device() instanceof SolidStateOutput output) {
                        return output.onOhms();
                    }
                    return component.device() instanceof ControlUnit unit
                            ? unit.pin(Control.of(branch).orElseThrow().part())
                                    .map(Pin::onOhms)
                                    .orElseThrow()
                                    .orElse(OUTPUT_OHMS)
                            : OUTPUT_OHMS;
                })
                .orElse(OUTPUT_OHMS);
    }

    /** The link of a source on its line, giving or being charged. */
    static LinearNetwork.Link line(Branch source, boolean charged) {
        Law.VoltageSource law = (Law.VoltageSource) source.law();
        double ohms = charged ? law.chargeOhms() : law.ohms();
        return new LinearNetwork.Link(source.from(), source.to(), Math.max(ohms, IDEAL_OHMS), law.emfVolts());
    }

    /** The takers among some that a source or conductor joins at both ends here. */
    List<Taker> fed(List<Taker> takers, BooleanSupplier cancelled) {
        List<LinearNetwork.Link> all = new ArrayList<>(links.values());
        sources.forEach(source -> all.add(line(source, false)));
        LinearNetwork whole = LinearNetwork.of(network.points(), all, cancelled);
        return takers.stream()
                .filter(taker -> whole.together(taker.from(), taker.to()))
                .toList();
    }

    /** The sense point of a source, if it regulates there. */
    Optional<Sensing> sensing(Branch source) {
        return network.sensings().stream()
                .filter(each -> each.source().equals(source.id()))
                .findFirst();
    }

    /** The sources that regulate at a sense point. */
    Set<BranchId> sensed() {
        Set<BranchId> sensed = new HashSet<>();
        sources.forEach(source -> sensing(source).ifPresent(each -> sensed.add(source.id())));
        return sensed;
    }
}
