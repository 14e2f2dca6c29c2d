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

/**
 * A covering goes over its bundle, lies on it, and as conduit or tube is not filled beyond the guide for pulling through.
 * <p>Judged by the practical diameter. Silent where no size is entered: the size that serves is then shown with the segment.
 */
final class CoveringDoesNotFit implements Rule {

    private static final double MM_PER_METRE = 1000;

    private static final RuleInfo INFO = new RuleInfo(
            "covering-does-not-fit",
            "A covering does not suit its bundle",
            Severity.WARNING,
            "range of the size in the table of coverings; filling by NFPA 70 (NEC) chapter 9 Table 1, taken as a guide",
            "A covering that is too small does not go over the bundle or cannot be pulled through; one that is too wide slides,"
                    + " chafes, or does not hold its wires.",
            "Take the size that serves; it is shown with the segment.");

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
            return Optional.of(
                    begun(section, fit, "{segment} is {bundle} thick, more than {size} takes: at most {limit} inside.")
                            .beyond(
                                    "bundle",
                                    section.practicalMm() / MM_PER_METRE,
                                    "limit",
                                    fit.size().insideMaxMm().orElse(0) / MM_PER_METRE,
                                    Unit.METRE));
        }
        if (fit.problems().contains(Problem.BUNDLE_TOO_THIN)) {
            return Optional.of(
                    begun(section, fit, "{segment} is {bundle} thick; {size} stays at {limit} or more and lies loose.")
                            .value("bundle", section.practicalMm() / MM_PER_METRE, Unit.METRE)
                            .value("limit", fit.size().insideMinMm().orElse(0) / MM_PER_METRE, Unit.METRE));
        }
        if (fit.problems().contains(Problem.OVER_FILLED)) {
            return Optional.of(begun(section, fit, "The wires fill {fill} of {size} over {segment}, more than {limit}.")
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
            report.accept(new FindingDraft(
                            INFO,
                            known
                                    ? "{size} over {segment} is no {kind}; what is over it is not judged."
                                    : "No table lists {size}, which is over {segment}; it is not judged.")
                    .word("size", size)
                    .word("segment", segment.id())
                    .word(
                            "kind",
                            covering.kind()
                                    .name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', ' '))
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
