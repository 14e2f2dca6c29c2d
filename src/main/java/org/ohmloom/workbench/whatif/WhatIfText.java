package org.ohmloom.workbench.whatif;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.analysis.revision.Change;
import org.ohmloom.analysis.revision.ResultChange;
import org.ohmloom.workbench.compare.Compared;
import org.ohmloom.workbench.words.Words;

/** What a side copy changes, in a line. */
final class WhatIfText {

    private WhatIfText() {}

    /** How it stands: not begun, untouched, being worked out, or what differs. */
    static String of(WhatIf whatIf, Words words) {
        if (whatIf.copy().isEmpty()) {
            return words.get("hint");
        }
        if (whatIf.isUntouched()) {
            return words.get("untouched");
        }
        if (!whatIf.problem().isEmpty()) {
            return words.get("not-compared", whatIf.problem());
        }
        Optional<Compared> shown = whatIf.shown();
        if (shown.isEmpty()) {
            return words.get("working");
        }
        String said = differs(shown.get(), words);
        return whatIf.isCurrent() ? said : words.get("older", said);
    }

    private static String differs(Compared compared, Words words) {
        long come = count(compared, Change.ADDED);
        long gone = count(compared, Change.REMOVED);
        String findings = words.get("findings", String.valueOf(come), String.valueOf(gone));
        List<ResultChange> totals = compared.comparison().totals();
        return totals.isEmpty()
                ? words.get("no-totals", findings)
                : findings
                        + totals.stream()
                                .map(total -> words.get(
                                        "total",
                                        total.quantityText(),
                                        ResultChange.said(total.after()),
                                        ResultChange.difference(total)))
                                .collect(Collectors.joining());
    }

    private static long count(Compared compared, Change change) {
        return compared.comparison().findings().stream()
                .filter(each -> each.change() == change)
                .count();
    }
}
