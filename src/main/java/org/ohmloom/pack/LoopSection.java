package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.study.LoopCharts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.model.StateId;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** Loops of the return network, and the current in each of their members. */
final class LoopSection {

    private static final List<Column> COLUMNS = List.of(
            Column.count("Loop", 0),
            Column.words("Conductors"),
            Column.number("Resistance", Unit.MILLIOHM, 2),
            Column.number("Stray", Unit.AMP, 3),
            Column.code("In"),
            new Column("Area", "cm²", Column.Kind.NUMBER, 0, true),
            Column.number("Inductance", Unit.MICROHENRY, 2),
            Column.number("Induced", Unit.MILLIVOLT, 3),
            Column.number("Drives", Unit.AMP, 3),
            Column.words("Intended"));

    private static final List<Column> MEMBERS = List.of(
            Column.count("Loop", 0),
            Column.count("Place", 0),
            Column.words("Member"),
            Column.words("State"),
            Column.number("Current along the loop", Unit.AMP, 3));

    private final Analysis analysis;

    LoopSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<LoopReading> loops = analysis.evidence().returns().loops();
        if (loops.isEmpty()) {
            return List.of();
        }
        Network drawn = analysis.evidence().drawn();
        List<Row> rows = new ArrayList<>();
        List<Row> members = new ArrayList<>();
        for (int k = 0; k < loops.size(); k++) {
            rows.add(row(k + 1, drawn, loops.get(k)));
            members.addAll(members(k + 1, drawn, loops.get(k)));
        }
        return List.of(
                new Block.Heading("Loops of the return network"),
                new Block.Prose(
                        "A minimum set of independent loops. Stray is the largest load return current in a member"
                                + " meant for signals, shield or case only. Induced: 2 pi f B A of the stated field; it drives its"
                                + " current over |R + j 2 pi f L|. Members follow in order, with their mean current along the loop in the"
                                + " state of the stray current, or the one with the largest current."),
                new Block.Table("loops", COLUMNS, rows, ""),
                new Block.Table("loop-members", MEMBERS, members, "No loop was solved in any state."));
    }

    private static Row row(int number, Network drawn, LoopReading loop) {
        return Row.of(
                Cell.number(number).toned(Cell.Tone.STRONG),
                Cell.text(LoopCharts.conductors(drawn, loop)),
                Cell.number(Unit.MILLIOHM.fromCanonical(loop.ohms())),
                loop.stray()
                        .map(stray -> Cell.number(stray.amps()).toned(Cell.Tone.ALERT))
                        .orElse(Cell.empty()),
                Cell.text(loop.stray().map(stray -> stray.member().value())),
                loop.enclosed()
                        .map(enclosed -> Cell.number(1e4 * enclosed.squareMetres()))
                        .orElse(Cell.empty()),
                Cell.number(loop.enclosed()
                        .map(LoopReading.Enclosed::henries)
                        .filter(OptionalDouble::isPresent)
                        .map(henries -> OptionalDouble.of(Unit.MICROHENRY.fromCanonical(henries.getAsDouble())))
                        .orElse(OptionalDouble.empty())),
                loop.field()
                        .map(field -> Cell.number(Unit.MILLIVOLT.fromCanonical(field.volts())))
                        .orElse(Cell.empty()),
                loop.field().map(field -> Cell.number(field.amps())).orElse(Cell.empty()),
                Cell.text(loop.intended()));
    }

    private static List<Row> members(int number, Network drawn, LoopReading loop) {
        Optional<StateId> state = ReturnReadings.state(loop, Optional.empty());
        List<Row> rows = new ArrayList<>();
        state.map(loop.ampsByState()::get).ifPresent(amps -> {
            for (int k = 0; k < amps.size(); k++) {
                rows.add(Row.of(
                        Cell.number(number).toned(Cell.Tone.STRONG),
                        Cell.number(k + 1),
                        Cell.text(Named.member(drawn, loop.loop().members().get(k))
                                .english()),
                        Cell.text(state.get().value()),
                        Cell.number(amps.get(k))));
            }
        });
        return rows;
    }
}
