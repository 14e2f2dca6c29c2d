package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.bundle.splice.SpliceAdvice;
import org.ohmloom.edit.MoveSplice;
import org.ohmloom.model.Place;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

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

    private static final RuleInfo INFO = new RuleInfo("splice-misplaced", Severity.NOTE);

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
                report.accept(new FindingDraft(INFO, "too-near")
                        .word("splice", advice.splice())
                        .word("near", advice.tooNear().get(0))
                        .word("place", words(best))
                        .subject(advice.splice())
                        .fix(Optional.of(new MoveSplice(advice.splice(), best)))
                        .build());
            } else if (costly) {
                report.accept(new FindingDraft(INFO, "costly")
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

    private static Text words(Place place) {
        if (place instanceof Place.AtBreakout at) {
            return INFO.text("at", at.breakout());
        }
        Place.OnSegment on = (Place.OnSegment) place;
        return INFO.text("along", on.segment(), Formats.metres(on.distanceMetres()));
    }
}
