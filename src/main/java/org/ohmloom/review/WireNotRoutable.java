package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.edit.ChangeRouting;
import org.ohmloom.graph.RefusedWay;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;

/**
 * Every wire whose ends have their places has a way over the bundle segments that its routing rules permit.
 * <p>Silent where an end has no place. The length of a wire without a permitted way is that of the shortest way there would be
 * without its rules. The fix lets the wire off the rules that stand in the way, one by one; where no segments join its ends only
 * a person knows which is missing.
 */
final class WireNotRoutable implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "wire-not-routable",
            "A wire has no permitted way over the bundle segments",
            Severity.WARNING,
            "the routing rules of the harness",
            "A wire that has no way cannot be laid as drawn: its length is a guess, it is in no bundle or in one it should keep out of.",
            "Add the segment that is missing, move an end, or let the wire off the rule.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (RefusedWay way : evidence.routes().refused().values()) {
            Wire wire = evidence.harness().wires().get(way.wire());
            if (way.rules().isEmpty()) {
                report.accept(new FindingDraft(INFO, "No segments join the ends of {wire}, {from} and {to}.")
                        .word("wire", way.wire())
                        .word("from", wire.from().text())
                        .word("to", wire.to().text())
                        .subject(way.wire())
                        .build());
            } else {
                report.accept(new FindingDraft(
                                INFO, "{wire} has no way that {rules}; it is reckoned with the shortest way.")
                        .word("wire", way.wire())
                        .word("rules", words(way.rules()))
                        .subject(way.wire())
                        .highlight(way.taken().map(route -> route.segments()).orElse(List.of()))
                        .fix(Optional.of(ChangeRouting.lettingOff(evidence.harness(), wire)))
                        .build());
            }
        }
    }

    private static String words(List<RoutingRule> rules) {
        return String.join(
                " and ", rules.stream().map(WireNotRoutable::words).distinct().toList());
    }

    private static String words(RoutingRule rule) {
        if (rule instanceof RoutingRule.AvoidZone avoid) {
            return "keeps off zone " + avoid.avoidZone();
        }
        if (rule instanceof RoutingRule.Through pass) {
            return "passes " + pass.through();
        }
        RoutingRule.Apart apart = (RoutingRule.Apart) rule;
        return "keeps apart from "
                + String.join(
                        ", ",
                        apart.apartFrom().stream().map(WireNotRoutable::words).toList());
    }

    private static String words(SignalClass signal) {
        return signal.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
