package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.draw.study.DutyRangeCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Loads run at a duty, at a quarter, half, three quarters and all of it: what each wire carries and what decides its size. */
public final class DutyRangeStudy implements Study<DutyRangeStudy.Row> {
    private static final Words WORDS = Words.of("studies");

    public static final String KEY = "duty-range";

    private static final double PERCENT = 100;

    /**
     * A wire of a load at a duty.
     *
     * @param step the load at the duty
     * @param wire what the wire carries then
     */
    record Row(DutyStep step, DutyStep.OnWire wire) {

        boolean isDropTooMuch() {
            return step.dropVolts() > step.limitVolts();
        }

        String needs() {
            return wire.choice()
                    .flatMap(ConductorChoice::gauge)
                    .map(Gauge::text)
                    .orElse("");
        }

        String governor() {
            return wire.choice()
                    .map(choice -> TradeWords.named(choice.governing().governor()))
                    .orElse("");
        }
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String title() {
        return WORDS.get("duty-range.duty-range");
    }

    @Override
    public String about() {
        return WORDS.get("duty-range.loads-run-at-a");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("duty-range.load"), WORDS.get("duty-range.load.about"), 7, row -> row.step()
                        .load()
                        .value()),
                Column.number(
                        WORDS.term("duty-range.duty"),
                        "%",
                        WORDS.get("duty-range.duty.about"),
                        row -> CellText.of(PERCENT * row.step().dutyFraction())),
                Column.text(WORDS.term("duty-range.wire"), WORDS.get("duty-range.wire.about"), 6, row -> row.wire()
                        .wire()
                        .value()),
                number(WORDS.term("duty-range.rms"), WORDS.get("duty-range.rms.about"), row -> row.wire()
                        .rmsAmps()),
                number(WORDS.term("duty-range.mean"), WORDS.get("duty-range.mean.about"), row -> row.wire()
                        .meanAmps()),
                number(WORDS.term("duty-range.on"), WORDS.get("duty-range.on.about"), row -> row.wire()
                        .onAmps()),
                Column.number(
                        WORDS.term("duty-range.wire-drop"),
                        "V",
                        WORDS.get("duty-range.wire-drop.about"),
                        row -> CellText.of(row.wire().dropVolts())),
                Column.number(
                        WORDS.term("duty-range.load-drop"),
                        "V",
                        WORDS.get("duty-range.load-drop.about"),
                        row -> row.isDropTooMuch()
                                ? CellText.of(row.step().dropVolts())
                                        .in(Tone.ERROR)
                                        .saying(WORDS.get("duty-range.more-than-allowed"))
                                : CellText.of(row.step().dropVolts())),
                Column.number(
                        WORDS.term("duty-range.allowed"),
                        "V",
                        WORDS.get("duty-range.allowed.about"),
                        row -> CellText.of(row.step().limitVolts())),
                Column.number(
                        WORDS.term("duty-range.runs-at"),
                        "°C",
                        WORDS.get("duty-range.runs-at.about"),
                        row -> CellText.of(row.wire().celsius())),
                Column.<Row>text(WORDS.term("duty-range.needs"), WORDS.get("duty-range.needs.about"), 8, Row::needs)
                        .sizes(),
                Column.text(
                        WORDS.term("duty-range.because-of"),
                        WORDS.get("duty-range.because-of.about"),
                        20,
                        Row::governor));
    }

    private static Column<Row> number(Term title, String tip, Function<Row, Double> value) {
        return Column.<Row>number(title, "A", tip, row -> CellText.of(value.apply(row)))
                .wide(7);
    }

    @Override
    public void prepare(Desk desk) {
        desk.wantDutySteps();
    }

    @Override
    public Optional<Readout> reading(Desk desk) {
        return Readout.of(desk).map(now -> desk.dutySteps()
                .map(swept -> new Readout(
                                now.harness(), Optional.of(swept.analysis()), now.state(), Optional.of(swept.steps()))
                        .in(now.units()))
                .orElse(now));
    }

    @Override
    public boolean isOld(Desk desk) {
        return desk.dutySteps()
                .filter(swept -> desk.harness()
                        .filter(now -> now == swept.analysis().harness())
                        .isPresent())
                .isEmpty();
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (DutyStep step : readout.dutySteps().orElse(List.of())) {
            step.wires().forEach(wire -> rows.add(new Row(step, wire)));
        }
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.step().load();
    }

    @Override
    public String nothing(Readout readout) {
        if (readout.harness().states().all().isEmpty()) {
            return WORDS.get("duty-range.add-an-operating-state");
        }
        if (readout.dutySteps().isEmpty()) {
            return WORDS.get("duty-range.every-load-that-is");
        }
        return WORDS.get("duty-range.no-lasting-operating-state");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        Optional<Analysis> analysis = readout.analysis()
                .filter(results -> results.ratings().containsKey(row.wire().wire()))
                .filter(results -> results.harness().states().has(row.step().state()));
        return analysis.map(results -> new Picture(
                WORDS.get(
                        "duty-range.over-its-duty-currents",
                        row.step().load(),
                        row.wire().wire()),
                (fonts, widthMm, heightMm) -> DutyRangeCharts.scene(
                        results,
                        readout.dutySteps().orElse(List.of()),
                        row.step().load(),
                        row.wire().wire(),
                        fonts,
                        widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        DutyStep step = row.step();
        steps.add(WORDS.get(
                "duty-range.at-by-all-else",
                step.load(),
                Formats.percent(step.dutyFraction()),
                step.output().equals(step.load().value()) ? WORDS.get("duty-range.its-command-input") : step.output(),
                readout.stateName(step.state())));
        steps.add(WORDS.get(
                "duty-range.the-load-takes-while",
                Formats.amps(step.loadOnAmps()),
                Formats.amps(step.loadAmps()),
                Formats.volts(step.dropVolts()),
                Formats.volts(step.limitVolts())));
        DutyStep.OnWire wire = row.wire();
        steps.add(WORDS.get(
                "duty-range.carries-on-rms-mean",
                wire.wire(),
                wire.gauge().text(),
                Formats.amps(wire.onAmps()),
                Formats.amps(wire.rmsAmps()),
                Formats.amps(wire.meanAmps()),
                Formats.celsius(wire.celsius())));
        wire.choice().ifPresent(choice -> {
            steps.add(
                    row.needs().isEmpty()
                            ? WORDS.get("duty-range.no-listed-size-serves", row.governor())
                            : WORDS.get(
                                    "duty-range.for-this-operation-alone",
                                    row.needs(),
                                    row.governor(),
                                    Words.said(choice.governing().why())));
        });
        return steps;
    }
}
