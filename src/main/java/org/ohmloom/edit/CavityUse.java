package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * What sits in a cavity, and what cannot stay so. Told from the model alone, so that it is there while a wire is still being
 * moved; the rules of the review judge the rest.
 *
 * @param cavity  the cavity
 * @param ends    ends of wires in it, in the order of the wires
 * @param clashes what cannot stay so
 */
public record CavityUse(Cavity cavity, List<EndOfWire> ends, Set<Clash> clashes) {

    /** What cannot stay so in a cavity. */
    public enum Clash {
        /** More than one wire, and no double crimp is meant there. */
        SHARED,
        /** A wire where a plug sits. */
        PLUGGED,
        /** A conductor larger than the crimp of its contact takes. */
        TOO_LARGE,
        /** A conductor smaller than the crimp of its contact takes. */
        TOO_SMALL,
        /** Both ends of one wire. */
        BOTH_ENDS
    }

    public CavityUse {
        ends = List.copyOf(ends);
        clashes = clashes.isEmpty() ? Set.of() : Set.copyOf(clashes);
    }

    /** The cavities of a connector in their order. */
    public static List<CavityUse> of(Harness harness, Connector connector) {
        List<CavityUse> uses = new ArrayList<>();
        for (Cavity cavity : connector.cavities()) {
            uses.add(of(harness, connector, cavity));
        }
        return uses;
    }

    private static CavityUse of(Harness harness, Connector connector, Cavity cavity) {
        WireEnd place = new WireEnd.AtCavity(connector.id(), cavity.name());
        List<EndOfWire> ends = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            if (wire.from().equals(place)) {
                ends.add(new EndOfWire(wire.id(), true));
            }
            if (wire.to().equals(place)) {
                ends.add(new EndOfWire(wire.id(), false));
            }
        }
        return new CavityUse(cavity, ends, clashes(harness, cavity, ends));
    }

    private static Set<Clash> clashes(Harness harness, Cavity cavity, List<EndOfWire> ends) {
        Set<Clash> clashes = EnumSet.noneOf(Clash.class);
        long wires = ends.stream().map(EndOfWire::wire).distinct().count();
        if (wires < ends.size()) {
            clashes.add(Clash.BOTH_ENDS);
        }
        if (wires > (cavity.doubleCrimp() ? 2 : 1)) {
            clashes.add(Clash.SHARED);
        }
        if (wires > 0 && cavity.plug().isPresent()) {
            clashes.add(Clash.PLUGGED);
        }
        if (wires == 1) {
            cavity.contact()
                    .flatMap(harness.contacts()::find)
                    .ifPresent(contact -> clashes.addAll(
                            size(contact, harness.wires().get(ends.get(0).wire()))));
        }
        return clashes;
    }

    /** How the size of a wire fits the crimp of a contact. Crimp ranges are given to two digits: a hundredth does not count. */
    static Set<Clash> size(ContactPart contact, Wire wire) {
        double areaMm2 = wire.gauge().map(gauge -> gauge.nominalAreaMm2()).orElse(0.0);
        if (areaMm2 == 0) {
            return Set.of();
        }
        if (areaMm2 > contact.conductorMaxMm2() * 1.01) {
            return Set.of(Clash.TOO_LARGE);
        }
        return areaMm2 < contact.conductorMinMm2() * 0.99 ? Set.of(Clash.TOO_SMALL) : Set.of();
    }

    /** Whether neither a wire nor a plug sits in it. */
    public boolean isFree() {
        return ends.isEmpty() && cavity.plug().isEmpty();
    }

    /** The use of the cavity of a name. */
    static Optional<CavityUse> named(List<CavityUse> uses, String name) {
        return uses.stream().filter(use -> use.cavity().name().equals(name)).findFirst();
    }
}
