package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.draw.study.SensorCharts;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** The error budget of every sensor, in its own unit. */
final class SensorSection {

    private static final int MOST_PICTURES = 8;

    private static final List<Column> COLUMNS = List.of(
            Column.code("Sensor"),
            Column.code("Read by"),
            Column.words("State"),
            Column.code("Unit"),
            Column.count("At", 3),
            Column.count("Known", 4),
            Column.count("Tolerances", 4),
            Column.count("Ripple", 4),
            Column.count("Largest", 4),
            Column.count("Allowed", 4),
            Column.number("Used", Unit.PERCENT, 0),
            Column.words("Allowed by"));

    private static final List<Column> PARTS = List.of(
            Column.code("Sensor"),
            Column.words("State"),
            Column.words("Part"),
            Column.words("Adds"),
            Column.count("Error", 5),
            Column.code("Unit"),
            Column.words("How it was worked out"),
            Column.words("Source"));

    private final Analysis analysis;
    private final SceneFonts fonts;

    SensorSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    List<Block> blocks() {
        ReturnStudy study = analysis.evidence().returns();
        if (study.sensors().isEmpty()) {
            return List.of();
        }
        List<SensorBudget> worst = ReturnReadings.sensors(study, Optional.empty());
        List<Row> parts = new ArrayList<>();
        worst.forEach(budget -> {
            budget.known().forEach(part -> parts.add(part(budget, part, "with its sign")));
            budget.tolerances().forEach(part -> parts.add(part(budget, part, "as squares")));
        });
        List<Scene> pictures = worst.stream()
                .limit(MOST_PICTURES)
                .map(budget -> SensorCharts.of(analysis.harness(), budget).scene(fonts, Block.Pictures.HALF_MM))
                .toList();
        return List.of(
                new Block.Heading("Sensor errors"),
                new Block.Prose(
                        "Known errors of one state add with their signs; independent tolerances add as root of the sum"
                                + " of squares; ripple after the input's filter comes on top. Largest is the sum of the three magnitudes."
                                + " The parts are those of each sensor's worst state."),
                new Block.Table(
                        "sensor-errors",
                        COLUMNS,
                        study.sensors().stream().map(this::row).toList(),
                        ""),
                new Block.Pictures(pictures),
                new Block.Table("sensor-error-parts", PARTS, parts, ""));
    }

    private Row row(SensorBudget budget) {
        Cell largest = Cell.number(budget.worstError());
        return Row.of(
                Cell.text(budget.sensor().value()).toned(Cell.Tone.STRONG),
                Cell.text(budget.unit() + " " + budget.pin()),
                Cell.text(Named.state(analysis.harness(), budget.state())),
                Cell.text(budget.quantityUnit()),
                Cell.number(budget.reading()),
                Cell.number(budget.knownError()),
                Cell.number(budget.toleranceError()),
                Cell.number(budget.ripple()),
                ReturnReadings.use(budget) > 1 + 1e-9 ? largest.toned(Cell.Tone.ALERT) : largest,
                Cell.number(budget.allowed()),
                Cell.number(Unit.PERCENT.fromCanonical(ReturnReadings.use(budget))),
                Cell.text(budget.allowedFrom().english()));
    }

    private Row part(SensorBudget budget, SensorBudget.ErrorPart part, String adds) {
        return Row.of(
                Cell.text(budget.sensor().value()).toned(Cell.Tone.STRONG),
                Cell.text(Named.state(analysis.harness(), budget.state())),
                Cell.text(part.name()),
                Cell.text(adds),
                Cell.number(part.error()),
                Cell.text(budget.quantityUnit()),
                Cell.text(Wording.printed(part.formula())),
                Cell.text(part.source()));
    }
}
