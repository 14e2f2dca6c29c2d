package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.study.Named;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Wire;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Requirement;
import org.ohmloom.tables.Citation;
import org.ohmloom.units.Unit;

/** What each wire carries at worst and may carry, the most loaded first; then why each needs its size. */
final class WireSection {
    private static final List<Column> COLUMNS = List.of(
            Column.code("Wire").home(),
            Column.code("Size"),
            Column.number("Length", Unit.METRE, 2),
            Column.code("Worst state"),
            Column.number("RMS current", Unit.AMP, 2),
            Column.number("Short peak", Unit.AMP, 0),
            Column.number("May carry", Unit.AMP, 1),
            Column.number("Loaded to", Unit.PERCENT, 0),
            Column.number("Conductor", Unit.DEGREE_CELSIUS, 0),
            Column.number("Stands", Unit.DEGREE_CELSIUS, 0),
            Column.number("Drop", Unit.VOLT, 3),
            Column.number("Heat", Unit.WATT, 2),
            Column.code("Needs"),
            Column.code("Governed by"),
            Column.words("Sources"));

    private static final List<Column> REASONS =
            List.of(Column.code("Wire"), Column.code("Needs"), Column.code("Governed by"), Column.words("Because"));

    private final Analysis analysis;
    private final Sources sources;

    WireSection(Analysis analysis, Sources sources) {
        this.analysis = analysis;
        this.sources = sources;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        List<Row> reasons = new ArrayList<>();
        analysis.ratings().values().stream()
                .sorted(Comparator.comparingDouble(WireSection::loading)
                        .reversed()
                        .thenComparing(rating -> rating.wire().id()))
                .forEach(rating -> rows.add(row(rating)));
        analysis.conductors().forEach((id, choice) -> {
            Requirement governing = choice.governing();
            reasons.add(Row.of(
                    Cell.text(id.value()).toned(Cell.Tone.STRONG),
                    needs(choice),
                    Cell.text(governing.governor().words()),
                    Cell.text(Wording.printed(governing.reason()))));
        });
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Wires, most loaded first"));
        blocks.add(new Block.Prose(
                "\"May carry\" is the table's ampacity after ambient and bundle. \"Needs\" is the smallest"
                        + " size that meets every requirement; it stands out where the wire is smaller. Sources are listed at"
                        + " the end."));
        blocks.add(new Block.Table("wires", COLUMNS, rows, "The harness has no wires."));
        if (!reasons.isEmpty()) {
            blocks.add(new Block.Heading("Why each wire needs its size"));
            blocks.add(new Block.Table("conductor-choice", REASONS, reasons, ""));
        }
        return blocks;
    }

    /** Current over ampacity, as a fraction; 0 where the ampacity is unknown. */
    private static double loading(WireRating rating) {
        if (rating.ampacity().isEmpty() || rating.worstAmps() == 0) {
            return 0;
        }
        double limit = rating.ampacity().get().limitAmps();
        return limit > 0 ? rating.worstAmps() / limit : Double.POSITIVE_INFINITY;
    }

    private Row row(WireRating rating) {
        Wire wire = rating.wire();
        Optional<Ampacity> ampacity = rating.ampacity();
        Optional<ConductorChoice> choice =
                Optional.ofNullable(analysis.conductors().get(wire.id()));
        double loading = loading(rating);
        Cell percent = ampacity.isPresent() ? Cell.number(100 * loading) : Cell.missing("unknown");
        Cell celsius = Cell.number(rating.celsius());
        boolean hot =
                ampacity.filter(each -> rating.celsius() > each.limitCelsius()).isPresent();
        return Row.of(
                Cell.text(wire.id().value()).toned(Cell.Tone.STRONG),
                rating.provisional() ? Cell.missing(Wording.NOT_CHOSEN) : Cell.text(Wording.size(rating.gauge())),
                rating.lengthMetres().isPresent() ? Cell.number(rating.lengthMetres()) : Cell.missing("unknown"),
                Cell.text(rating.worstState().map(state -> Named.state(analysis.harness(), state))),
                Cell.number(rating.worstAmps()),
                rating.hasShortPeak() ? Cell.number(rating.peakAmps()) : Cell.empty(),
                ampacity.map(each -> Cell.number(each.limitAmps())).orElseGet(() -> Cell.missing("unknown")),
                loading > 1 ? percent.toned(Cell.Tone.ALERT) : percent,
                hot ? celsius.toned(Cell.Tone.ALERT) : celsius,
                ampacity.map(each -> Cell.number(each.limitCelsius())).orElse(Cell.empty()),
                Cell.number(rating.worstDropVolts()),
                Cell.number(rating.worstWatts()),
                choice.map(WireSection::needs)
                        .map(cell -> tooSmall(wire, choice) ? cell.toned(Cell.Tone.ALERT) : cell)
                        .orElse(Cell.empty()),
                Cell.text(choice.map(each -> each.governing().governor().words())),
                Cell.text(sources.marks(citations(rating, choice))));
    }

    private static boolean tooSmall(Wire wire, Optional<ConductorChoice> choice) {
        return wire.gauge().isPresent()
                && choice.flatMap(ConductorChoice::gauge)
                        .filter(needed ->
                                needed.nominalAreaMm2() > wire.gauge().get().nominalAreaMm2())
                        .isPresent();
    }

    private static Cell needs(ConductorChoice choice) {
        return choice.gauge().map(Wording::size).map(Cell::text).orElseGet(() -> Cell.missing("none listed serves"));
    }

    private static List<Citation> citations(WireRating rating, Optional<ConductorChoice> choice) {
        List<Citation> all = new ArrayList<>();
        rating.resistance().ifPresent(all::add);
        rating.ampacity().ifPresent(ampacity -> {
            all.add(ampacity.base().citation());
            ampacity.factors().forEach(factor -> all.add(factor.citation()));
        });
        choice.ifPresent(each -> all.add(each.governing().citation()));
        return all;
    }
}
