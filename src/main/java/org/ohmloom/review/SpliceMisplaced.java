package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.bundle.splice.SpliceAdvice;
import org.ohmloom.edit.MoveSplice;
import org.ohmloom.model.Place;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/**
 * A splice keeps its distances from ends and from other splices, and does not lie where it costs much more copper than elsewhere.
 * <p>Silent about less than {@link #LEAST_KG} or less than {@link #LEAST_SHARE} of the copper between the splice and the other ends, and
 * about splices that are to stay where they are.
 */
final class SpliceMisplaced implements Rule {

    /** 20 g of copper: common practice, no source. */
    private static final double LEAST_KG = 0.02;

    /** A tenth: common practice, no source. */
    private static final double LEAST_SHARE = 0.1;

    private static final RuleInfo INFO = new RuleInfo(
            "splice-misplaced",
            "A splice lies too near something, or where it costs copper",
            Severity.NOTE,
            "FAA AC 43.13-1B, 11-167; stagger and the copper worth a move are common practice, no source",
            "A splice beside an end is bent and pulled with it, splices side by side make the bundle thick and stiff, and a splice away"
                    + " from the middle of its wires takes copper for nothing.",
            "Move the splice to the place that keeps the distances with the least copper.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.BUNDLES);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (SpliceAdvice advice : evidence.splices().values()) {
            if (advice.best().isEmpty()) {
                continue;
            }
            Place best = advice.best().get();
            boolean costly = advice.savedKg() > LEAST_KG && advice.savedKg() > LEAST_SHARE * advice.presentKg();
            if (!advice.tooNear().isEmpty()) {
                report.accept(new FindingDraft(INFO, "{splice} is too near to {near}; it could lie {place}.")
                        .word("splice", advice.splice())
                        .word("near", advice.tooNear().get(0))
                        .word("place", words(best))
                        .subject(advice.splice())
                        .fix(Optional.of(new MoveSplice(advice.splice(), best)))
                        .build());
            } else if (costly) {
                report.accept(new FindingDraft(INFO, "{splice} would save {saved} of {copper} of copper {place}.")
                        .word("splice", advice.splice())
                        .value("saved", advice.savedKg(), Unit.KILOGRAM)
                        .value("copper", advice.presentKg(), Unit.KILOGRAM)
                        .word("place", words(best))
                        .subject(advice.splice())
                        .fix(Optional.of(new MoveSplice(advice.splice(), best)))
                        .build());
            }
        }
    }

    private static String words(Place place) {
        if (place instanceof Place.AtBreakout at) {
            return "at " + at.breakout();
        }
        Place.OnSegment on = (Place.OnSegment) place;
        return "in " + on.segment() + ", " + Formats.metres(on.distanceMetres()) + " along";
    }
}
