package org.ohmloom.size;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/**
 * Chooses the smallest conductor of its family for each wire: by ampacity, by the drop its loads may lose, by the
 * protective device upstream, by the mechanical minimum.
 *
 * <p>It rests on solved currents, so after sizes changed the network is solved again and the choice repeated until no
 * size changes (see {@link ProvisionalSizes}); the last solution is the check. Ampacity counts the states that last,
 * voltage drop all states. Shields are not chosen.
 */
public final class ConductorChooser {
    private final SizingInput input;
    private final SizingFacts facts;
    private final DropShares shares;
    private final DeviceAllowance allowance;

    /** A chooser on one set of solutions. */
    public ConductorChooser(SizingInput input) {
        this.input = input;
        this.facts = new SizingFacts(input);
        this.shares = new DropShares(input);
        this.allowance = DeviceAllowance.of(
                input.tables(), input.basis(), input.harness().rules().nominalVolts());
    }

    /** The choice for every wire but shields, whether it has a size already or not. */
    public SortedMap<WireId, ConductorChoice> chooseAll() {
        SortedMap<WireId, ConductorChoice> choices = new TreeMap<>();
        for (Wire wire : input.harness().wires().all()) {
            if (wire.signalClass() != SignalClass.SHIELD) {
                choices.put(wire.id(), choose(wire));
            }
        }
        return Collections.unmodifiableSortedMap(choices);
    }

    /** The choice for one wire. */
    public ConductorChoice choose(Wire wire) {
        ConductorFamily family = facts.family(wire);
        List<Demand> demands = List.of(
                AmpacityDemand.of(facts, wire),
                DropDemand.of(facts, shares, wire),
                ProtectionDemand.of(facts, allowance, wire),
                MechanicalDemand.of(input.harness(), input.tables(), input.basis(), family));
        Optional<Gauge> gauge = Demand.smallest(family, row -> demands.stream()
                        .allMatch(demand -> demand.fits().test(row)))
                .map(ConductorRow::gauge);
        List<Requirement> requirements =
                demands.stream().map(Demand::requirement).toList();
        return new ConductorChoice(wire.id(), gauge, governing(requirements), requirements);
    }

    /** The requirement no size meets, otherwise the one that asks for most; the first of equals. */
    private static Requirement governing(List<Requirement> requirements) {
        return requirements.stream()
                .reduce((first, next) -> asks(next) > asks(first) ? next : first)
                .orElseThrow();
    }

    private static double asks(Requirement requirement) {
        return requirement.smallest().isPresent() ? requirement.areaMm2() : Double.POSITIVE_INFINITY;
    }
}
