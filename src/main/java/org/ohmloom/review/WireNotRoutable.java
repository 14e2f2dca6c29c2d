package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.edit.ChangeRouting;
import org.ohmloom.graph.RefusedWay;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.Wire;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * Every wire whose ends have their places has a way over the bundle segments that its routing rules permit.
 * <p>Silent where an end has no place. The length of a wire without a permitted way is that of the shortest way there would be
 * without its rules. The fix lets the wire off the rules that stand in the way, one by one; where no segments join its ends only
 * a person knows which is missing.
 */
final class WireNotRoutable implements Rule {

    private static final RuleInfo INFO = new RuleInfo("wire-not-routable", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (RefusedWay way : evidence.routes().refused().values()) {
            Wire wire = evidence.harness().wires().get(way.wire());
            if (way.rules().isEmpty()) {
                report.accept(new FindingDraft(INFO, "no-segments")
                        .word("wire", way.wire())
                        .word("from", wire.from().text())
                        .word("to", wire.to().text())
                        .subject(way.wire())
                        .build());
            } else {
                report.accept(new FindingDraft(INFO, "no-way")
                        .word("wire", way.wire())
                        .word("rules", words(way.rules()))
                        .subject(way.wire())
                        .highlight(way.taken().map(route -> route.segments()).orElse(List.of()))
                        .fix(Optional.of(ChangeRouting.lettingOff(evidence.harness(), wire)))
                        .build());
            }
        }
    }

    private static Text words(List<RoutingRule> rules) {
        List<Text> each = rules.stream().map(WireNotRoutable::words).distinct().toList();
        return each.stream()
                .reduce((one, other) -> INFO.text("both", one, other))
                .orElse(Text.NONE);
    }

    private static Text words(RoutingRule rule) {
        if (rule instanceof RoutingRule.AvoidZone avoid) {
            return INFO.text("keeps-off", avoid.avoidZone());
        }
        if (rule instanceof RoutingRule.Through pass) {
            return INFO.text("passes", pass.through());
        }
        RoutingRule.Apart apart = (RoutingRule.Apart) rule;
        return INFO.text(
                "keeps-apart",
                Text.joined(
                        ", ", apart.apartFrom().stream().map(Constants::text).toList()));
    }
}
