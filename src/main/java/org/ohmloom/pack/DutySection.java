package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.OutputDuty;
import org.ohmloom.model.OperatingState;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Ripple;
import org.ohmloom.units.Unit;

/** Outputs run at a duty: on-state, RMS and mean current of feed, load and freewheel path, and the ripple. */
final class DutySection {

    private static final List<Column> COLUMNS = List.of(
            Column.words("State"),
            Column.code("Output"),
            Column.number("Duty", Unit.PERCENT, 0),
            Column.number("Frequency", Unit.HERTZ, 0),
            Column.code("Clock"),
            Column.words("Current of"),
            Column.number("On", Unit.AMP, 2),
            Column.number("RMS", Unit.AMP, 2),
            Column.number("Mean", Unit.AMP, 2),
            Column.number("Ripple from", Unit.AMP, 2),
            Column.number("To", Unit.AMP, 2));

    private final Analysis analysis;

    DutySection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        for (OperatingState state : analysis.states()) {
            analysis.solution(state.id()).stream()
                    .flatMap(solution -> OutputDuty.of(solution).stream())
                    .forEach(output -> {
                        rows.add(row(state, output, "feed", output.feed(), Optional.empty()));
                        output.loads().forEach(each -> {
                            rows.add(row(state, output, "load " + each.load(), each.flow(), each.ripple()));
                            each.freewheel()
                                    .ifPresent(flow -> rows.add(
                                            row(state, output, "freewheel of " + each.load(), flow, Optional.empty())));
                        });
                    });
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading("Outputs run at a duty"),
                new Block.Prose(
                        "Drop and devices are judged by the on-state current, which is the worst coincidence of all"
                                + " outputs with the ripple included; conductors are heated by the RMS current; the battery gives"
                                + " the mean."),
                new Block.Table("duty", COLUMNS, rows, ""));
    }

    private static Row row(
            OperatingState state, OutputDuty output, String what, BranchFlow flow, Optional<Ripple> ripple) {
        return Row.of(
                Cell.text(state.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(output.output().value()),
                Cell.number(100 * output.pulse().dutyFraction()),
                Cell.number(output.pulse().frequencyHertz()),
                Cell.text(output.pulse().clock()),
                Cell.text(what),
                Cell.number(Math.abs(flow.onAmps())),
                Cell.number(flow.rmsAmps()),
                Cell.number(Math.abs(flow.amps())),
                ripple.map(each -> Cell.number(each.valleyAmps())).orElse(Cell.empty()),
                ripple.map(each -> Cell.number(each.peakAmps())).orElse(Cell.empty()));
    }
}
