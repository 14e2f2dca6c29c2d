package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.form.BoardLegend;
import org.ohmloom.draw.form.BoardMap;
import org.ohmloom.draw.form.FormBoard;
import org.ohmloom.draw.form.LaidSegment;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** The first sheets of the form boards: how to print and join the tiles, a map of each board, and how each segment lies. */
final class FormBoardReport {
    private static final double MAP_HIGH_MM = 84;
    private static final String REMARK =
            "Form boards are at 1:1 when printed at actual size; the written lengths govern. Widths are finished diameters.";

    private static final List<Column> SEGMENTS = List.of(
            Column.code("Segment"),
            Column.code("From"),
            Column.code("To"),
            Column.number("Length", Unit.MILLIMETRE, 0),
            Column.number("Drawn", Unit.MILLIMETRE, 1),
            Column.number("Finished", Unit.MILLIMETRE, 1),
            Column.count("Folds", 0),
            Column.code("Board"),
            Column.words("Tiles"));

    private final Harness harness;
    private final List<FormBoard> boards;
    private final BoardOptions options;
    private final String paper;
    private final SceneFonts fonts;
    private final Routes routes;

    FormBoardReport(Analysis analysis, List<FormBoard> boards, BoardOptions options, String paper, SceneFonts fonts) {
        this.harness = analysis.harness();
        this.routes = analysis.evidence().routes();
        this.boards = boards;
        this.options = options;
        this.paper = paper;
        this.fonts = fonts;
    }

    /** What stands before the names of the tiles of a board: its number, when there are several. */
    static String prefix(List<FormBoard> boards, int board) {
        return boards.size() > 1 ? (board + 1) + "-" : "";
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        if (boards.isEmpty()) {
            blocks.add(new Block.Prose("The harness has no bundle segments: there is nothing to lay on a board."));
            return new Report(blocks, REMARK);
        }
        board(0, blocks);
        blocks.add(new Block.Heading(options.whole() ? "Printing" : "Printing and joining the tiles"));
        blocks.add(new Block.Points(options.whole() ? printing() : joining()));
        for (int k = 1; k < boards.size(); k++) {
            board(k, blocks);
        }
        blocks.add(new Block.Heading("Symbols"));
        blocks.add(new Block.Pictures(BoardLegend.all(fonts)));
        blocks.add(new Block.Heading("Segments"));
        blocks.add(new Block.Table("", SEGMENTS, segments(), ""));
        List<String> loose = loose();
        if (!loose.isEmpty()) {
            blocks.add(new Block.Heading("Not on a board"));
            blocks.add(new Block.Points(loose));
        }
        return new Report(blocks, REMARK);
    }

    private static List<String> printing() {
        return List.of(
                "Print at actual size (100 %), no fitting to the page.",
                "Measure both 100 mm bars before use; within 0.5 mm of 100 mm will do.");
    }

    private List<String> joining() {
        return List.of(
                "Print the tiles, which follow these first sheets, on " + paper
                        + " at actual size (100 %), no fitting to the page. Measure both 100 mm bars of a tile before"
                        + " use; within 0.5 mm of 100 mm will do.",
                "Cut each tile along its dashed line on the left and at the top, where there is one; lay it over its neighbours so"
                        + " that crosses lie on crosses, and glue. Names of neighbours stand in the margins; tiles with nothing on them are left out.",
                "Nail or staple the paper to the board; set pegs at the marked places; lay wires along the centre lines, which are"
                        + " as long as the segments. Ticks are 100 mm apart, the long ones 500 mm.");
    }

    private void board(int number, List<Block> blocks) {
        FormBoard board = boards.get(number);
        String heading = boards.size() > 1 ? "Board " + (number + 1) + ": " : "Board: ";
        blocks.add(new Block.Heading(heading + board.name()));
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact(
                "Board", Math.round(board.widthMm()) + " mm by " + Math.round(board.heightMm()) + " mm"));
        facts.add(new Block.Fact("Largest asked for", options.size().text()));
        if (!options.whole()) {
            facts.add(new Block.Fact("Tiles", board.tileNames().size() + " of " + paper));
        }
        facts.add(new Block.Fact("Segments", String.valueOf(board.segments().size())));
        facts.add(new Block.Fact(
                "Folded",
                String.valueOf(board.segments().stream()
                        .filter(each -> each.folds() > 0)
                        .count())));
        blocks.add(new Block.Facts(facts));
        Scene map = BoardMap.of(board, prefix(boards, number), fonts, Block.Pictures.WIDTH_MM - 1, MAP_HIGH_MM);
        blocks.add(new Block.Pictures(List.of(map)));
        if (!board.remarks().isEmpty()) {
            blocks.add(new Block.Points(board.remarks()));
        }
    }

    private List<Row> segments() {
        List<Row> rows = new ArrayList<>();
        for (int k = 0; k < boards.size(); k++) {
            String prefix = prefix(boards, k);
            for (LaidSegment laid : boards.get(k).segments()) {
                BundleSegment segment = harness.segments().get(laid.segment());
                rows.add(Row.of(
                        Cell.text(segment.id().value()).toned(Cell.Tone.STRONG),
                        Cell.text(segment.from().value()),
                        Cell.text(segment.to().value() + (laid.opened() ? " (open)" : "")),
                        Cell.number(Unit.MILLIMETRE.fromCanonical(segment.lengthMetres())),
                        Cell.number(laid.drawnMm()),
                        Cell.number(laid.widthMm()),
                        Cell.number(laid.folds()),
                        Cell.text(String.valueOf(k + 1)),
                        Cell.text(
                                options.whole()
                                        ? "whole"
                                        : String.join(
                                                ", ",
                                                laid.tiles().stream()
                                                        .map(each -> prefix + each)
                                                        .toList()))));
            }
        }
        return rows;
    }

    /** What cannot be laid because it has no place. */
    private List<String> loose() {
        List<String> loose = new ArrayList<>();
        String connectors = String.join(
                ", ",
                harness.connectors().all().stream()
                        .filter(each -> harness.breakout(each).isEmpty())
                        .map(each -> each.id().value())
                        .toList());
        if (!connectors.isEmpty()) {
            loose.add("Connectors without a place on the harness: " + connectors + ".");
        }
        String wires = String.join(
                ", ",
                harness.wires().all().stream()
                        .filter(wire -> !wire.existing() && routes.of(wire.id()).isEmpty())
                        .map(wire -> wire.id().value())
                        .toList());
        if (!wires.isEmpty()) {
            loose.add("Wires without a way over the segments: " + wires + ".");
        }
        return loose;
    }
}
