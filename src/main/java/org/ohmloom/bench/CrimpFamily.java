package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.PullForce;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * Crimps made by one set-up: one terminal on one size of conductor.
 *
 * @param terminal what is crimped: the id of the contact, or where a ring terminal goes
 * @param contact  the contact, if it is one
 * @param gauge    size of the conductor; of two in one crimp the smaller, which is the one that lets go first
 * @param crimps   count of them in the harness
 * @param force    least pull-out force; empty when the set of requirements does not list the size
 */
public record CrimpFamily(
        String terminal, Optional<ContactPart> contact, Gauge gauge, int crimps, Optional<PullForce> force) {

    private static final String AWG_SET = "UL 486A";
    private static final String METRIC_SET = "IEC 60352-2";
    private static final String RING = "terminal on a stud or screw";

    /** The set of requirements for sizes of that system. */
    public static String set(GaugeSystem system) {
        return system == GaugeSystem.AWG ? AWG_SET : METRIC_SET;
    }

    /** The families of a harness's crimps, by terminal and size. */
    public static List<CrimpFamily> of(BenchInput input) {
        Harness harness = input.harness();
        Map<String, Gauge> smallest = new TreeMap<>();
        Map<String, String> terminals = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            if (wire.existing()) {
                continue;
            }
            Gauge gauge = input.rating(wire).gauge();
            for (WireEnd end : wire.ends()) {
                terminal(harness, end).ifPresent(terminal -> {
                    String crimp = end instanceof WireEnd.AtCavity ? end.text() : end.text() + " " + wire.id();
                    terminals.put(crimp, terminal);
                    smallest.merge(crimp, gauge, CrimpFamily::smaller);
                });
            }
        }
        Map<String, List<String>> byFamily = new TreeMap<>(NaturalOrder.INSTANCE);
        smallest.forEach((crimp, gauge) -> byFamily.computeIfAbsent(
                        terminals.get(crimp) + "|" + gauge.text(), key -> new ArrayList<>())
                .add(crimp));
        List<CrimpFamily> families = new ArrayList<>();
        byFamily.forEach((key, crimps) -> {
            String terminal = terminals.get(crimps.get(0));
            Gauge gauge = smallest.get(crimps.get(0));
            families.add(
                    new CrimpFamily(terminal, contact(harness, terminal), gauge, crimps.size(), force(input, gauge)));
        });
        return families;
    }

    private static Gauge smaller(Gauge one, Gauge other) {
        return other.nominalAreaMm2() < one.nominalAreaMm2() ? other : one;
    }

    /** The terminal at a wire's end; none at a splice or a loose end, or where no contact is chosen. */
    private static Optional<String> terminal(Harness harness, WireEnd end) {
        if (end instanceof WireEnd.AtCavity) {
            return harness.contact(end).map(contact -> contact.id().value());
        }
        return end instanceof WireEnd.AtTerminal || end instanceof WireEnd.AtGround
                ? Optional.of(RING)
                : Optional.empty();
    }

    private static Optional<ContactPart> contact(Harness harness, String terminal) {
        return harness.contacts().all().stream()
                .filter(contact -> contact.id().value().equals(terminal))
                .findFirst();
    }

    private static Optional<PullForce> force(BenchInput input, Gauge gauge) {
        String set = set(gauge.system());
        return input.tables().pullForces().stream()
                .filter(force -> force.set().equals(set) && force.gauge().equals(gauge))
                .findFirst();
    }
}
