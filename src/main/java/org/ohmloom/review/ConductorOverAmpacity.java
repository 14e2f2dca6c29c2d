package org.ohmloom.review;

import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.units.Unit;

/**
 * No conductor carries more than its derated ampacity.
 * <p>The RMS current of the worst continuous state against the table value of the design basis, corrected for ambient and
 * bundle. Cranking and motors at standstill last seconds and are not judged here.
 */
final class ConductorOverAmpacity implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "conductor-over-ampacity",
            "A conductor carries more than it may where it lies",
            Severity.ERROR,
            "Ampacity table of the design basis",
            "A conductor above its ampacity runs hotter than its insulation stands; the insulation ages, softens and in"
                    + " the end burns.",
            "Take a larger conductor, a better insulation, a cooler route or a smaller bundle.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (WireRating rating : evidence.ratings().values()) {
            Optional<Ampacity> ampacity = rating.ampacity();
            if (ampacity.isPresent()
                    && Limits.exceeds(rating.worstAmps(), ampacity.get().limitAmps())) {
                report.accept(finding(evidence, rating, ampacity.get()));
            }
        }
    }

    private static Finding finding(Evidence evidence, WireRating rating, Ampacity ampacity) {
        return new FindingDraft(
                        INFO,
                        "{wire} ({gauge}) carries {current} in {state}; at {ambient}{together} it may carry {limit}.")
                .word("wire", rating.wire().id())
                .word("gauge", rating.gauge().text())
                .word("state", StateNames.of(evidence, rating.worstState()))
                .word(
                        "together",
                        ampacity.loadedCount() > 1 ? " among " + ampacity.loadedCount() + " loaded conductors" : "")
                .value("ambient", ampacity.ambientCelsius(), Unit.DEGREE_CELSIUS)
                .beyond("current", rating.worstAmps(), "limit", ampacity.limitAmps(), Unit.AMP)
                .subject(rating.wire().id())
                .source(ampacity.base().citation().text())
                .fix(LargerConductor.fix(evidence, rating))
                .build();
    }
}
