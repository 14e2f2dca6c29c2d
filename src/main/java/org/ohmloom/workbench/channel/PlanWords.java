package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.signal.pins.Claim;
import org.ohmloom.signal.pins.CostPart;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.pins.Slot;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.words.Words;

/** What came of planning the pins, in words: what it costs and why, or why there is no plan and what would help. */
final class PlanWords {

    private final Words words;

    PlanWords(Words words) {
        this.words = words;
    }

    /** In one line. */
    String summary(PinPlan plan) {
        if (plan instanceof PinPlan.Found found) {
            String cost = Formats.number(found.costPoints());
            int lines = found.chosen().size();
            return found.proven()
                    ? words.get("found.proven", lines, cost)
                    : words.get(
                            "found.bound",
                            lines,
                            cost,
                            Formats.number(found.boundPoints()),
                            Formats.number(found.gapPoints()));
        }
        if (plan instanceof PinPlan.Impossible impossible) {
            return impossible.missing() > 0
                    ? words.get("impossible.missing", impossible.missing())
                    : words.get("impossible");
        }
        return words.get("unknown");
    }

    /** Why, line by line. */
    List<String> reasons(PinPlan plan) {
        List<String> lines = new ArrayList<>();
        if (plan instanceof PinPlan.Found found) {
            found.parts().stream()
                    .sorted(Comparator.comparingDouble(CostPart::costPoints).reversed())
                    .forEach(part -> lines.add(words.get(
                            "cost-part",
                            Formats.number(part.costPoints()),
                            Words.said(part.why()),
                            part.costPoints())));
        } else if (plan instanceof PinPlan.Impossible impossible) {
            impossible.changes().forEach(help -> lines.add(words.get("help", help)));
            impossible.competitions().forEach(each -> lines.add(competition(each)));
            lines.addAll(Words.said(impossible.limits()));
        }
        return lines;
    }

    private String competition(PinPlan.Competition each) {
        String claims = each.claims().stream().map(Claim::id).collect(Collectors.joining(", "));
        return each.slots().isEmpty()
                ? words.get("competition.no-pin", claims)
                : words.get(
                        "competition",
                        claims,
                        each.capacity(),
                        each.slots().stream().map(Slot::id).collect(Collectors.joining(", ")));
    }
}
