package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.units.Unit;

/** What reaches each load: first in its worst state, the smallest margin on top; then in every state. */
final class LoadSection {
    /** Currents below this, A, count as none. */
    static final double LEAST_AMPS = 1e-6;

    private static final List<Column> COLUMNS = List.of(
            Column.code("Load").mentioning(),
            Column.words("Name"),
            Column.words("State"),
            Column.number("Current", Unit.AMP, 2),
            Column.number("Voltage", Unit.VOLT, 2),
            Column.number("Feed drop", Unit.VOLT, 3),
            Column.number("Return drop", Unit.VOLT, 3),
            Column.number("In contacts", Unit.VOLT, 3),
            Column.number("In devices", Unit.VOLT, 3),
            Column.number("Drop", Unit.VOLT, 3),
            Column.number("Limit", Unit.VOLT, 3),
            Column.number("Margin", Unit.VOLT, 3),
            Column.number("Mean current", Unit.AMP, 2),
            Column.words("Judged"),
            Column.code("From source"));

    /** What reaches a load in one state. */
    private record Case(OperatingState state, LoadVolts volts) {
        double marginVolts() {
            return volts.limitVolts() - volts.onDropVolts();
        }
    }

    private final Analysis analysis;
    private final Harness harness;

    LoadSection(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
    }

    /** What reaches each load that a state asks on and that draws current, in the order of their ids. */
    static List<LoadVolts> running(Analysis analysis, OperatingState state) {
        return analysis.solution(state.id()).stream()
                .flatMap(solution -> solution.loads().values().stream())
                .filter(volts -> state.asksOn(volts.load()) && Math.abs(volts.amps()) > LEAST_AMPS)
                .toList();
    }

    List<Block> blocks() {
        TreeMap<ComponentId, Case> worst = new TreeMap<>();
        List<Row> all = new ArrayList<>();
        for (OperatingState state : analysis.states()) {
            List<Row> rows = new ArrayList<>();
            for (LoadVolts volts : running(analysis, state)) {
                Case found = new Case(state, volts);
                worst.merge(volts.load(), found, (a, b) -> b.marginVolts() < a.marginVolts() ? b : a);
                rows.add(row(found));
            }
            if (!rows.isEmpty()) {
                all.add(Row.group(state.name()));
                all.addAll(rows);
            }
        }
        List<Row> ranked = worst.values().stream()
                .sorted(Comparator.comparingDouble(Case::marginVolts))
                .map(this::row)
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Loads in their worst state, smallest margin first"));
        blocks.add(new Block.Prose("While everything switched at a duty is on: feed and return drop add up to source"
                + " voltage less load voltage, contacts and devices are portions of them, and the drop is judged against"
                + " the limit. The mean current is the one over time."));
        blocks.add(new Block.Table("loads-worst", COLUMNS, ranked, "No load draws current in any state."));
        if (analysis.states().size() > 1 && !all.isEmpty()) {
            blocks.add(new Block.Heading("Loads in every state"));
            blocks.add(new Block.Table("loads", COLUMNS, all, ""));
        }
        return blocks;
    }

    private Row row(Case found) {
        LoadVolts volts = found.volts();
        boolean over = found.marginVolts() < 0;
        Cell margin = Cell.number(found.marginVolts());
        return Row.of(
                Cell.text(volts.load().value()).toned(Cell.Tone.STRONG),
                Cell.text(harness.components().find(volts.load()).map(load -> load.name())),
                Cell.text(found.state().name()),
                Cell.number(volts.on().amps()),
                Cell.number(volts.on().volts()),
                Cell.number(volts.on().feedDropVolts()),
                Cell.number(volts.on().returnDropVolts()),
                Cell.number(volts.on().contactDropVolts()),
                Cell.number(volts.on().deviceDropVolts()),
                Cell.number(volts.onDropVolts()),
                Cell.number(volts.limitVolts()),
                over ? margin.toned(Cell.Tone.ALERT) : margin,
                Cell.number(volts.amps()),
                over ? Cell.missing("over limit") : Cell.text("within"),
                Cell.text(volts.reference().value()));
    }
}
