package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;

/**
 * The printed harness drawing: the board on as many sheets as it needs to stay legible, then the connectors from the wire
 * side with their pin tables. Frame after ISO 5457, title block after ISO 7200, lettering never below 1.8 mm (ISO 3098).
 */
public final class DrawingSheet {

    private static final double MOST_SCALE = 1.4;
    private static final String BOARD_TYPE = "Harness drawing";
    private static final String CONNECTOR_TYPE = "Harness drawing, connectors";

    private final Lettering lettering;

    /** Sheets lettered with the drawing font. */
    public DrawingSheet(SceneFonts fonts) {
        this.lettering = new Lettering(fonts);
    }

    /** The sheets of a harness with its results, on one size of paper, in order. */
    public List<Scene> sheets(Harness harness, Analysis analysis, Paper paper) {
        return sheets(harness, Optional.of(analysis), paper);
    }

    /** The sheets of a harness; without results no sizes but the wires' own are shown. */
    public List<Scene> sheets(Harness harness, Optional<Analysis> analysis, Paper paper) {
        SheetForm form = new SheetForm(harness.titleBlock(), paper, lettering);
        Extent area = form.area();
        Figures figures = new Figures(harness, analysis, Optional.empty(), SceneOptions.Numbers.SIZE);
        List<List<Item>> boards = Circuit.suits(harness)
                ? circuit(new Circuit(harness, figures, lettering), area)
                : boards(board(harness, analysis), area);
        List<List<Item>> connectors = new ConnectorSheets(harness, figures, lettering).sheets(area);
        if (boards.isEmpty() && connectors.isEmpty()) {
            boards = List.of(List.of());
        }
        int count = boards.size() + connectors.size();
        List<Scene> sheets = new ArrayList<>();
        for (List<Item> each : boards) {
            sheets.add(form.sheet(each, BOARD_TYPE, sheets.size() + 1, count));
        }
        for (List<Item> each : connectors) {
            sheets.add(form.sheet(each, CONNECTOR_TYPE, sheets.size() + 1, count));
        }
        return sheets;
    }

    private BoardMaker board(Harness harness, Optional<Analysis> analysis) {
        SceneOptions options = new SceneOptions(SceneOptions.Numbers.SIZE, false);
        return new BoardMaker(harness, analysis, Optional.empty(), options, false, lettering);
    }

    /** A harness without bundle segments: its circuit, or only its parts when that does not fit on the paper. */
    private List<List<Item>> circuit(Circuit circuit, Extent area) {
        List<Item> key = circuit.legend(area.widthMm());
        double keyMm = Piece.bounds(key).map(extent -> extent.heightMm() + 4).orElse(0.0);
        double room = area.heightMm() - keyMm;
        Optional<List<List<Item>>> pieces = circuit.pieces(area.widthMm(), room, 1);
        if (pieces.isEmpty()) {
            return cards(circuit.cards(), "Parts; their circuit is too large for this paper, see the tables", area);
        }
        List<List<Item>> sheets = new ArrayList<>();
        for (List<Item> piece : pieces.get()) {
            List<Item> items = new ArrayList<>(fitted(piece, area, room));
            Placement below = Placement.moved(area.leftMm(), area.bottomMm() - keyMm + 4);
            key.forEach(item -> items.add(item.placed(below)));
            sheets.add(items);
        }
        sheets.addAll(cards(circuit.unwired(), Montage.UNPLACED, area));
        return sheets;
    }

    private List<List<Item>> boards(BoardMaker maker, Extent area) {
        List<Item> key = maker.legend(area.widthMm());
        double keyMm = Piece.bounds(key).map(extent -> extent.heightMm() + 4).orElse(0.0);
        double room = area.heightMm() - keyMm;
        List<SortedSet<BreakoutId>> pieces = new BoardPieces(maker, area.widthMm(), room).all();
        Map<BreakoutId, String> sheetOf = new LinkedHashMap<>();
        for (int k = 0; k < pieces.size(); k++) {
            String words = ", sheet\u00a0" + (k + 1);
            pieces.get(k).forEach(id -> sheetOf.put(id, words));
        }
        List<List<Item>> sheets = new ArrayList<>();
        for (SortedSet<BreakoutId> piece : pieces) {
            List<Item> board = maker.items(new TreeSet<>(piece), area.widthMm() / room, Map.of(), sheetOf);
            List<Item> items = new ArrayList<>(fitted(board, area, room));
            Placement below = Placement.moved(area.leftMm(), area.bottomMm() - keyMm + 4);
            key.forEach(item -> items.add(item.placed(below)));
            sheets.add(items);
        }
        sheets.addAll(cards(maker.stations().unplaced(), Montage.UNPLACED, area));
        return sheets;
    }

    /** Items as large as the room allows, in its middle. */
    private static List<Item> fitted(List<Item> items, Extent area, double roomMm) {
        Optional<Extent> extent = Piece.bounds(items);
        if (extent.isEmpty()) {
            return items;
        }
        double scale = Math.min(
                MOST_SCALE,
                Math.min(
                        area.widthMm() / extent.get().widthMm(),
                        roomMm / extent.get().heightMm()));
        Point middle = extent.get().centre();
        Placement placement = new Placement(
                scale, area.centre().xMm() - middle.xMm() * scale, area.topMm() + roomMm / 2 - middle.yMm() * scale);
        return items.stream().map(item -> item.placed(placement)).toList();
    }

    /** Sheets of cards under a heading. */
    private List<List<Item>> cards(List<Card> cards, String heading, Extent area) {
        List<List<Item>> sheets = new ArrayList<>();
        List<Card> waiting = new ArrayList<>(cards);
        while (!waiting.isEmpty()) {
            int count = waiting.size();
            while (count > 1 && Montage.rowsMm(waiting.subList(0, count), area.widthMm()) > area.heightMm()) {
                count--;
            }
            sheets.add(Montage.rows(waiting.subList(0, count), heading, area, lettering));
            waiting = waiting.subList(count, waiting.size());
        }
        return sheets;
    }
}
