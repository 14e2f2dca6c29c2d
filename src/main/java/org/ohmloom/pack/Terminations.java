package org.ohmloom.pack;

import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.tables.FabricationTables;

/** What an end of a wire gets: its contact and seal, a terminal for a stud, a place in a splice; and how far it is stripped. */
final class Terminations {
    private final Harness harness;
    private final FabricationTables tables;

    Terminations(Analysis analysis) {
        this.harness = analysis.harness();
        this.tables = analysis.evidence().tables().fabrication();
    }

    /** What the end gets, in words. */
    Cell of(WireEnd end) {
        if (end instanceof WireEnd.AtCavity) {
            Optional<ContactPart> contact = harness.contact(end);
            return contact.map(each -> Cell.text(each.part()
                                    .map(part -> part.value())
                                    .orElse(each.id().value())
                            + each.seal().map(seal -> " + " + seal.part()).orElse("")))
                    .orElseGet(() -> Cell.missing("contact " + Wording.NOT_CHOSEN));
        }
        if (end instanceof WireEnd.AtGround at) {
            GroundPoint ground = harness.grounds().get(at.ground());
            return Cell.text("ring"
                    + (ground.studMm().isPresent()
                            ? " " + JointTables.thread(ground.studMm().getAsDouble())
                            : ""));
        }
        if (end instanceof WireEnd.AtTerminal) {
            return Cell.text("terminal");
        }
        return end instanceof WireEnd.AtSplice ? Cell.text("splice") : Cell.missing("left open");
    }

    /** How far the end is stripped, mm; in words where the barrel of a terminal decides; nothing for a loose one. */
    Cell strip(WireEnd end) {
        if (end instanceof WireEnd.AtCavity) {
            return Cell.number(
                    harness.contact(end).map(ContactPart::stripLengthMm).orElseGet(() -> tables.value("strip")
                            .value()));
        }
        if (end instanceof WireEnd.AtSplice) {
            return Cell.number(tables.value("strip-splice").value());
        }
        return end instanceof WireEnd.Loose ? Cell.empty() : Cell.text("barrel");
    }
}
