package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.OperatingState;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.EnergyBalance;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/** The operating states: how far each solution got, and how well Kirchhoff's laws hold in it. */
final class StateSection {
    private static final List<Column> COLUMNS = List.of(
            Column.code("State"),
            Column.words("Name"),
            Column.words("Engine"),
            Column.words("Status"),
            Column.count("Islands", 0),
            Column.count("Loads drawing", 0),
            new Column("Residual current", Unit.AMP.symbol(), Column.Kind.NUMBER, 0, true),
            new Column("Residual voltage", Unit.VOLT.symbol(), Column.Kind.NUMBER, 0, true));

    private static final List<Column> ENERGY = List.of(
            Column.code("State"),
            Column.number("Sources give", Unit.WATT, 1),
            Column.number("Batteries take", Unit.WATT, 1),
            Column.number("Loads take", Unit.WATT, 1),
            Column.number("Lost in conductors", Unit.WATT, 2),
            Column.number("Lost in devices", Unit.WATT, 2),
            new Column("Unaccounted", Unit.WATT.symbol(), Column.Kind.NUMBER, 0, true));

    private static final List<Column> ISLANDS = List.of(
            Column.code("State"), Column.code("Part around"), Column.words("Status"), Column.words("What it means"));

    private final Analysis analysis;

    StateSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        List<Row> islands = new ArrayList<>();
        for (OperatingState state : analysis.states()) {
            Optional<Solution> solution = analysis.solution(state.id());
            rows.add(row(state, solution));
            solution.ifPresent(solved -> solved.islands().stream()
                    .filter(island -> island.powered() && island.status() != IslandStatus.SOLVED)
                    .forEach(island -> islands.add(islandRow(state, island))));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Operating states"));
        blocks.add(new Block.Prose(
                "Residuals, recomputed apart from the solver: the largest imbalance of currents at any point,"
                        + " and the largest |V - I R| of any branch with a resistance."));
        blocks.add(new Block.Table("states", COLUMNS, rows, "The harness has no operating state: nothing was solved."));
        if (!islands.isEmpty()) {
            blocks.add(new Block.Table("islands", ISLANDS, islands, ""));
        }
        List<Row> energy = analysis.states().stream()
                .flatMap(state ->
                        analysis
                                .solution(state.id())
                                .map(solved -> energyRow(state, EnergyBalance.of(solved)))
                                .stream())
                .toList();
        if (!energy.isEmpty()) {
            blocks.add(new Block.Prose("Power, as means over time. Contacts and chassis count as conductors; fuses,"
                    + " switches, relays, outputs and diodes as devices. What the last column shows is rounding."));
            blocks.add(new Block.Table("energy", ENERGY, energy, ""));
        }
        return blocks;
    }

    private static Row energyRow(OperatingState state, EnergyBalance energy) {
        return Row.of(
                Cell.text(state.name()).toned(Cell.Tone.STRONG),
                Cell.number(energy.givenWatts()),
                Cell.number(energy.chargingWatts()),
                Cell.number(energy.loadsWatts()),
                Cell.number(energy.conductorsWatts()),
                Cell.number(energy.devicesWatts()),
                residual(energy.missWatts()));
    }

    private static Row row(OperatingState state, Optional<Solution> solution) {
        IslandStatus status = solution.map(Solution::status).orElse(IslandStatus.NO_SOURCE);
        Cell words = Cell.text(words(status));
        return Row.of(
                Cell.text(state.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(state.name()),
                Cell.text(state.mode().name().toLowerCase(Locale.ROOT)),
                status == IslandStatus.SOLVED ? words : words.toned(Cell.Tone.ALERT),
                solution.map(each -> Cell.number(each.islands().size())).orElse(Cell.empty()),
                solution.map(each -> Cell.number(drawing(each))).orElse(Cell.empty()),
                solution.map(each -> residual(each.residualAmps())).orElse(Cell.empty()),
                solution.map(each -> residual(each.residualVolts())).orElse(Cell.empty()));
    }

    private static long drawing(Solution solution) {
        return solution.loads().values().stream()
                .filter(load -> Math.abs(load.amps()) > LoadSection.LEAST_AMPS)
                .count();
    }

    private static Cell residual(double value) {
        return Cell.number(value, value == 0 ? "0" : String.format(Locale.ROOT, "%.1e", value));
    }

    private static Row islandRow(OperatingState state, Island island) {
        return Row.of(
                Cell.text(state.id().value()),
                Cell.text(island.id()),
                Cell.missing(words(island.status())),
                Cell.text(island.sentence()));
    }

    static String words(IslandStatus status) {
        return status.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
