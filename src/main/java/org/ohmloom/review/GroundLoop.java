package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Solution;

/**
 * The return network has no cycle that a signal return, a shield or a case belongs to.
 * <p>A warning when a member of the cycle is there for signals only (reference return, signal, data bus, shield, or a
 * path inside a control unit), with the largest current in it; a note when only power returns and chassis form it, as two
 * straps on one engine or two ground wires of one unit do.
 */
final class GroundLoop implements Rule {

    /** Current below which a signal member's share of the loop is not told, A. */
    private static final double SHOWN_AMPS = 0.001;

    private static final RuleInfo INFO = new RuleInfo(
            "ground-loop",
            "A cycle in the return network",
            Severity.WARNING,
            "Kirchhoff's laws; common practice, no source",
            "Load current divides over both ways round; the share in a signal return or a shield shifts every reading,"
                    + " and a changing magnetic field drives a current of its own. A note where only power returns form it.",
            "Ground at one point: open one side of the cycle, or give the signal return a way of its own.");

    private static final Set<SignalClass> SIGNALS = Set.of(
            SignalClass.REFERENCE_RETURN,
            SignalClass.ANALOGUE_SIGNAL,
            SignalClass.PULSE_SIGNAL,
            SignalClass.DATA_BUS,
            SignalClass.SHIELD);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (ReturnLoop loop : evidence.loops()) {
            List<Branch> members = loop.members().stream()
                    .flatMap(id -> evidence.drawn().branch(id).stream())
                    .toList();
            report.accept(finding(evidence, members));
        }
    }

    private static Finding finding(Evidence evidence, List<Branch> members) {
        List<Branch> signals =
                members.stream().filter(member -> isSignal(evidence, member)).toList();
        List<String> elements = members.stream()
                .flatMap(branch -> branch.element().stream())
                .map(ElementId::value)
                .distinct()
                .toList();
        if (signals.isEmpty()) {
            String what = isSideBySide(members)
                    ? "{members}: two returns side by side; they share the current."
                    : "Loop of power returns: {members}.";
            return new FindingDraft(INFO, what)
                    .word("members", Listing.of(elements, 100))
                    .severity(Severity.NOTE)
                    .subjects(elements)
                    .build();
        }
        List<Branch> wires = signals.stream()
                .filter(member -> wire(evidence, member).isPresent())
                .toList();
        Optional<Share> share = largest(evidence, wires.isEmpty() ? signals : wires);
        FindingDraft draft = new FindingDraft(
                        INFO,
                        "Ground loop through {signal}: {members}"
                                + (share.isPresent() ? "; {current} flows in it in {state}." : "."))
                .word(
                        "signal",
                        words(
                                evidence,
                                share.map(Share::member).orElse(wires.isEmpty() ? signals.get(0) : wires.get(0))))
                .word("members", Listing.of(elements, 70))
                .subjects(elements);
        share.ifPresent(found -> draft.amps("current", found.amps()).word("state", StateNames.quoted(found.state())));
        return draft.build();
    }

    /** The largest current in a member of a loop that is there for signals. */
    private record Share(Branch member, OperatingState state, double amps) {}

    private static Optional<Share> largest(Evidence evidence, List<Branch> signals) {
        Share largest = null;
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            for (Branch member : solution == null ? List.<Branch>of() : signals) {
                double amps = solution.flow(member.id())
                        .map(flow -> Math.abs(flow.onAmps()))
                        .orElse(0.0);
                if (amps >= SHOWN_AMPS && (largest == null || amps > largest.amps())) {
                    largest = new Share(member, state, amps);
                }
            }
        }
        return Optional.ofNullable(largest);
    }

    private static String words(Evidence evidence, Branch member) {
        String id = member.element().map(ElementId::value).orElse(member.id().value());
        return wire(evidence, member)
                .map(wire -> switch (wire.signalClass()) {
                    case SHIELD -> "shield " + id;
                    case REFERENCE_RETURN -> "signal return " + id;
                    default -> "signal wire " + id;
                })
                .orElse("the inside of " + id);
    }

    /** Signal wires, shields, and the inside of control units; the common return of a converter carries power. */
    private static boolean isSignal(Evidence evidence, Branch member) {
        if (member.kind() == BranchKind.INTERNAL) {
            return member.element()
                    .filter(ComponentId.class::isInstance)
                    .map(id -> evidence.harness().components().get((ComponentId) id))
                    .filter(component -> component.device() instanceof ControlUnit)
                    .isPresent();
        }
        return wire(evidence, member)
                .map(Wire::signalClass)
                .filter(SIGNALS::contains)
                .isPresent();
    }

    private static Optional<Wire> wire(Evidence evidence, Branch member) {
        return member.element()
                .filter(WireId.class::isInstance)
                .flatMap(id -> evidence.harness().wires().find((WireId) id));
    }

    /** Two wires between the same two places, with nothing else but their contacts and joints. */
    private static boolean isSideBySide(List<Branch> members) {
        long wires = members.stream()
                .filter(member -> member.kind() == BranchKind.WIRE)
                .count();
        return wires == 2
                && members.stream()
                        .filter(member -> member.kind() != BranchKind.WIRE)
                        .allMatch(member -> member.kind() == BranchKind.CONTACT || member.kind() == BranchKind.JOINT);
    }
}
