package org.ohmloom.draw;

import java.util.Map;
import java.util.Optional;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.model.SegmentId;

/**
 * What a printed board shows beyond the one on the screen.
 *
 * @param datums   from where its breakouts are measured
 * @param flags    notes on its elements
 * @param supports supports and ties along its segments, as far as there are results
 * @param stacked  whether zone and covering stand on a line of their own above the run, which makes it shorter and higher
 */
record SheetDetail(Datums datums, NoteFlags flags, Map<SegmentId, SupportPlan> supports, boolean stacked) {

    /** The same with zone and covering on a line of their own, or not. */
    SheetDetail withStacked(boolean changed) {
        return new SheetDetail(datums, flags, supports, changed);
    }

    /** The breakout at an end of a tie that is measured over more than this tie from a datum. */
    Optional<Datums.Measured> running(Tie tie) {
        return Optional.of(tie)
                .filter(each -> each.segment().isPresent())
                .flatMap(each -> datums.of(tie.to())
                        .filter(to -> to.along().contains(tie.id()) && isLast(to, tie))
                        .or(() -> datums.of(tie.from()).filter(from -> isLast(from, tie))))
                .filter(measured -> measured.along().size() > 1);
    }

    private static boolean isLast(Datums.Measured measured, Tie tie) {
        return measured.along().get(measured.along().size() - 1).equals(tie.id());
    }
}
