package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** Loads run at a duty, at a quarter, half, three quarters and all of it: what each wire carries and what decides its size. */
public final class DutyRangeStudy implements Study<DutyRangeStudy.Row> {

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
                    .map(choice -> choice.governing().governor().words())
                    .orElse("");
        }
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String title() {
        return "Duty range";
    }

    @Override
    public String about() {
        return "Loads run at a duty, at 25, 50, 75 and 100 %: currents, drop, temperature and what decides the size";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Load", "The load", 7, row -> row.step().load().value()),
                Column.number(
                        "Duty",
                        "%",
                        "Share of the time it is on",
                        row -> CellText.of(PERCENT * row.step().dutyFraction())),
                Column.text(
                        "Wire", "Wire on its way", 6, row -> row.wire().wire().value()),
                number("RMS", "What heats the wire", row -> row.wire().rmsAmps()),
                number("Mean", "What the battery gives", row -> row.wire().meanAmps()),
                number("On", "Largest current: for drop and devices", row -> row.wire()
                        .onAmps()),
                Column.number(
                        "Wire drop",
                        "V",
                        "Voltage along the wire while on",
                        row -> CellText.of(row.wire().dropVolts())),
                Column.number(
                        "Load drop",
                        "V",
                        "Voltage lost on feed and return while on",
                        row -> row.isDropTooMuch()
                                ? CellText.of(row.step().dropVolts())
                                        .in(Tone.ERROR)
                                        .saying("More than allowed")
                                : CellText.of(row.step().dropVolts())),
                Column.number(
                        "Allowed",
                        "V",
                        "Most it may lose",
                        row -> CellText.of(row.step().limitVolts())),
                Column.number(
                        "Runs at",
                        "°C",
                        "Conductor temperature",
                        row -> CellText.of(row.wire().celsius())),
                Column.<Row>text("Needs", "Size this operation asks for", 8, Row::needs)
                        .sizes(),
                Column.text("Because of", "What decides that size", 20, Row::governor));
    }

    private static Column<Row> number(String title, String tip, java.util.function.Function<Row, Double> value) {
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
            return "Add an operating state first. Then give an output or a load with a command input a duty below 100 % in"
                    + " it.";
        }
        if (readout.dutySteps().isEmpty()) {
            return "Every load that is run at a duty is run at 25, 50, 75 and 100 % as soon as the results are there; this"
                    + " takes some seconds.";
        }
        return "No lasting operating state runs a load at a duty. Give an output, or a load with a command input, a duty"
                + " below 100 % in one.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        Optional<Analysis> analysis = readout.analysis()
                .filter(results -> results.ratings().containsKey(row.wire().wire()))
                .filter(results -> results.harness().states().has(row.step().state()));
        return analysis.map(results -> new Picture(
                row.step().load() + " over its duty: currents, voltage lost and temperature of "
                        + row.wire().wire(),
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
        steps.add(step.load() + " at " + Formats.percent(step.dutyFraction()) + " by "
                + (step.output().equals(step.load().value()) ? "its command input" : step.output())
                + ", all else as in " + readout.stateName(step.state())
                + ", which runs it hardest: solved and heated anew for this duty.");
        steps.add("The load takes " + Formats.amps(step.loadOnAmps()) + " while on, " + Formats.amps(step.loadAmps())
                + " on the mean; feed and return lose " + Formats.volts(step.dropVolts()) + " of the "
                + Formats.volts(step.limitVolts()) + " allowed.");
        DutyStep.OnWire wire = row.wire();
        steps.add(wire.wire() + " (" + wire.gauge().text() + ") carries " + Formats.amps(wire.onAmps())
                + " on, " + Formats.amps(wire.rmsAmps()) + " RMS, " + Formats.amps(wire.meanAmps())
                + " mean and runs at " + Formats.celsius(wire.celsius())
                + ". Wires are those from the protective device next to the load on.");
        wire.choice().ifPresent(choice -> {
            steps.add(
                    row.needs().isEmpty()
                            ? "No listed size serves; governed by " + row.governor() + "."
                            : "For this operation alone it needs " + row.needs() + ", governed by " + row.governor()
                                    + ": " + choice.governing().reason());
        });
        return steps;
    }
}
