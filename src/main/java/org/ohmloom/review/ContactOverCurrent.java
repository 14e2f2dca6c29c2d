package org.ohmloom.review;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.heat.ContactLimits;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/**
 * No contact carries more than its maker allows at the ambient of its connector.
 * <p>RMS current of the wires in the cavity in the worst continuous state. Cranking and motors at standstill last seconds
 * and are not judged here. Silent for a contact without an entered limit; {@link NotChecked} reports that.
 */
final class ContactOverCurrent implements Rule {

    private static final RuleInfo INFO = new RuleInfo("contact-over-current", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        SortedSet<StateId> lasting = ContinuousStates.of(evidence.harness());
        Map<String, BranchId> contacts = contactBranches(evidence);
        for (CavityWires.Occupied occupied : CavityWires.of(evidence.harness())) {
            occupied.contact(evidence.harness())
                    .filter(contact -> !contact.limits().isEmpty())
                    .ifPresent(contact -> judge(evidence, lasting, contacts, occupied, contact, report));
        }
    }

    /** The branch of the contact in each cavity; both cavities of an in-line pair share one. */
    private static Map<String, BranchId> contactBranches(Evidence evidence) {
        Map<String, BranchId> contacts = new HashMap<>();
        for (Branch branch : evidence.drawn().branches().values()) {
            if (branch.kind() == BranchKind.CONTACT) {
                for (String cavity : branch.id().value().split("~")) {
                    contacts.put(cavity, branch.id());
                }
            }
        }
        return contacts;
    }

    private static void judge(
            Evidence evidence,
            SortedSet<StateId> lasting,
            Map<String, BranchId> contacts,
            CavityWires.Occupied occupied,
            ContactPart contact,
            Consumer<Finding> report) {
        double worstAmps = 0;
        OperatingState worst = null;
        for (StateId id : lasting) {
            Solution solution = evidence.solutions().get(id);
            double amps = solution == null ? 0 : contactAmps(solution, contacts, occupied);
            if (amps > worstAmps) {
                worstAmps = amps;
                worst = evidence.harness().states().get(id);
            }
        }
        double ambientCelsius = evidence.harness().ambientCelsius(occupied.connector());
        double limitAmps = ContactLimits.amps(contact, ambientCelsius).orElse(Double.POSITIVE_INFINITY);
        if (worst != null && Limits.exceeds(worstAmps, limitAmps)) {
            report.accept(new FindingDraft(INFO, "carries")
                    .word("contact", contact.id())
                    .word("cavity", occupied.text())
                    .word("state", StateNames.quoted(worst))
                    .beyond("current", worstAmps, "limit", limitAmps, Unit.AMP)
                    .value("ambient", ambientCelsius, Unit.DEGREE_CELSIUS)
                    .subject(occupied.connector().id())
                    .subjects(occupied.wires().stream().map(Wire::id).toList())
                    .build());
        }
    }

    /**
     * RMS current through the contact: of its own branch; where it has no resistance and so no branch, of its wire. Of two
     * wires there the on-state sum of what they bring, which is never less.
     */
    private static double contactAmps(
            Solution solution, Map<String, BranchId> contacts, CavityWires.Occupied occupied) {
        Optional<BranchFlow> own =
                Optional.ofNullable(contacts.get(occupied.text())).flatMap(solution::flow);
        if (own.isPresent()) {
            return own.get().rmsAmps();
        }
        if (occupied.isSingle()) {
            return flow(solution, occupied.wires().get(0))
                    .map(BranchFlow::rmsAmps)
                    .orElse(0.0);
        }
        double amps = 0;
        for (Wire wire : occupied.wires()) {
            boolean leaves = wire.from().text().equals(occupied.text());
            double onAmps = flow(solution, wire).map(BranchFlow::onAmps).orElse(0.0);
            amps += leaves ? -onAmps : onAmps;
        }
        return Math.abs(amps);
    }

    private static Optional<BranchFlow> flow(Solution solution, Wire wire) {
        return solution.flow(new BranchId(wire.id().value()));
    }
}
