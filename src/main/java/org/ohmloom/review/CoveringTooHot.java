package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.CoveringFit.Problem;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.units.Unit;

/**
 * A covering stands the temperature of its bundle: the air of its zone and by how much the warmest wire in it is warmer than the
 * air where that wire is hottest. So it may be judged a little hotter than it gets, never cooler.
 */
final class CoveringTooHot implements Rule {

    private static final RuleInfo INFO = new RuleInfo("covering-too-hot", Severity.WARNING);

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
        for (SegmentSection section : evidence.bundles().bySegment().values()) {
            BundleSegment segment = evidence.harness().segments().get(section.segment());
            Covering covering = segment.covering().orElse(null);
            CoveringFit fit = section.entered().orElse(null);
            if (covering != null && fit != null && fit.problems().contains(Problem.TOO_HOT)) {
                report.accept(new FindingDraft(INFO, "warm")
                        .word("segment", segment.id())
                        .word("size", fit.size().id())
                        .beyond(
                                "celsius",
                                section.celsius(),
                                "limit",
                                fit.size().limitCelsius(),
                                Unit.DEGREE_CELSIUS)
                        .source(fit.size().citation().text())
                        .subject(segment.id())
                        .fix(CoveringDoesNotFit.serving(segment, covering, section))
                        .build());
            }
        }
    }
}
