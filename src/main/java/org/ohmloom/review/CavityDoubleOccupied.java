package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.DoubleCrimp;
import org.ohmloom.model.Wire;
import org.ohmloom.words.Text;

/**
 * One contact takes one wire, unless two are meant, fit the crimp and leave the seal whole.
 * <p>Two wires pass when the cavity says a double crimp is meant, the contact lists that pair of conductors, and the contact
 * has no single-wire seal. More than two never pass.
 */
final class CavityDoubleOccupied implements Rule {

    private static final RuleInfo INFO = new RuleInfo("cavity-double-occupied", Severity.ERROR);

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

    private static Optional<Text> reason(Evidence evidence, CavityWires.Occupied occupied) {
        if (occupied.wires().size() > 2) {
            return Optional.of(INFO.text("too-many", occupied.wires().size()));
        }
        if (!occupied.cavity().doubleCrimp()) {
            return Optional.of(INFO.text("not-declared"));
        }
        Optional<ContactPart> contact = occupied.contact(evidence.harness());
        if (contact.isEmpty()) {
            return Optional.of(INFO.text("no-contact"));
        }
        if (contact.get().seal().isPresent()) {
            return Optional.of(INFO.text("sealed", contact.get().id()));
        }
        List<Double> areas = occupied.wires().stream()
                .map(wire -> area(evidence, wire))
                .sorted()
                .toList();
        boolean listed = contact.get().doubleCrimps().stream().anyMatch(pair -> fits(pair, areas));
        return listed
                ? Optional.empty()
                : Optional.of(INFO.text("not-listed", contact.get().id()));
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

    private static Text words(List<String> wires) {
        return switch (wires.size()) {
            case 1 -> INFO.text("both-ends", wires.get(0));
            case 2 -> INFO.text("two", wires.get(0), wires.get(1));
            default -> Listing.of(wires, 40);
        };
    }

    private static Finding finding(CavityWires.Occupied occupied, Text reason) {
        List<String> wires = occupied.wires().stream()
                .map(wire -> wire.id().value())
                .distinct()
                .toList();
        return new FindingDraft(INFO, "holds")
                .word("cavity", occupied.text())
                .word("wires", words(wires))
                .word("reason", reason)
                .subject(occupied.connector().id())
                .subjects(wires)
                .build();
    }
}
