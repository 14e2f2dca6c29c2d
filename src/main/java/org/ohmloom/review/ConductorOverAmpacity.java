package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ShortPeak;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * No conductor carries more than its derated ampacity.
 * <p>The RMS current of the worst continuous state against the table value of the design basis, corrected for ambient and
 * bundle. What the table lets pass but the heat balance finds hotter than the insulation stands, at the end of a
 * state that does not last too, is a warning.
 */
final class ConductorOverAmpacity implements Rule {

    private static final RuleInfo INFO = new RuleInfo("conductor-over-ampacity", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SIZES);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (WireRating rating : evidence.ratings().values()) {
            Optional<Ampacity> ampacity = rating.ampacity();
            if (ampacity.isPresent()
                    && Limits.exceeds(rating.worstAmps(), ampacity.get().limitAmps())) {
                report.accept(finding(evidence, rating, ampacity.get()));
            } else {
                tooHot(evidence, rating).ifPresent(report);
            }
        }
    }

    /** Within its ampacity, or in a state too short for it, and yet hotter than its insulation stands. */
    private static Optional<Finding> tooHot(Evidence evidence, WireRating rating) {
        WireTemperature temperature = rating.temperature();
        Optional<Ampacity> ampacity = rating.ampacity();
        if (ampacity.isEmpty()) {
            return Optional.empty();
        }
        double limit = ampacity.get().limitCelsius();
        boolean heated =
                temperature.amps() != 0 && Limits.exceeds(temperature.heat().celsius(), limit);
        Optional<ShortPeak> peak = temperature.shortPeak().filter(each -> Limits.exceeds(each.celsius(), limit));
        if (!heated && peak.isEmpty()) {
            return Optional.empty();
        }
        FindingDraft draft = heated
                ? new FindingDraft(INFO, "hot")
                        .word("place", temperature.heat().where())
                        .word("state", StateNames.of(evidence, temperature.state()))
                : new FindingDraft(INFO, "peak")
                        .word("state", StateNames.of(evidence, peak.map(ShortPeak::state)))
                        .value("time", peak.orElseThrow().seconds(), Unit.SECOND);
        return Optional.of(draft.severity(Severity.WARNING)
                .word("wire", rating.wire().id())
                .word("gauge", rating.gauge().text())
                .beyond(
                        "celsius",
                        heated
                                ? temperature.heat().celsius()
                                : peak.orElseThrow().celsius(),
                        "limit",
                        limit,
                        Unit.DEGREE_CELSIUS)
                .subject(rating.wire().id())
                .source(INFO.text("by-balance"))
                .build());
    }

    private static Finding finding(Evidence evidence, WireRating rating, Ampacity ampacity) {
        return new FindingDraft(INFO, "carries")
                .word("wire", rating.wire().id())
                .word("gauge", rating.gauge().text())
                .word("state", StateNames.of(evidence, rating.worstState()))
                .word(
                        "together",
                        ampacity.loadedCount() > 1 ? INFO.text("together", ampacity.loadedCount()) : Text.NONE)
                .value("ambient", ampacity.ambientCelsius(), Unit.DEGREE_CELSIUS)
                .beyond("current", rating.worstAmps(), "limit", ampacity.limitAmps(), Unit.AMP)
                .subject(rating.wire().id())
                .source(ampacity.base().citation().text())
                .fix(LargerConductor.fix(evidence, rating))
                .build();
    }
}
