package org.ohmloom.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.Component;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * A sensor reads no further off than it may, in its own unit.
 * <p>Compares the worst error of each budget of {@link org.ohmloom.ground.sensor.SensorStudy} (known errors of the state with their
 * signs, tolerances as root of the sum of squares, ripple behind the filter) with the sensor's allowed error; one finding for each
 * sensor and input, told for the worst state. An error when the unit cannot use the signal at all. Silent on what is not entered;
 * {@link NotChecked} tells that.
 */
final class SensorErrorOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("sensor-error-over-limit", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SENSORS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Map<String, List<SensorBudget>> bySignal = new LinkedHashMap<>();
        for (SensorBudget budget : evidence.returns().sensors()) {
            if (budget.isOver()) {
                bySignal.computeIfAbsent(
                                budget.sensor() + " " + budget.unit() + " " + budget.pin(), key -> new ArrayList<>())
                        .add(budget);
            }
        }
        bySignal.values().forEach(over -> report.accept(finding(evidence, worst(over))));
    }

    /** Whether a sensor is told of by this rule, and its return is most of it. */
    static boolean tellsOfReturn(Evidence evidence, Component sensor) {
        return evidence.returns().sensors().stream()
                .filter(budget -> budget.sensor().equals(sensor.id()) && budget.isOver())
                .anyMatch(budget -> budget.largest()
                        .filter(part -> part.name().equals(SensorBudget.RETURN_OFFSET))
                        .isPresent());
    }

    private static SensorBudget worst(List<SensorBudget> over) {
        SensorBudget worst = over.get(0);
        for (SensorBudget budget : over) {
            boolean graver = budget.unusable().isPresent() && worst.unusable().isEmpty();
            boolean asGrave = budget.unusable().isPresent() == worst.unusable().isPresent();
            if (graver || asGrave && budget.worstError() * worst.allowed() > worst.worstError() * budget.allowed()) {
                worst = budget;
            }
        }
        return worst;
    }

    private static Finding finding(Evidence evidence, SensorBudget budget) {
        Component sensor = evidence.harness().components().get(budget.sensor());
        boolean unusable = budget.unusable().isPresent();
        Optional<SensorBudget.ErrorPart> largest = budget.largest();
        FindingDraft draft = new FindingDraft(INFO, unusable ? "unusable" : "off")
                .part("most", largest.isPresent(), "most")
                .word("name", sensor.name())
                .word("sensor", sensor.id())
                .word("state", StateNames.quoted(evidence.harness().states().get(budget.state())))
                .word("why", budget.unusable().orElse(Text.NONE))
                .word("error", inUnit(budget, budget.worstError()))
                .word("reading", inUnit(budget, budget.reading()))
                .word("limit", inUnit(budget, budget.allowed()))
                .severity(unusable ? Severity.ERROR : Severity.WARNING)
                .source(INFO.text(
                        "allowed",
                        largest.map(SensorBudget.ErrorPart::source)
                                .map(Text::of)
                                .orElse(INFO.source()),
                        budget.allowedFrom()))
                .subject(sensor.id())
                .highlight(List.of(budget.unit()));
        largest.ifPresent(part -> draft.word("part", part.named()).word("share", inUnit(budget, part.error())));
        if (budget.span() > 0) {
            draft.value("errorOfSpan", budget.worstError() / budget.span(), Unit.FRACTION)
                    .value("limitOfSpan", budget.allowed() / budget.span(), Unit.FRACTION);
        }
        return draft.build();
    }

    private static String inUnit(SensorBudget budget, double value) {
        return Formats.number(value) + " " + budget.quantityUnit();
    }
}
