package org.ohmloom.pack.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.draw.Scene;
import org.ohmloom.units.Require;

/** What a report is made of, from top to bottom. */
public sealed interface Block {

    /**
     * A heading; also a bookmark of the PDF.
     *
     * @param text    what it says
     * @param element id of the element of the harness that is described below it
     */
    record Heading(String text, Optional<String> element) implements Block {

        /** A heading over anything else. */
        public Heading(String text) {
            this(text, Optional.empty());
        }
    }

    /**
     * A paragraph.
     *
     * @param text what it says
     */
    record Prose(String text) implements Block {}

    /**
     * A list of sentences, each with a mark before it.
     *
     * @param sentences what it says
     */
    record Points(List<String> sentences) implements Block {
        public Points {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * A framed notice that must be read.
     *
     * @param title     heading of the frame
     * @param sentences what it says
     */
    record Notice(String title, List<String> sentences) implements Block {
        public Notice {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * Named values, several to a line.
     *
     * @param facts the values
     */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A named value.
     *
     * @param label what it is
     * @param value what it says
     */
    record Fact(String label, String value) {}

    /**
     * Named values beside a picture, and tables below them where they are short enough; longer ones follow below the picture.
     *
     * @param picture the picture, at the left
     * @param facts   the values
     * @param tables  the tables
     */
    record Beside(Scene picture, List<Fact> facts, List<Table> tables) implements Block {
        public Beside {
            facts = List.copyOf(facts);
            tables = List.copyOf(tables);
        }

        /** Named values alone. */
        public Beside(Scene picture, List<Fact> facts) {
            this(picture, facts, List.of());
        }
    }

    /**
     * Blocks that stay on one page where one page holds them: a heading with all of its table.
     *
     * @param blocks the blocks
     */
    record Kept(List<Block> blocks) implements Block {
        public Kept {
            blocks = List.copyOf(blocks);
        }
    }

    /** The blocks with those that are kept together one by one, and tables beside a picture behind it. */
    static List<Block> flat(List<Block> blocks) {
        return blocks.stream().flatMap(Block::parts).toList();
    }

    private static Stream<Block> parts(Block block) {
        if (block instanceof Kept kept) {
            return flat(kept.blocks()).stream();
        }
        return block instanceof Beside beside
                ? Stream.concat(Stream.of(beside), beside.tables().stream())
                : Stream.of(block);
    }

    /**
     * Pictures side by side, as many to a line as fit; none is torn apart by the end of a page.
     *
     * @param scenes the pictures, each no wider than {@link #WIDTH_MM}
     */
    record Pictures(List<Scene> scenes) implements Block {

        /** The width between the frames of a sheet, mm. */
        public static final double WIDTH_MM = 260;

        /** Width of a picture of which two stand side by side, mm. */
        public static final double HALF_MM = 128;

        public Pictures {
            scenes = List.copyOf(scenes);
            scenes.forEach(scene ->
                    Require.that(scene.widthMm() <= WIDTH_MM, "a picture %s mm wide on a sheet", scene.widthMm()));
        }
    }

    /**
     * A table; its rows without the headings and sums are written to a file beside the page as well.
     *
     * @param file    last part of that file's name, empty for the report's own; tables of one file have the same columns
     * @param columns columns from the left
     * @param rows    rows
     * @param none    sentence printed in the place of a table without rows
     */
    record Table(String file, List<Column> columns, List<Row> rows, String none) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            for (Row row : rows) {
                Require.that(
                        row.kind() == Row.Kind.GROUP || row.cells().size() == columns.size(),
                        "a row of %s cells under %s columns",
                        row.cells().size(),
                        columns.size());
            }
        }

        /** The same only in its file, not on the page. */
        public FileOnly inFileOnly() {
            return new FileOnly(this);
        }

        /** The rows that are things of the list. */
        List<Row> items() {
            return rows.stream().filter(row -> row.kind() == Row.Kind.ITEM).toList();
        }
    }

    /**
     * A table that is written to its file only: what is too long to read on paper.
     *
     * @param table the table
     */
    record FileOnly(Table table) implements Block {}
}
