package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.heat.MethodComparison;
import org.ohmloom.heat.SkinCheck;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.heat.balance.TimeToLimit;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** What the published table and the heat balance each allow every wire, and how far apart they are. */
final class MethodSection {

    private static final List<Column> COLUMNS = List.of(
            Column.code("Wire"),
            Column.code("Size"),
            Column.number("Carries", Unit.AMP, 2),
            Column.number("By the table", Unit.AMP, 1),
            Column.number("By heat balance", Unit.AMP, 1),
            Column.number("Apart", Unit.PERCENT, 0),
            Column.code("Designed to"),
            Column.number("Runs at", Unit.DEGREE_CELSIUS, 0),
            Column.number("Time constant", Unit.SECOND, 0),
            Column.number("To limit", Unit.SECOND, 0),
            Column.number("Short state", Unit.DEGREE_CELSIUS, 0),
            Column.words("Skin depth"),
            Column.fileOnly("Table"),
            Column.fileOnly("Heat balance"));

    private final Analysis analysis;

    MethodSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        analysis.ratings().values().forEach(rating -> rating.ampacity()
                .flatMap(limit -> limit.comparison())
                .ifPresent(comparison -> rows.add(row(rating, comparison))));
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading("What wires may carry, by table and by heat balance"),
                new Block.Prose(
                        "Above 0 % the heat balance allows more than the table: the unsafe side. Nothing is kept in"
                                + " reserve in the figure of the heat balance. The time to the limit is that at twice what the"
                                + " wire may carry, from where it runs; a short state is one too short to warm it through."
                                + " Skin depth is named where it adds heat."),
                new Block.Table("methods", COLUMNS, rows, ""));
    }

    private static Row row(WireRating rating, MethodComparison comparison) {
        OptionalDouble apart = comparison.apartFraction();
        WireTemperature temperature = rating.temperature();
        return Row.of(
                Cell.text(rating.wire().id().value()).toned(Cell.Tone.STRONG),
                Cell.text(Wording.size(rating.gauge())),
                Cell.number(rating.worstAmps()),
                Cell.number(comparison.tableAmps()),
                Cell.number(comparison.balanceAmps()),
                apart.isPresent() ? Cell.number(100 * apart.getAsDouble()) : Cell.empty(),
                Cell.text(comparison.byBalance() ? "heat balance" : "table"),
                Cell.number(temperature.heat().celsius()),
                Cell.number(temperature.timeConstantSeconds()),
                Cell.number(temperature.overload().map(TimeToLimit::seconds).orElse(OptionalDouble.empty())),
                temperature.shortPeak().map(peak -> Cell.number(peak.celsius())).orElse(Cell.empty()),
                Cell.text(temperature.skin().stream()
                        .filter(SkinCheck::matters)
                        .map(SkinCheck::words)
                        .collect(Collectors.joining("; "))),
                Cell.text(Wording.printed(comparison.tableWords())),
                Cell.text(Wording.printed(comparison.balanceWords())));
    }
}
