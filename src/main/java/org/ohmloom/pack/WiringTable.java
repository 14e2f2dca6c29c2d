package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.wiring.WiringDiagram;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Bookmark;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** What stands beside the wiring diagram: its outline by circuit, and every wire on it as a table in a file. */
final class WiringTable {
    private static final List<Column> COLUMNS = List.of(
            Column.words("Circuit"),
            Column.words("Drawn under"),
            Column.count("Sheet", 0),
            Column.code("Field"),
            Column.code("Wire"),
            Column.code("From"),
            Column.code("To"),
            Column.code("Size"),
            Column.colour("Colour"),
            Column.number("Current", Unit.AMP, 2),
            Column.words("State"));

    private final WiringDiagram diagram;
    private final Harness harness;

    WiringTable(WiringDiagram diagram, Harness harness) {
        this.diagram = diagram;
        this.harness = harness;
    }

    List<Bookmark> bookmarks() {
        return diagram.titles().stream()
                .map(title -> new Bookmark(title.title(), title.sheet() - 1))
                .toList();
    }

    /** The table alone; it is in its file, not on a page. */
    Report report() {
        List<Row> rows = new ArrayList<>();
        diagram.rows().forEach(row -> rows.add(row(row)));
        return new Report(List.of(new Block.Table("", COLUMNS, rows, "").inFileOnly()), "");
    }

    private Row row(WiringDiagram.Row row) {
        return Row.of(
                Cell.text(row.wire().circuit()),
                Cell.text(row.circuit()),
                Cell.number(row.sheet()),
                Cell.text(row.zone()),
                Cell.text(row.wire().id().value()),
                Wording.end(row.wire().from()),
                Wording.end(row.wire().to()),
                Cell.text(row.size()),
                Wording.colour(row.wire()),
                row.amps().map(Cell::number).orElseGet(() -> Cell.text("")),
                Cell.text(row.state().map(state -> Named.state(harness, state))));
    }
}
