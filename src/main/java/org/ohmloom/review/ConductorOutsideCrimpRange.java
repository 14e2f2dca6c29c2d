package org.ohmloom.review;

import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * Each conductor fits the crimp of its contact, and its insulation the crimp's wings and the seal.
 * <p>The nominal area of the conductor against the contact's range; with two wires in the contact
 * {@link CavityDoubleOccupied} judges. The insulation is judged where the tables list the wire's outside diameter. A wire
 * without a size is judged with the smallest that serves, and only if that is too large already.
 */
final class ConductorOutsideCrimpRange implements Rule {

    static final RuleInfo INFO = new RuleInfo("conductor-outside-crimp-range", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (CavityWires.Occupied occupied : CavityWires.of(evidence.harness())) {
            occupied.contact(evidence.harness()).ifPresent(contact -> occupied.wires().stream()
                    .distinct()
                    .forEach(wire -> judge(evidence, occupied, contact, wire, report)));
        }
    }

    private static void judge(
            Evidence evidence,
            CavityWires.Occupied occupied,
            ContactPart contact,
            Wire wire,
            Consumer<Finding> report) {
        Optional<Gauge> gauge = wire.gauge().or(() -> evidence.rating(wire.id()).map(WireRating::gauge));
        if (gauge.isEmpty()) {
            return;
        }
        CrimpFit fit = CrimpFit.of(evidence, contact, wire, gauge.get(), occupied.isSingle());
        boolean open = wire.gauge().isEmpty();
        if (open ? fit.isTooLarge(contact) : !fit.fits()) {
            Text what = fit.wireWords(gauge.get());
            FindingDraft draft = new FindingDraft(INFO, "does-not-fit")
                    .word("wire", wire.id())
                    .word("what", open ? INFO.text("needed", what) : what)
                    .word("contact", contact.id())
                    .word("cavity", occupied.text())
                    .word("range", fit.contactWords(contact))
                    .value("areaMm2", fit.areaMm2(), Unit.SQUARE_MILLIMETRE)
                    .value("smallestMm2", contact.conductorMinMm2(), Unit.SQUARE_MILLIMETRE)
                    .value("largestMm2", contact.conductorMaxMm2(), Unit.SQUARE_MILLIMETRE)
                    .subject(wire.id())
                    .subject(occupied.connector().id());
            fit.diameterMm().ifPresent(diameter -> draft.value("diameter", diameter / 1000, Unit.METRE)
                    .value("thinnest", fit.thinnestMm() / 1000, Unit.METRE)
                    .value("thickest", fit.thickestMm() / 1000, Unit.METRE));
            report.accept(draft.build());
        }
    }
}
