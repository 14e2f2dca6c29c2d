package org.ohmloom.size;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.bundle.WireDiameters;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.Status;
import org.ohmloom.words.Text;

/**
 * A conductor must fit the contacts at its ends. Where two wires share a contact, their pair is judged by the review and
 * nothing is asked here.
 */
final class CrimpDemand {
    private static final Citation AS_ENTERED = new Citation(
            "none", "none", "contact's crimp range as entered in this harness", "", Status.COMMON_PRACTICE);

    private final SizingFacts facts;
    private final WireDiameters diameters;
    private final Map<String, Integer> endsAt = new HashMap<>();

    CrimpDemand(SizingFacts facts) {
        this.facts = facts;
        this.diameters = new WireDiameters(facts.input().tables());
        for (Wire wire : facts.harness().wires().all()) {
            for (WireEnd end : wire.ends()) {
                if (end instanceof WireEnd.AtCavity at) {
                    endsAt.merge(at.text(), 1, Integer::sum);
                }
            }
        }
    }

    /** What the contacts at the ends of a wire ask; empty when it ends in none that is chosen. */
    Optional<Demand> of(Wire wire) {
        List<ContactPart> contacts = contacts(wire);
        if (contacts.isEmpty()) {
            return Optional.empty();
        }
        ConductorFamily family = facts.family(wire);
        Predicate<ConductorRow> fits = row -> contacts.stream().allMatch(contact -> fits(wire, contact, row));
        Text takes = Text.joined(
                "; ",
                contacts.stream()
                        .distinct()
                        .map(contact -> SizeTexts.text(
                                "crimp.takes",
                                contact.id(),
                                CrimpRange.of(contact).words()))
                        .toList());
        return Optional.of(Demand.smallest(family, fits)
                .map(row -> Demand.met(Governor.CRIMP, row, takes, AS_ENTERED, fits))
                .orElseGet(() -> Demand.unmet(Governor.CRIMP, SizeTexts.text("crimp.none-fits", takes), AS_ENTERED)));
    }

    private boolean fits(Wire wire, ContactPart contact, ConductorRow row) {
        CrimpRange range = CrimpRange.of(contact);
        return range.takesConductor(row.gauge().nominalAreaMm2())
                && diameters
                        .outsideMm(facts.insulation(wire), row)
                        .map(diameter -> range.takesInsulation(diameter.value()))
                        .orElse(true);
    }

    private List<ContactPart> contacts(Wire wire) {
        List<ContactPart> contacts = new ArrayList<>();
        for (WireEnd end : wire.ends()) {
            if (end instanceof WireEnd.AtCavity at && endsAt.get(at.text()) == 1) {
                facts.harness().contact(at).ifPresent(contacts::add);
            }
        }
        return contacts;
    }
}
