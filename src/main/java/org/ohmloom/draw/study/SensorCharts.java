package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.SignedBars;
import org.ohmloom.draw.chart.SignedRow;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** What makes the error of a sensor, in the sensor's own unit. */
public final class SensorCharts {

    private SensorCharts() {}

    /** The budget of a sensor: known errors with their sum, tolerances with theirs, ripple, and what is to be reckoned with. */
    public static SignedBars of(Harness harness, SensorBudget budget) {
        Optional<String> element = Optional.of(budget.sensor().value());
        List<SignedRow> rows = new ArrayList<>();
        budget.known()
                .forEach(part -> rows.add(SignedRow.of(SignedRow.Kind.PART, part.named(), part.error(), element)));
        if (budget.known().size() > 1) {
            rows.add(SignedRow.of(SignedRow.Kind.SUM, StudyTexts.text("sensor.known"), budget.knownError(), element));
        }
        budget.tolerances()
                .forEach(part ->
                        rows.add(SignedRow.of(SignedRow.Kind.SPAN, part.named(), Math.abs(part.error()), element)));
        if (budget.tolerances().size() > 1) {
            rows.add(SignedRow.of(
                    SignedRow.Kind.SPAN, StudyTexts.text("sensor.tolerances"), budget.toleranceError(), element));
        }
        budget.ripple()
                .ifPresent(ripple ->
                        rows.add(SignedRow.of(SignedRow.Kind.SPAN, StudyTexts.text("sensor.ripple"), ripple, element)));
        rows.add(SignedRow.of(SignedRow.Kind.SUM, StudyTexts.text("sensor.worst"), budget.worstError(), element));
        return new SignedBars(
                StudyTexts.text("sensor", Named.label(harness, budget.sensor()), budget.unit(), budget.pin()),
                StudyTexts.text(
                        "sensor.about",
                        Named.state(harness, budget.state()),
                        Formats.number(budget.reading()) + " " + budget.quantityUnit()),
                StudyTexts.text("sensor.axis"),
                budget.quantityUnit(),
                Text.NONE,
                OptionalDouble.of(budget.allowed()),
                false,
                rows);
    }
}
