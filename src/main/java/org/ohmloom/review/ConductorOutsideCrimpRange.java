package org.ohmloom.review;

import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Formats;

/**
 * Each conductor fits the crimp of its contact, and its insulation the crimp's wings and the seal.
 * <p>The nominal area of the conductor against the contact's range; with two wires in the contact
 * {@link CavityDoubleOccupied} judges. The insulation is judged where the tables list the wire's outside diameter.
 */
final class ConductorOutsideCrimpRange implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "conductor-outside-crimp-range",
            "A conductor does not fit its contact",
            Severity.ERROR,
            "Contact maker's crimp range as entered in this harness",
            "Too thin a conductor pulls out and heats; too thick a one does not fit, or loses strands.",
            "Take a contact for this conductor, or change the conductor.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (CavityWires.Occupied occupied : CavityWires.of(evidence.harness())) {
            occupied.cavity()
                    .contact()
                    .flatMap(id -> evidence.harness().contacts().find(id))
                    .ifPresent(contact -> occupied.wires().stream()
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
        if (wire.gauge().isEmpty()) {
            return;
        }
        double areaMm2 = wire.gauge().get().nominalAreaMm2();
        boolean alone = occupied.wires().size() == 1;
        if (alone && outside(areaMm2, contact.conductorMinMm2(), contact.conductorMaxMm2())) {
            report.accept(draft(
                            occupied,
                            contact,
                            wire,
                            "{wire} ({gauge}, {area}) does not fit contact {contact} in {cavity}: its crimp takes {range}.")
                    .word("gauge", wire.gauge().get().text())
                    .word("area", Formats.squareMillimetres(areaMm2))
                    .word("range", range(contact.conductorMinMm2(), contact.conductorMaxMm2(), "mm2"))
                    .build());
        }
        OptionalDouble diameter = OutsideDiameter.millimetres(evidence, wire);
        if (diameter.isPresent()) {
            judgeInsulation(occupied, contact, wire, diameter.getAsDouble(), report);
        }
    }

    private static void judgeInsulation(
            CavityWires.Occupied occupied,
            ContactPart contact,
            Wire wire,
            double diameterMm,
            Consumer<Finding> report) {
        double low = contact.seal()
                .map(seal -> Math.max(seal.insulationMinMm(), contact.insulationMinMm()))
                .orElse(contact.insulationMinMm());
        double high = contact.seal()
                .map(seal -> Math.min(seal.insulationMaxMm(), contact.insulationMaxMm()))
                .orElse(contact.insulationMaxMm());
        if (outside(diameterMm, low, high)) {
            report.accept(draft(
                            occupied,
                            contact,
                            wire,
                            "{wire} is {diameter} over its insulation; contact {contact} with its seal in {cavity} takes {range}.")
                    .word("diameter", Formats.millimetres(diameterMm))
                    .word("range", range(low, high, "mm"))
                    .build());
        }
    }

    private static FindingDraft draft(CavityWires.Occupied occupied, ContactPart contact, Wire wire, String template) {
        return new FindingDraft(INFO, template)
                .word("wire", wire.id())
                .word("contact", contact.id())
                .word("cavity", occupied.text())
                .subject(wire.id())
                .subject(occupied.connector().id());
    }

    private static boolean outside(double value, double low, double high) {
        double slack = 1e-6;
        return value < low * (1 - slack) || value > high * (1 + slack);
    }

    private static String range(double low, double high, String unit) {
        return Formats.number(low) + " to " + Formats.number(high) + " " + unit;
    }
}
