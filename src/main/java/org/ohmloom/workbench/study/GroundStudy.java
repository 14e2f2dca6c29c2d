package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnPictures;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Ground points: what comes back at each, how far it is from the reference, and what lies on its stud. */
public final class GroundStudy implements Study<ReturnReadings.AtGround> {
    private static final Words WORDS = Words.of("studies");

    @Override
    public String key() {
        return "returns-grounds";
    }

    @Override
    public String title() {
        return WORDS.get("ground.ground-points");
    }

    @Override
    public String about() {
        return WORDS.get("ground.what-comes-back-at");
    }

    @Override
    public List<Column<ReturnReadings.AtGround>> columns() {
        return List.of(
                Column.text(WORDS.term("ground.ground"), WORDS.get("ground.ground.about"), 8, row -> row.ground()
                        .ground()
                        .value()),
                Column.number(
                        WORDS.term("ground.offset"),
                        "mV",
                        WORDS.get("ground.offset.about"),
                        row -> ReturnRows.millivolts(row.joint().offsetVolts())),
                Column.number(
                        WORDS.term("ground.joint"),
                        "mV",
                        WORDS.get("ground.joint.about"),
                        row -> ReturnRows.millivolts(row.joint().jointVolts())),
                Column.number(
                        WORDS.term("ground.current"),
                        "A",
                        WORDS.get("ground.current.about"),
                        row -> CellText.of(row.joint().amps())),
                Column.number(
                        WORDS.term("ground.on"),
                        "A",
                        WORDS.get("ground.on.about"),
                        row -> CellText.of(row.joint().onAmps())),
                Column.number(
                        WORDS.term("ground.terminals"),
                        "",
                        WORDS.get("ground.terminals.about"),
                        GroundStudy::terminals),
                Column.text(WORDS.term("ground.state"), WORDS.get("ground.state.about"), 10, row -> row.state()
                        .value()));
    }

    private static CellText terminals(ReturnReadings.AtGround row) {
        int count = row.ground().stacked().size();
        CellText cell = CellText.of(count);
        return count > row.ground().mostStacked()
                ? ReturnRows.over(
                        cell, WORDS.get("ground.it-may-hold-a", row.ground().mostStacked(), GroundReading.MOST_ON_STUD))
                : cell;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.OFFSETS, StudyPart.LOOPS, StudyPart.SENSORS);
    }

    @Override
    public List<ReturnReadings.AtGround> rows(Readout readout) {
        return ReturnReadings.grounds(ReturnRows.study(readout), readout.state());
    }

    @Override
    public ElementId id(ReturnReadings.AtGround row) {
        return row.ground().ground();
    }

    @Override
    public String nothing(Readout readout) {
        return WORDS.get("ground.no-ground-point-carries");
    }

    @Override
    public double listShare() {
        return 0.36;
    }

    @Override
    public boolean marksSelection() {
        return true;
    }

    @Override
    public Optional<Picture> picture(Readout readout, ReturnReadings.AtGround row, Optional<String> selected) {
        return readout.analysis()
                .flatMap(results -> ReturnPictures.of(
                        readout.harness(),
                        results.evidence().returns(),
                        results.evidence().drawn(),
                        readout.state()))
                .map(picture -> new Picture(
                        WORDS.get(
                                "ground.ground-points-control-units",
                                picture.title(),
                                picture.columns().size()),
                        picture::scene));
    }

    @Override
    public List<String> steps(Readout readout, ReturnReadings.AtGround row) {
        List<String> steps = new ArrayList<>();
        GroundReading.JointReading joint = row.joint();
        steps.add(WORDS.get(
                "ground.in-v-stud-v",
                Named.label(readout.harness(), row.ground().ground()),
                readout.stateName(row.state()),
                Formats.volts(joint.offsetVolts())));
        steps.add(readout.harness()
                .grounds()
                .find(row.ground().ground())
                .map(ground -> WORDS.get(
                        "ground.joint-x-of-it",
                        Formats.amps(joint.amps()),
                        jointOhms(readout, ground),
                        Formats.volts(joint.jointVolts()),
                        Formats.percent(joint.jointFraction()),
                        body(readout, ground)))
                .orElse(WORDS.get("ground.joint-2", Formats.volts(joint.jointVolts()))));
        if (!row.ground().returning().isEmpty()) {
            StringBuilder text = new StringBuilder(WORDS.get(
                    "ground.whose-current-it-is",
                    row.ground()
                            .worst()
                            .map(state -> " in " + readout.stateName(state))
                            .orElse("")));
            row.ground().returning().forEach(share -> text.append(Named.label(readout.harness(), share.cause()))
                    .append(' ')
                    .append(Formats.amps(share.amps()))
                    .append("; "));
            steps.add(text.substring(0, text.length() - 2) + ".");
        }
        int count = row.ground().stacked().size();
        steps.add(WORDS.get(
                "ground.on-its-a-stud",
                TradeWords.count(row.ground().studs(), "stud"),
                TradeWords.count(count, "terminal"),
                count == 0 ? "" : " (" + ReturnRows.ids(row.ground().stacked()) + ")",
                GroundReading.MOST_ON_STUD));
        return steps;
    }

    private static String jointOhms(Readout readout, GroundPoint ground) {
        return MeasuredOhms.of(readout.harness())
                .joint(ground.id().value())
                .map(taken -> WORDS.get(
                        "ground.measured",
                        Formats.ohms(taken.ohms()),
                        taken.reading().id()))
                .orElseGet(() -> Formats.ohms(ground.jointOhms()));
    }

    private static String body(Readout readout, GroundPoint ground) {
        return Named.label(readout.harness(), ground.body());
    }
}
