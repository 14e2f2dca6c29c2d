package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.ground.LoopMembers;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.LoopReading.FieldPickUp;
import org.ohmloom.ground.LoopReading.Stray;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Pin;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.words.Text;

/**
 * The return network has no cycle that disturbs signals.
 * <p>A warning when a member of the cycle is there for signals only (reference return, signal, data bus, shield, case, or a
 * path inside a control unit) and load current above {@link #STRAY_AMPS} flows in it in some state, or a stated field induces more
 * than the share of the allowed error that coupling may take; also when no state tells what flows. A note when it does neither,
 * or when only power returns and chassis form it, as two straps on one engine or two ground wires of one unit do. Power
 * returns side by side that a person marked as intended are none; with a signal member they are a note with the reason.
 */
final class GroundLoop implements Rule {

    /** Load current in a signal member above which it is a warning, A. Common practice, no source: sensors take milliamperes. */
    static final double STRAY_AMPS = 0.01;

    /** Load current below which it is not told, A. */
    private static final double SHOWN_AMPS = 0.001;

    /** Voltage the allowed error is a share of where no unit in the loop states a reference supply, V. Common practice. */
    private static final double USUAL_REFERENCE_VOLTS = 5;

    private static final RuleInfo INFO = new RuleInfo("ground-loop", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.LOOPS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        LoopMembers kinds = new LoopMembers(evidence.harness());
        for (LoopReading loop : evidence.returns().loops()) {
            List<Branch> members = loop.loop().members().stream()
                    .flatMap(id -> evidence.drawn().branch(id).stream())
                    .toList();
            List<Branch> signals = kinds.signals(members);
            if (!signals.isEmpty()) {
                report.accept(throughSignals(evidence, kinds, loop, members, signals));
            } else if (loop.intended().isEmpty()) {
                report.accept(ofPower(members));
            }
        }
    }

    private static Finding ofPower(List<Branch> members) {
        List<String> elements = elements(members);
        String what = isSideBySide(members) ? "side-by-side" : "power";
        return new FindingDraft(INFO, what)
                .word("members", Listing.of(elements, 100))
                .severity(Severity.NOTE)
                .subjects(elements)
                .build();
    }

    private static Finding throughSignals(
            Evidence evidence, LoopMembers kinds, LoopReading loop, List<Branch> members, List<Branch> signals) {
        List<String> elements = elements(members);
        Optional<Stray> stray = loop.stray().filter(each -> each.onAmps() >= SHOWN_AMPS);
        Optional<FieldPickUp> field = loop.field().filter(each -> each.volts() > allowedVolts(evidence, members));
        boolean disturbs =
                stray.filter(each -> Limits.exceeds(each.onAmps(), STRAY_AMPS)).isPresent()
                        || field.isPresent()
                        || evidence.solutions().isEmpty();
        Branch shown =
                stray.flatMap(each -> evidence.drawn().branch(each.member())).orElse(signals.get(0));
        FindingDraft draft = new FindingDraft(INFO, "signals")
                .part("stray", stray.isPresent(), "stray")
                .part("field", field.isPresent(), "induced")
                .part("intended", loop.intended().isPresent(), "intended")
                .word("signal", words(kinds, shown))
                .word("members", Listing.of(elements, stray.isPresent() ? 55 : 70))
                .severity(disturbs && loop.intended().isEmpty() ? Severity.WARNING : Severity.NOTE)
                .subjects(elements);
        loop.intended().ifPresent(reason -> draft.word("reason", reason));
        field.ifPresent(each -> draft.volts("induced", each.volts()));
        stray.ifPresent(each -> draft.amps("current", each.onAmps())
                .word("state", StateNames.quoted(evidence.harness().states().get(each.state()))));
        return draft.build();
    }

    /**
     * The voltage that coupling may take: the share for coupling of the allowed sensor error of the least reference supply of a control
     * unit in the loop.
     */
    private static double allowedVolts(Evidence evidence, List<Branch> members) {
        ReturnRules rules = evidence.harness().rules().returnRules();
        OptionalDouble reference = members.stream()
                .flatMap(member -> member.element().stream())
                .filter(ComponentId.class::isInstance)
                .map(id -> evidence.harness().components().get((ComponentId) id).device())
                .filter(ControlUnit.class::isInstance)
                .flatMap(unit -> ((ControlUnit) unit).pins().stream())
                .map(Pin::referenceVolts)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
        return rules.couplingShare() * rules.sensorErrorShare() * reference.orElse(USUAL_REFERENCE_VOLTS);
    }

    private static List<String> elements(List<Branch> members) {
        return members.stream()
                .flatMap(branch -> branch.element().stream())
                .map(ElementId::value)
                .distinct()
                .toList();
    }

    private static Text words(LoopMembers kinds, Branch member) {
        String id = member.element().map(ElementId::value).orElse(member.id().value());
        return kinds.wire(member)
                .map(wire -> switch (wire.signalClass()) {
                    case SHIELD -> INFO.text("shield", id);
                    case REFERENCE_RETURN -> INFO.text("signal-return", id);
                    default -> INFO.text("signal-wire", id);
                })
                .orElse(INFO.text(member.kind() == BranchKind.JOINT ? "case" : "inside", id));
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
