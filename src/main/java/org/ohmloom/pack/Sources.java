package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.tables.Citation;

/** Numbers the sources a report rests on, so that its tables can name them shortly: S1, S2 and so on. */
final class Sources {
    private static final List<Column> COLUMNS = List.of(
            Column.code("Source"),
            Column.words("Document"),
            Column.words("Edition"),
            Column.words("Table or clause"),
            Column.words("Row"),
            Column.words("Status"));

    private final Map<Citation, String> marks = new LinkedHashMap<>();

    /** The mark of a source. */
    String mark(Citation citation) {
        return marks.computeIfAbsent(citation, key -> "S" + (marks.size() + 1));
    }

    /** The marks of several sources, each once. */
    String marks(List<Citation> citations) {
        return citations.stream().map(this::mark).distinct().collect(Collectors.joining(" "));
    }

    /** The list of all sources marked so far. */
    Block.Table table() {
        List<Row> rows = new ArrayList<>();
        marks.forEach((citation, mark) -> rows.add(Row.of(
                Cell.text(mark).toned(Cell.Tone.STRONG),
                Cell.text(citation.document().equals("none") ? "" : citation.document()),
                Cell.text(citation.edition().equals("none") ? "" : citation.edition()),
                Cell.text(citation.table()),
                Cell.text(Wording.printed(citation.row())),
                Cell.text(citation.status().words()))));
        return new Block.Table("sources", COLUMNS, rows, "No table was used.");
    }
}
