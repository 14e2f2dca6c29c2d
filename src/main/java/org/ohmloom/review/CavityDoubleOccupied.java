package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.DoubleCrimp;
import org.ohmloom.model.Wire;

/**
 * One contact takes one wire, unless two are meant, fit the crimp and leave the seal whole.
 * <p>Two wires pass when the cavity says a double crimp is meant, the contact lists that pair of conductors, and the contact
 * has no single-wire seal. More than two never pass.
 */
final class CavityDoubleOccupied implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "cavity-double-occupied",
            "Several wires share one contact",
            Severity.ERROR,
            "Contact maker's crimp range as entered; common practice, no source",
            "A crimp made for one wire holds two badly, and a single-wire seal leaks around two.",
            "Join the wires in a splice, or choose a contact that allows this double crimp and declare it.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (CavityWires.Occupied occupied : CavityWires.of(evidence.harness())) {
            if (occupied.wires().size() > 1) {
                reason(evidence, occupied).ifPresent(reason -> report.accept(finding(occupied, reason)));
            }
        }
    }

    private static Optional<String> reason(Evidence evidence, CavityWires.Occupied occupied) {
        if (occupied.wires().size() > 2) {
            return Optional.of("no contact takes " + occupied.wires().size() + " wires");
        }
        if (!occupied.cavity().doubleCrimp()) {
            return Optional.of("no double crimp is declared there");
        }
        Optional<ContactPart> contact = occupied.contact(evidence.harness());
        if (contact.isEmpty()) {
            return Optional.of("no contact is chosen that could take both");
        }
        if (contact.get().seal().isPresent()) {
            return Optional.of("the seal of contact " + contact.get().id() + " takes one wire");
        }
        List<Double> areas = occupied.wires().stream()
                .map(wire -> area(evidence, wire))
                .sorted()
                .toList();
        boolean listed = contact.get().doubleCrimps().stream().anyMatch(pair -> fits(pair, areas));
        return listed
                ? Optional.empty()
                : Optional.of("contact " + contact.get().id() + " does not list these two conductors");
    }

    private static double area(Evidence evidence, Wire wire) {
        return evidence.rating(wire.id())
                .map(rating -> rating.gauge().nominalAreaMm2())
                .or(() -> wire.gauge().map(gauge -> gauge.nominalAreaMm2()))
                .orElse(0.0);
    }

    private static boolean fits(DoubleCrimp pair, List<Double> areas) {
        double small = Math.min(pair.firstMm2(), pair.secondMm2());
        double large = Math.max(pair.firstMm2(), pair.secondMm2());
        return same(areas.get(0), small) && same(areas.get(1), large);
    }

    /** AWG areas are long decimals; a listed pair may be written with two digits. */
    private static boolean same(double area, double listed) {
        return Math.abs(area - listed) <= 0.02 * listed;
    }

    private static String words(List<String> wires) {
        return switch (wires.size()) {
            case 1 -> "both ends of " + wires.get(0);
            case 2 -> wires.get(0) + " and " + wires.get(1);
            default -> Listing.of(wires, 40);
        };
    }

    private static Finding finding(CavityWires.Occupied occupied, String reason) {
        List<String> wires = occupied.wires().stream()
                .map(wire -> wire.id().value())
                .distinct()
                .toList();
        return new FindingDraft(INFO, "Cavity {cavity} holds {wires}, but {reason}.")
                .word("cavity", occupied.text())
                .word("wires", words(wires))
                .word("reason", reason)
                .subject(occupied.connector().id())
                .subjects(wires)
                .build();
    }
}
