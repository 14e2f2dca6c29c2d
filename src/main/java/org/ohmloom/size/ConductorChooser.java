package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.protection.DeviceAllowance;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/**
 * Chooses the smallest conductor of its family for each wire: by ampacity, by the drop its loads may lose, by the
 * protective device upstream, at its rating, in a short circuit and in a slow overload, and by the mechanical minimum.
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
    private final CrimpDemand crimp;

    /** A chooser on one set of solutions. */
    public ConductorChooser(SizingInput input) {
        this.input = input;
        this.facts = new SizingFacts(input);
        this.shares = new DropShares(input);
        this.allowance = DeviceAllowance.of(
                input.tables(), input.basis(), input.harness().rules().nominalVolts());
        this.crimp = new CrimpDemand(facts);
    }

    SizingFacts facts() {
        return facts;
    }

    /** The choice for every wire but shields, whether it has a size already or not. */
    public SortedMap<WireId, ConductorChoice> chooseAll() {
        SortedMap<WireId, ConductorChoice> choices = new TreeMap<>();
        for (Wire wire : input.harness().wires().all()) {
            if (wire.signalClass() != SignalClass.SHIELD) {
                choices.put(wire.id(), choose(wire));
            }
        }
        return Collections.unmodifiableSortedMap(new CircuitSizes(facts).level(choices));
    }

    /** The choice for one wire by itself. */
    public ConductorChoice choose(Wire wire) {
        List<Demand> demands = demands(wire, DropDemand.of(facts, shares, wire));
        return choice(wire, demands, smallest(facts.family(wire), demands));
    }

    /** The choice for one wire whose size was chosen together with others by a drop demand of its own. */
    ConductorChoice chosen(Wire wire, Demand drop, Gauge gauge) {
        return choice(wire, demands(wire, drop), Optional.of(gauge));
    }

    /** The sizes a wire may have but for the drop of its loads, thinnest first; those its contacts take, if there are any. */
    List<ConductorRow> allowed(Wire wire, boolean inContacts) {
        ConductorFamily family = facts.family(wire);
        List<Demand> demands = demands(wire, Demand.none(Governor.VOLTAGE_DROP, family, ""));
        return inContacts ? serving(family, demands) : withoutContacts(family, demands);
    }

    private List<Demand> demands(Wire wire, Demand drop) {
        input.poll().run();
        ConductorFamily family = facts.family(wire);
        Demand protection = ProtectionDemand.of(facts, allowance, wire);
        List<Demand> demands = new ArrayList<>(List.of(
                AmpacityDemand.of(facts, wire),
                drop,
                protection,
                OpeningDemand.of(facts, wire),
                SlowOverloadDemand.of(facts, wire, protection.requirement()),
                MechanicalDemand.of(input.harness(), input.tables(), input.basis(), family)));
        crimp.of(wire).ifPresent(demands::add);
        return demands;
    }

    private static ConductorChoice choice(Wire wire, List<Demand> demands, Optional<Gauge> gauge) {
        List<Requirement> requirements =
                demands.stream().map(Demand::requirement).toList();
        return new ConductorChoice(wire.id(), gauge, governing(requirements, gauge), requirements);
    }

    private static Optional<Gauge> smallest(ConductorFamily family, List<Demand> demands) {
        return first(family, demands)
                .or(() -> first(family, without(demands, Governor.SLOW_OVERLOAD)))
                .or(() -> first(family, without(demands, Governor.CRIMP)))
                .map(ConductorRow::gauge);
    }

    /** The first of {@link #fitting}; thicker ones are not tried. */
    private static Optional<ConductorRow> first(ConductorFamily family, List<Demand> demands) {
        return family.rows().stream().filter(row -> fits(demands, row)).findFirst();
    }

    private static boolean fits(List<Demand> demands, ConductorRow row) {
        return demands.stream().allMatch(demand -> demand.fits().test(row));
    }

    /**
     * The sizes that meet all demands. Where the contacts stand against slow overload alone, those that meet the others: the
     * contact holds and the review warns of the device. Where the contacts stand against more, those that meet all but them:
     * a contact can be exchanged, and the review says so.
     */
    private static List<ConductorRow> serving(ConductorFamily family, List<Demand> demands) {
        List<ConductorRow> all = fitting(family, demands);
        List<ConductorRow> held = all.isEmpty() ? fitting(family, without(demands, Governor.SLOW_OVERLOAD)) : all;
        return held.isEmpty() ? withoutContacts(family, demands) : held;
    }

    private static List<ConductorRow> withoutContacts(ConductorFamily family, List<Demand> demands) {
        return fitting(family, without(demands, Governor.CRIMP));
    }

    private static List<Demand> without(List<Demand> demands, Governor governor) {
        return demands.stream()
                .filter(demand -> demand.requirement().governor() != governor)
                .toList();
    }

    private static List<ConductorRow> fitting(ConductorFamily family, List<Demand> demands) {
        return family.rows().stream().filter(row -> fits(demands, row)).toList();
    }

    /** The requirement no size meets, otherwise the one that asks for most; the first of equals. */
    private static Requirement governing(List<Requirement> requirements, Optional<Gauge> gauge) {
        return requirements.stream()
                .filter(each -> gauge.isEmpty() || each.smallest().isPresent())
                .reduce((first, next) -> asks(next) > asks(first) ? next : first)
                .orElseThrow();
    }

    private static double asks(Requirement requirement) {
        return requirement.smallest().isPresent() ? requirement.areaMm2() : Double.POSITIVE_INFINITY;
    }
}
