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
import org.ohmloom.workbench.words.Words;

/** Offsets of control-unit grounds, sensor returns and other grounds, and who makes them. */
public final class OffsetStudy implements Study<OffsetStudy.Row> {
    private static final Words WORDS = Words.of("studies");

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
            return over
                    ? ReturnRows.over(cell, WORDS.get("offset.more-than", Formats.volts(limit.orElseThrow())))
                    : cell;
        }
    }

    @Override
    public String key() {
        return "returns-offsets";
    }

    @Override
    public String title() {
        return WORDS.get("offset.offsets");
    }

    @Override
    public String about() {
        return WORDS.get("offset.how-far-control-unit");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("offset.of"), WORDS.get("offset.of.about"), 8, row -> row.offset()
                        .point()
                        .owner()
                        .value()),
                Column.text(
                        WORDS.term("offset.what"),
                        WORDS.get("offset.what.about"),
                        14,
                        row -> Words.said(OffsetCharts.word(row.offset().point().kind()))),
                Column.number(WORDS.term("offset.offset"), "mV", WORDS.get("offset.offset.about"), Row::volts),
                Column.number(
                        WORDS.term("offset.ripple"),
                        "mV",
                        WORDS.get("offset.ripple.about"),
                        row -> ReturnRows.millivolts(row.offset().rippleVolts())),
                Column.number(
                        WORDS.term("offset.limit"),
                        "mV",
                        WORDS.get("offset.limit.about"),
                        row -> ReturnRows.millivolts(row.limit())),
                Column.text(
                        WORDS.term("offset.most-from"), WORDS.get("offset.most-from.about"), 10, row -> row.largest()
                                .map(share -> share.cause().value())
                                .orElse("")),
                Column.number(WORDS.term("offset.share"), "mV", WORDS.get("offset.share.about"), row -> row.largest()
                        .map(share -> ReturnRows.millivolts(share.volts()))
                        .orElse(CellText.EMPTY)),
                Column.text(WORDS.term("offset.from"), WORDS.get("offset.from.about"), 8, row -> row.offset()
                        .point()
                        .against()
                        .value()),
                Column.text(WORDS.term("offset.state"), WORDS.get("offset.state.about"), 10, row -> row.offset()
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
        return WORDS.get("offset.no-reference-point-was");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        var chart = OffsetCharts.of(readout.harness(), row.offset());
        return Optional.of(new Picture(
                WORDS.get("offset.who-makes-it-largest", chart.title()),
                (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        Offset offset = row.offset();
        steps.add(WORDS.get(
                "offset.v-v-in-each",
                offset.point().at(),
                offset.point().reference(),
                Formats.volts(offset.volts()),
                readout.stateName(offset.state())));
        offset.shares().stream()
                .limit(MOST_STEPS)
                .forEach(share -> steps.add(Named.label(readout.harness(), share.cause()) + ": "
                        + Formats.ohms(share.transferOhms()) + " x " + Formats.amps(share.amps()) + " = "
                        + Formats.volts(share.volts())
                        + (share.rippleVolts() > 0
                                ? WORDS.get("offset.swinging-by", Formats.volts(share.rippleVolts()))
                                : "")
                        + (share.switchedOffVolts().isPresent()
                                ? WORDS.get(
                                        "offset.switched-off-the-offset",
                                        Formats.volts(share.switchedOffVolts().getAsDouble()))
                                : "")
                        + "."));
        if (offset.shares().size() > MOST_STEPS) {
            steps.add(WORDS.get("offset.and-smaller-ones", (offset.shares().size() - MOST_STEPS)));
        }
        return steps;
    }
}
