package org.ohmloom.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * When one return comes loose or one fuse is pulled, the current finds no way through what is not made for it.
 * <p>One finding for each element that does harm when it opens, in its worst state. A warning when a sensor return, a shield, a signal
 * wire or a pin of a control unit then carries more than it may; a note when only power returns do, or when loads get current the
 * wrong way round. That loads stop is what an open circuit does and is not reported.
 */
final class LostReturnOverloads implements Rule {

    private static final RuleInfo INFO = new RuleInfo("lost-return-overloads", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.LOST_RETURNS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Map<ElementId, LostReturn> worst = new LinkedHashMap<>();
        for (LostReturn loss : evidence.returns().losses()) {
            worst.merge(
                    loss.opened(),
                    loss,
                    (one, other) -> badness(evidence, other) > badness(evidence, one) ? other : one);
        }
        worst.values().forEach(loss -> report.accept(finding(evidence, loss)));
    }

    /** Sensitive overloads before others, then by how far beyond the limit. */
    private static double badness(Evidence evidence, LostReturn loss) {
        Optional<LostReturn.Overload> sensitive = sensitive(evidence, loss);
        return sensitive
                .or(() -> loss.overLimit().stream().findFirst())
                .map(overload -> overload.amps() / overload.limitAmps() + (sensitive.isPresent() ? 1e6 : 0))
                .orElse(0.0);
    }

    private static Optional<LostReturn.Overload> sensitive(Evidence evidence, LostReturn loss) {
        return loss.overLimit().stream()
                .filter(overload -> isSensitive(evidence.harness(), overload.member()))
                .findFirst();
    }

    private static boolean isSensitive(Harness harness, ElementId member) {
        if (member instanceof WireId wire) {
            SignalClass is = harness.wires().get(wire).signalClass();
            return is != SignalClass.FEED && is != SignalClass.RETURN && is != SignalClass.SWITCHED_OUTPUT;
        }
        if (member instanceof ConnectorId connector) {
            Connector housing = harness.connectors().get(connector);
            return housing.component().filter(id -> isUnit(harness, id)).isPresent();
        }
        return member instanceof ComponentId component && isUnit(harness, component);
    }

    private static boolean isUnit(Harness harness, ComponentId id) {
        return harness.components().get(id).device() instanceof ControlUnit;
    }

    private static Finding finding(Evidence evidence, LostReturn loss) {
        Text state = StateNames.quoted(evidence.harness().states().get(loss.state()));
        if (loss.overLimit().isEmpty()) {
            return new FindingDraft(INFO, "backwards")
                    .severity(Severity.NOTE)
                    .word("opened", loss.opened())
                    .word("state", state)
                    .word("loads", Listing.of(loss.fedBackwards(), 60))
                    .subject(loss.opened())
                    .highlight(loss.fedBackwards())
                    .build();
        }
        Optional<LostReturn.Overload> sensitive = sensitive(evidence, loss);
        LostReturn.Overload overload = sensitive.orElse(loss.overLimit().get(0));
        List<ElementId> ways =
                loss.detours().stream().map(LostReturn.Detour::member).toList();
        return new FindingDraft(INFO, "carries")
                .severity(sensitive.isPresent() ? Severity.WARNING : Severity.NOTE)
                .word("opened", loss.opened())
                .word("state", state)
                .beyond("current", overload.amps(), "limit", overload.limitAmps(), Unit.AMP)
                .word("member", overload.member())
                .word("ways", Listing.of(ways.isEmpty() ? List.of(overload.member()) : ways, 50))
                .subject(loss.opened())
                .subject(overload.member())
                .highlight(ways)
                .source(overload.source())
                .build();
    }
}
