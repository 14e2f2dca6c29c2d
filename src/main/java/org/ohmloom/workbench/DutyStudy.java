package org.ohmloom.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** Wires whose current is switched: what flows while on, what heats and what the battery gives are three numbers. */
final class DutyStudy implements Study<DutyStudy.Row> {

    /** On-state, RMS and mean current that differ by less than this share count as one. */
    private static final double DIFFERS = 0.005;

    /**
     * A wire in a state.
     *
     * @param wire   the wire
     * @param state  the state
     * @param flow   what flows
     * @param rating what it may carry, if known
     */
    record Row(Wire wire, OperatingState state, BranchFlow flow, Optional<WireRating> rating) {

        OptionalDouble mayCarryAmps() {
            return rating.flatMap(WireRating::ampacity).map(Ampacity::limitAmps).stream()
                    .mapToDouble(Double::doubleValue)
                    .findFirst();
        }
    }

    @Override
    public String key() {
        return "duty";
    }

    @Override
    public String title() {
        return "Duty";
    }

    @Override
    public String about() {
        return "Wires with a switched current: on-state, RMS and mean, with what each is for";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Wire", "Identity of the wire", 7, row -> row.wire()
                        .id()
                        .value()),
                Column.text("State", "Operating state", 18, row -> row.state().name()),
                Column.number(
                        "On",
                        "A",
                        "Largest current at any moment: for the drop and for what devices carry",
                        row -> CellText.of(Math.abs(row.flow().onAmps()))),
                Column.number(
                        "RMS",
                        "A",
                        "Root mean square current: what heats the conductor",
                        row -> CellText.of(row.flow().rmsAmps())),
                Column.number(
                        "Mean",
                        "A",
                        "Mean current: what the battery gives",
                        row -> CellText.of(Math.abs(row.flow().amps()))),
                Column.number(
                        "Drop",
                        "V",
                        "Lost along the wire while on",
                        row -> CellText.of(Math.abs(row.flow().onDropVolts()))),
                Column.number("May carry", "A", "Continuous, where it lies", row -> CellText.of(row.mayCarryAmps())));
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (OperatingState state : readout.harness().states().all()) {
            if (readout.state().isPresent() && !readout.state().get().equals(state.id())) {
                continue;
            }
            readout.analysis()
                    .flatMap(results -> results.solution(state.id()))
                    .ifPresent(solution -> readout.harness().wires().all().forEach(wire -> solution.flow(
                                    new BranchId(wire.id().value()))
                            .filter(DutyStudy::isSwitched)
                            .ifPresent(flow -> rows.add(new Row(wire, state, flow, readout.rating(wire.id()))))));
        }
        rows.sort(Comparator.comparing((Row row) -> row.wire().id())
                .thenComparing(row -> row.state().id()));
        return rows;
    }

    private static boolean isSwitched(BranchFlow flow) {
        double on = Math.abs(flow.onAmps());
        return on - Math.abs(flow.amps()) > DIFFERS * on && on > 1e-6;
    }

    @Override
    public ElementId id(Row row) {
        return row.wire().id();
    }

    @Override
    public String nothing(Readout readout) {
        if (readout.harness().states().all().isEmpty()) {
            return "Add an operating state first. Then give an output of a control unit or a solid-state output a duty"
                    + " below 100 % in it, and its frequency.";
        }
        return "No wire carries a switched current. Give an output of a control unit or a solid-state output a duty below"
                + " 100 % in an operating state, and its driver a frequency and the way of its freewheel current.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        List<BarRow> bars = rows(readout).stream()
                .filter(each -> each.state().id().equals(row.state().id()))
                .map(DutyStudy::bars)
                .toList();
        BarChart chart = new BarChart(
                "Switched currents",
                row.state().name(),
                Dimension.CURRENT,
                List.of("on", "RMS", "mean"),
                "may carry",
                bars);
        return Optional.of(new Picture(
                "Bars of on-state, RMS and mean current of " + TradeWords.count(bars.size(), "wire") + " in "
                        + row.state().name(),
                (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    private static BarRow bars(Row row) {
        return new BarRow(
                row.wire().id() + " " + TradeWords.signal(row.wire().signalClass()),
                List.of(
                        OptionalDouble.of(Math.abs(row.flow().onAmps())),
                        OptionalDouble.of(row.flow().rmsAmps()),
                        OptionalDouble.of(Math.abs(row.flow().amps()))),
                row.mayCarryAmps(),
                Optional.of(row.wire().id().value()));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        double on = Math.abs(row.flow().onAmps());
        List<String> steps = new ArrayList<>();
        steps.add(row.wire().id() + " in " + row.state().name() + ":");
        steps.add("On-state " + Formats.amps(on) + ": the largest current at any moment; the drop of "
                + Formats.volts(Math.abs(row.flow().onDropVolts()))
                + " and what contacts and devices carry are judged by it.");
        steps.add("RMS " + Formats.amps(row.flow().rmsAmps()) + ": heats the conductor with "
                + Formats.watts(row.flow().watts())
                + row.mayCarryAmps().stream()
                        .mapToObj(limit -> "; it may carry " + Formats.amps(limit) + ".")
                        .findFirst()
                        .orElse("."));
        steps.add("Mean " + Formats.amps(Math.abs(row.flow().amps())) + ": what the sources give over time.");
        return steps;
    }
}
