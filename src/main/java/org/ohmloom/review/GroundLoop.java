package org.ohmloom.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * The return network has no cycle that a signal return, a shield or a case belongs to.
 * <p>A warning when a member of the cycle is there for signals only (reference return, signal, data bus, shield, or a
 * path inside a control unit); a note when only power returns and chassis form it, as two straps on one engine do.
 */
final class GroundLoop implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "ground-loop",
            "A cycle in the return network",
            Severity.WARNING,
            "Kirchhoff's laws; common practice, no source",
            "Load current divides over both ways round; the share in a signal return or a shield shifts every reading,"
                    + " and a changing magnetic field drives a current of its own.",
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
            report.accept(finding(evidence.harness(), evidence.drawn(), loop));
        }
    }

    private static Finding finding(Harness harness, Network network, ReturnLoop loop) {
        boolean signal = loop.members().stream().anyMatch(member -> isSignal(harness, network, member));
        List<String> elements = elements(network, loop);
        return new FindingDraft(
                        INFO,
                        signal
                                ? "Ground loop through a signal return, shield or case: {members}."
                                : "Ground loop of power returns: {members}.")
                .word("members", shortened(elements))
                .severity(signal ? Severity.WARNING : Severity.NOTE)
                .subjects(elements)
                .build();
    }

    private static boolean isSignal(Harness harness, Network network, BranchId member) {
        Branch branch = network.branches().get(member);
        if (branch == null) {
            return false;
        }
        if (branch.kind() == BranchKind.INTERNAL) {
            return true;
        }
        return branch.element()
                .filter(WireId.class::isInstance)
                .flatMap(id -> harness.wires().find((WireId) id))
                .map(Wire::signalClass)
                .filter(SIGNALS::contains)
                .isPresent();
    }

    private static List<String> elements(Network network, ReturnLoop loop) {
        List<String> elements = new ArrayList<>();
        for (BranchId member : loop.members()) {
            Branch branch = network.branches().get(member);
            if (branch != null) {
                branch.element()
                        .map(id -> id.value())
                        .filter(id -> !elements.contains(id))
                        .ifPresent(elements::add);
            }
        }
        return elements;
    }

    private static String shortened(List<String> elements) {
        int shown = 8;
        if (elements.size() <= shown) {
            return String.join(", ", elements);
        }
        return String.join(", ", elements.subList(0, shown)) + " and " + (elements.size() - shown) + " more";
    }
}
