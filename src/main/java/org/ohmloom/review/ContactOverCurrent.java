package org.ohmloom.review;

import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.ContactLimits;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/**
 * No contact carries more than its maker allows at the ambient of its connector.
 * <p>RMS current of the wires in the cavity in the worst continuous state. Cranking and motors at standstill last seconds
 * and are not judged here. Silent for a contact without an entered limit; {@link NotChecked} reports that.
 */
final class ContactOverCurrent implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "contact-over-current",
            "A contact carries more than it may",
            Severity.ERROR,
            "Contact maker's current limit as entered in this harness",
            "A contact above its limit heats, loses its spring and its plating, and its resistance climbs until it burns.",
            "Take a larger contact, or share the current over two cavities with two wires.");

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
                    .filter(contact -> !contact.limits().isEmpty())
                    .ifPresent(contact -> judge(evidence, occupied, contact, report));
        }
    }

    private static void judge(
            Evidence evidence, CavityWires.Occupied occupied, ContactPart contact, Consumer<Finding> report) {
        double worstAmps = 0;
        OperatingState worst = null;
        for (StateId id : ContinuousStates.of(evidence.harness())) {
            OperatingState state = evidence.harness().states().get(id);
            Solution solution = evidence.solutions().get(id);
            double amps = solution == null ? 0 : contactAmps(solution, occupied);
            if (amps > worstAmps) {
                worstAmps = amps;
                worst = state;
            }
        }
        double ambientCelsius = Surroundings.ambientCelsius(evidence.harness(), occupied.connector());
        double limitAmps = ContactLimits.amps(contact, ambientCelsius).orElse(Double.POSITIVE_INFINITY);
        if (worst != null && worstAmps > limitAmps) {
            report.accept(new FindingDraft(
                            INFO,
                            "Contact {contact} in {cavity} carries {current} in {state}, more than its {limit} at {ambient}.")
                    .word("contact", contact.id())
                    .word("cavity", occupied.text())
                    .word("state", StateNames.quoted(worst))
                    .amps("current", worstAmps)
                    .amps("limit", limitAmps)
                    .value("ambient", ambientCelsius, Unit.DEGREE_CELSIUS)
                    .subject(occupied.connector().id())
                    .subjects(occupied.wires().stream().map(wire -> wire.id()).toList())
                    .build());
        }
    }

    /** RMS current through the contact: of its own branch, or of the wires together where it has no resistance. */
    private static double contactAmps(Solution solution, CavityWires.Occupied occupied) {
        for (BranchFlow flow : solution.flows().values()) {
            Branch branch = flow.branch();
            if (branch.id().value().equals(occupied.text())
                    || branch.id().value().startsWith(occupied.text() + "~")) {
                return flow.rmsAmps();
            }
        }
        return occupied.wires().stream()
                .map(wire -> solution.flow(new BranchId(wire.id().value())))
                .flatMap(Optional::stream)
                .mapToDouble(BranchFlow::rmsAmps)
                .max()
                .orElse(0);
    }
}
