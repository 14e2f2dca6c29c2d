package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.length.CutLength;
import org.ohmloom.bundle.length.LengthPart;
import org.ohmloom.bundle.length.LengthPart.Kind;
import org.ohmloom.model.Wire;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** What the cut lengths are made of, one wire a row, and where each allowance is from. */
final class LengthTables {
    private static final List<Column> COLUMNS = List.of(
            Column.code("Wire").mentioning(),
            column("Entered"),
            column("Route"),
            column("Twist"),
            column("Into connectors"),
            column("Strip"),
            column("Service loops"),
            column("Re-termination"),
            column("Drip loops"),
            column("In splices"),
            column("Rounded up"),
            column("Cut to"),
            column("May be longer"));

    private static final List<Column> SOURCES = List.of(Column.words("Part of the length"), Column.words("From"));

    private static final List<Kind> PARTS = List.of(
            Kind.ENTERED,
            Kind.ROUTE,
            Kind.TWIST,
            Kind.CONNECTOR_DEPTH,
            Kind.STRIP,
            Kind.SERVICE_LOOP,
            Kind.RETERMINATION,
            Kind.DRIP_LOOP,
            Kind.SPLICE_OVERLAP,
            Kind.ROUNDING);

    private static final double NOISE_MM = 1e-6;
    private static final String ROW = ", row ";

    private final Analysis analysis;
    private final List<Wire> wires;

    LengthTables(Analysis analysis, List<Wire> wires) {
        this.analysis = analysis;
        this.wires = wires.stream().sorted(Comparator.comparing(Wire::id)).toList();
    }

    List<Block> blocks() {
        if (wires.isEmpty()) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        Map<Kind, Set<String>> sources = new TreeMap<>();
        Set<String> tolerances = new TreeSet<>();
        for (Wire wire : wires) {
            analysis.evidence().lengths().of(wire.id()).ifPresent(length -> {
                rows.add(row(length));
                length.parts().stream()
                        .filter(part -> part.kind() != Kind.ROUTE)
                        .forEach(part -> sources.computeIfAbsent(part.kind(), kind -> new TreeSet<>())
                                .add(part.source()));
                tolerances.add(length.tolerance().citation().text());
            });
        }
        List<Row> from = new ArrayList<>();
        sources.forEach((kind, texts) ->
                together(texts).forEach(text -> from.add(Row.of(Cell.text(kind.words()), Cell.text(text)))));
        together(tolerances)
                .forEach(text -> from.add(Row.of(Cell.text("may be longer, never shorter"), Cell.text(text))));
        return List.of(
                new Block.Heading("What the lengths are made of"),
                new Block.Table("lengths", COLUMNS, rows, "No wire has a length."),
                new Block.Table("length-sources", SOURCES, from, "No wire has a length."));
    }

    private static Row row(CutLength length) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.text(length.wire().value()));
        for (Kind kind : PARTS) {
            double sum = length.parts().stream()
                    .filter(part -> part.kind() == kind)
                    .mapToDouble(LengthPart::millimetres)
                    .sum();
            cells.add(sum < NOISE_MM ? Cell.empty() : Cell.number(sum, shown(sum)));
        }
        cells.add(Cell.number(Unit.MILLIMETRE.fromCanonical(length.metres())));
        cells.add(Cell.number(Unit.MILLIMETRE.fromCanonical(length.toleranceMetres())));
        return Row.of(cells.toArray(Cell[]::new));
    }

    /** Whole millimetres, or one decimal where it is needed for the parts to sum up on paper. */
    private static String shown(double millimetres) {
        boolean whole = Math.abs(millimetres - Math.rint(millimetres)) < NOISE_MM;
        return String.format(Locale.ROOT, whole ? "%.0f" : "%.1f", millimetres);
    }

    /** Sources that differ in one place only, said once: what they share behind it, or before the row. */
    private static List<String> together(Set<String> sources) {
        Map<String, List<String>> shared = new LinkedHashMap<>();
        for (String source : sources) {
            int row = source.lastIndexOf(ROW);
            int tail = source.indexOf("; ");
            String key = tail > 0 ? source.substring(tail) : row > 0 ? source.substring(0, row + ROW.length()) : "";
            String own = tail > 0 ? source.substring(0, tail) : row > 0 ? source.substring(row + ROW.length()) : source;
            shared.computeIfAbsent(key, each -> new ArrayList<>()).add(own);
        }
        List<String> texts = new ArrayList<>();
        shared.forEach((key, own) ->
                texts.add(key.endsWith(ROW) ? key + String.join("; ", own) : String.join(", ", own) + key));
        return texts;
    }

    private static Column column(String head) {
        return Column.number(head, Unit.MILLIMETRE, 0);
    }
}
