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

/** Ground points: what comes back at each, how far it is from the reference, and what lies on its stud. */
public final class GroundStudy implements Study<ReturnReadings.AtGround> {

    @Override
    public String key() {
        return "returns-grounds";
    }

    @Override
    public String title() {
        return "Ground points";
    }

    @Override
    public String about() {
        return "What comes back at every ground point, how far it is from the reference, and what lies on its stud";
    }

    @Override
    public List<Column<ReturnReadings.AtGround>> columns() {
        return List.of(
                Column.text("Ground", "Ground point", 8, row -> row.ground()
                        .ground()
                        .value()),
                Column.number(
                        "Offset",
                        "mV",
                        "Mean voltage of its stud above the reference",
                        row -> ReturnRows.millivolts(row.joint().offsetVolts())),
                Column.number(
                        "Joint",
                        "mV",
                        "The part of it over the joint",
                        row -> ReturnRows.millivolts(row.joint().jointVolts())),
                Column.number(
                        "Current",
                        "A",
                        "Mean current from the stud into the body",
                        row -> CellText.of(row.joint().amps())),
                Column.number(
                        "On",
                        "A",
                        "Largest current",
                        row -> CellText.of(row.joint().onAmps())),
                Column.number("Terminals", "", "Terminals on its stud", GroundStudy::terminals),
                Column.text(
                        "State", "State in which the offset is largest, or the one asked for", 10, row -> row.state()
                                .value()));
    }

    private static CellText terminals(ReturnReadings.AtGround row) {
        int count = row.ground().stacked().size();
        CellText cell = CellText.of(count);
        return count > row.ground().mostStacked()
                ? ReturnRows.over(
                        cell,
                        "It may hold " + row.ground().mostStacked() + ", " + GroundReading.MOST_ON_STUD + " a stud")
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
        return "No ground point carries anything yet. Add a chassis body and a ground point on it, join returns to it, and"
                + " add an operating state in which a load runs.";
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
                        picture.title() + ": " + picture.columns().size()
                                + " ground points, control units and sensors at the height of their voltage; the lists hold"
                                + " the same",
                        picture::scene));
    }

    @Override
    public List<String> steps(Readout readout, ReturnReadings.AtGround row) {
        List<String> steps = new ArrayList<>();
        GroundReading.JointReading joint = row.joint();
        steps.add(Named.label(readout.harness(), row.ground().ground()) + " in "
                + readout.stateName(row.state()) + ": V(stud) - V(reference) = " + Formats.volts(joint.offsetVolts())
                + ".");
        steps.add(readout.harness()
                .grounds()
                .find(row.ground().ground())
                .map(ground -> "Joint: " + Formats.amps(joint.amps()) + " x " + jointOhms(readout, ground) + " = "
                        + Formats.volts(joint.jointVolts()) + ", " + Formats.percent(joint.jointFraction())
                        + " of it; the rest falls in " + body(readout, ground) + " and beyond.")
                .orElse("Joint: " + Formats.volts(joint.jointVolts()) + "."));
        if (!row.ground().returning().isEmpty()) {
            StringBuilder text = new StringBuilder("Whose current it is"
                    + row.ground()
                            .worst()
                            .map(state -> " in " + readout.stateName(state))
                            .orElse("") + ": ");
            row.ground().returning().forEach(share -> text.append(Named.label(readout.harness(), share.cause()))
                    .append(' ')
                    .append(Formats.amps(share.amps()))
                    .append("; "));
            steps.add(text.substring(0, text.length() - 2) + ".");
        }
        int count = row.ground().stacked().size();
        steps.add("On its " + TradeWords.count(row.ground().studs(), "stud") + ": "
                + TradeWords.count(count, "terminal")
                + (count == 0 ? "" : " (" + ReturnRows.ids(row.ground().stacked()) + ")") + "; "
                + GroundReading.MOST_ON_STUD + " a stud at most (FAA AC 43.13-1B, 11-174 b; ABYC E-11, 11.14.6.9).");
        return steps;
    }

    private static String jointOhms(Readout readout, GroundPoint ground) {
        return MeasuredOhms.of(readout.harness())
                .joint(ground.id().value())
                .map(taken -> Formats.ohms(taken.ohms()) + " (measured, "
                        + taken.reading().id() + ")")
                .orElseGet(() -> Formats.ohms(ground.jointOhms()));
    }

    private static String body(Readout readout, GroundPoint ground) {
        return Named.label(readout.harness(), ground.body());
    }
}
