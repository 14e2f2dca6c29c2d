package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.OffsetCharts;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetLimits;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;

/** Offsets of control-unit grounds, sensor returns and other grounds, and who makes them. */
public final class OffsetStudy implements Study<OffsetStudy.Row> {

    private static final int MOST_STEPS = 8;

    /**
     * A reference point in a state.
     *
     * @param offset the offset
     * @param limit  most it may be, V; empty in a state too short to be judged
     * @param over   whether it is more
     */
    record Row(Offset offset, OptionalDouble limit, boolean over) {

        Optional<OffsetShare> largest() {
            return offset.shares().stream().findFirst();
        }

        CellText volts() {
            CellText cell = ReturnRows.millivolts(offset.volts());
            return over ? ReturnRows.over(cell, "More than " + Formats.volts(limit.orElseThrow())) : cell;
        }
    }

    @Override
    public String key() {
        return "returns-offsets";
    }

    @Override
    public String title() {
        return "Offsets";
    }

    @Override
    public String about() {
        return "How far control-unit grounds, sensor returns and grounds are from their reference, and who makes it";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Of", "Control unit, sensor or ground point", 8, row -> row.offset()
                        .point()
                        .owner()
                        .value()),
                Column.text(
                        "What",
                        "What is measured",
                        14,
                        row -> OffsetCharts.word(row.offset().point().kind())),
                Column.number("Offset", "mV", "Mean voltage from its reference", Row::volts),
                Column.number(
                        "Ripple",
                        "mV",
                        "How far it swings about that",
                        row -> ReturnRows.millivolts(row.offset().rippleVolts())),
                Column.number(
                        "Limit",
                        "mV",
                        "Most it may be; nothing in a state too short for it",
                        row -> ReturnRows.millivolts(row.limit())),
                Column.text("Most from", "Whose current makes the largest share", 10, row -> row.largest()
                        .map(share -> share.cause().value())
                        .orElse("")),
                Column.number("Share", "mV", "That share", row -> row.largest()
                        .map(share -> ReturnRows.millivolts(share.volts()))
                        .orElse(CellText.EMPTY)),
                Column.text("From", "What it is measured from", 8, row -> row.offset()
                        .point()
                        .against()
                        .value()),
                Column.text("State", "State in which it is largest, or the one asked for", 10, row -> row.offset()
                        .state()
                        .value()));
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.OFFSETS);
    }

    @Override
    public List<Row> rows(Readout readout) {
        Predicate<Offset> isOver = offset -> OffsetLimits.isOver(readout.harness(), offset);
        return ReturnReadings.offsets(ReturnRows.study(readout), readout.state(), isOver).stream()
                .map(offset -> new Row(offset, OffsetLimits.judged(readout.harness(), offset), isOver.test(offset)))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.offset().point().owner();
    }

    @Override
    public String nothing(Readout readout) {
        return "No reference point was solved. Offsets are told for grounds of control units, returns of sensors,"
                + " grounds of bus nodes and ground points, in every operating state in which something runs.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        var chart = OffsetCharts.of(readout.harness(), row.offset());
        return Optional.of(new Picture(
                chart.title() + ": who makes it, largest share first",
                (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        Offset offset = row.offset();
        steps.add("V(" + offset.point().at() + ") - V(" + offset.point().reference() + ") = "
                + Formats.volts(offset.volts()) + " in " + readout.stateName(offset.state())
                + ". Each load, and each source but the reference one, is replaced by its solved current; its share is"
                + " transfer resistance times that current, and the shares sum to the offset.");
        offset.shares().stream()
                .limit(MOST_STEPS)
                .forEach(share -> steps.add(Named.label(readout.harness(), share.cause()) + ": "
                        + Formats.ohms(share.transferOhms()) + " x " + Formats.amps(share.amps()) + " = "
                        + Formats.volts(share.volts())
                        + (share.rippleVolts() > 0 ? ", swinging by " + Formats.volts(share.rippleVolts()) : "")
                        + (share.switchedOffVolts().isPresent()
                                ? "; switched off, the offset would be "
                                        + Formats.volts(share.switchedOffVolts().getAsDouble())
                                : "")
                        + "."));
        if (offset.shares().size() > MOST_STEPS) {
            steps.add("And " + (offset.shares().size() - MOST_STEPS) + " smaller ones.");
        }
        return steps;
    }
}
