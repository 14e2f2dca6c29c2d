package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Predicate;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.model.StateId;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** What the rules about offsets share: the worst state, who makes it, where the limit comes from. */
final class OffsetCauses {

    private static final int MOST_CAUSES = 3;

    /** Causes with less than this share of the largest one are not named. */
    private static final double NAMED_FRACTION = 0.05;

    private OffsetCauses() {}

    /** The offset with the largest magnitude among those of some states that fulfil a condition. */
    static Optional<Offset> worst(Evidence evidence, SortedSet<StateId> states, Predicate<Offset> wanted) {
        return evidence.returns().offsets().stream()
                .filter(offset -> states.contains(offset.state()))
                .filter(wanted)
                .reduce((one, other) -> other.worstVolts() > one.worstVolts() ? other : one);
    }

    /** Who makes most of an offset, {@code "FN1 69.8 mV, M1 34.6 mV"}; "nothing by itself" when nobody adds to it. */
    static Text words(List<OffsetShare> shares, double volts) {
        List<OffsetShare> adding =
                shares.stream().filter(share -> share.volts() * volts > 0).toList();
        double least =
                adding.isEmpty() ? 0 : NAMED_FRACTION * Math.abs(adding.get(0).volts());
        List<String> named = adding.stream()
                .filter(share -> Math.abs(share.volts()) >= least)
                .limit(MOST_CAUSES)
                .map(share -> share.cause() + " " + Formats.volts(Math.abs(share.volts())))
                .toList();
        return named.isEmpty() ? RuleInfo.TEXTS.text("any.nothing-by-itself") : Text.of(String.join(", ", named));
    }

    /** Who they are. */
    static List<String> named(List<OffsetShare> shares, double volts) {
        return shares.stream()
                .filter(share -> share.volts() * volts > 0)
                .limit(MOST_CAUSES)
                .map(share -> share.cause().value())
                .toList();
    }

    /** Where a limit comes from: the harness when it sets its own, else the row of the table. */
    static Text source(Evidence evidence, boolean own, String item) {
        return own
                ? RuleInfo.TEXTS.text("any.limit-of-harness")
                : evidence.tables()
                        .groundLimitVolts(item)
                        .map(CitedValue::citation)
                        .map(citation -> Text.of(citation.text()))
                        .orElseGet(() -> RuleInfo.TEXTS.text("any.no-source"));
    }
}
