package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.CoveringFit.Problem;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.edit.ChangeCovering;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Constants;

/**
 * A covering goes over its bundle, lies on it, and as conduit or tube is not filled beyond the guide for pulling through.
 * <p>Judged by the practical diameter. Silent where no size is entered: the size that serves is then shown with the segment.
 */
final class CoveringDoesNotFit implements Rule {

    private static final double MM_PER_METRE = 1000;

    private static final RuleInfo INFO = new RuleInfo("covering-does-not-fit", Severity.WARNING);

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
            segment.covering().ifPresent(covering -> {
                section.entered()
                        .flatMap(fit -> draft(section, fit))
                        .ifPresent(draft -> report.accept(draft.subject(segment.id())
                                .fix(serving(segment, covering, section))
                                .build()));
                unlisted(evidence, segment, covering, section, report);
            });
        }
    }

    private static Optional<FindingDraft> draft(SegmentSection section, CoveringFit fit) {
        if (fit.problems().contains(Problem.BUNDLE_TOO_THICK)) {
            return Optional.of(begun(section, fit, "too-thick")
                    .beyond(
                            "bundle",
                            section.practicalMm() / MM_PER_METRE,
                            "limit",
                            fit.size().insideMaxMm().orElse(0) / MM_PER_METRE,
                            Unit.METRE));
        }
        if (fit.problems().contains(Problem.BUNDLE_TOO_THIN)) {
            return Optional.of(begun(section, fit, "too-thin")
                    .value("bundle", section.practicalMm() / MM_PER_METRE, Unit.METRE)
                    .value("limit", fit.size().insideMinMm().orElse(0) / MM_PER_METRE, Unit.METRE));
        }
        if (fit.problems().contains(Problem.OVER_FILLED)) {
            return Optional.of(begun(section, fit, "filled")
                    .beyond("fill", fit.fillFraction(), "limit", fit.limitFraction(), Unit.FRACTION)
                    .source(fit.limitSource().text()));
        }
        return Optional.empty();
    }

    private static FindingDraft begun(SegmentSection section, CoveringFit fit, String template) {
        return new FindingDraft(INFO, template)
                .word("segment", section.segment())
                .word("size", fit.size().id())
                .source(fit.size().citation().text());
    }

    private static void unlisted(
            Evidence evidence,
            BundleSegment segment,
            Covering covering,
            SegmentSection section,
            Consumer<Finding> report) {
        if (covering.size().isPresent()
                && section.entered().isEmpty()
                && !section.members().isEmpty()) {
            String size = covering.size().get();
            boolean known = evidence.tables().fabrication().findCovering(size).isPresent();
            report.accept(new FindingDraft(INFO, known ? "other-kind" : "not-listed")
                    .word("size", size)
                    .word("segment", segment.id())
                    .word("kind", Constants.text(covering.kind()))
                    .subject(segment.id())
                    .fix(serving(segment, covering, section))
                    .build());
        }
    }

    /** The covering of the same sort that serves, when there is one. */
    static Optional<ChangeCovering> serving(BundleSegment segment, Covering covering, SegmentSection section) {
        return section.chosen()
                .map(fit -> new ChangeCovering(
                        segment.id(),
                        covering.withSize(fit.size().id(), fit.size().words())));
    }
}
