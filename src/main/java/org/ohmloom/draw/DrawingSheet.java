package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.tables.FabricationTables;

/**
 * The printed harness drawing: the board on as many sheets as it needs to stay legible, joined by match lines, then the
 * tables of its dimensions, then the connectors from the wire side with their pin tables. Frame after ISO 5457, title block after ISO 7200, lettering never below 1.8 mm (ISO 3098).
 */
public final class DrawingSheet {

    private static final double MOST_SCALE = 1.4;
    private static final String TYPE = "Harness drawing";
    private static final int MOST_TRIED_TWICE = 250;

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
        Optional<FabricationTables> tables =
                analysis.map(results -> results.evidence().tables().fabrication());
        SheetNotes notes = new SheetNotes(new GeneralNotes(harness, tables).all());
        SheetForm form = new SheetForm(harness.titleBlock(), notes, paper, lettering);
        Figures figures = new Figures(
                harness, analysis, Optional.empty(), new SceneOptions(SceneOptions.Numbers.SIZE, false), lettering);
        SheetDetail detail = detail(harness, analysis);
        List<List<Item>> boards = Circuit.suits(harness)
                ? circuit(new Circuit(harness, figures, lettering), form)
                : boards(harness, analysis, detail, form);
        List<SheetBlock> blocks = new ArrayList<>(new DimensionTables(harness, detail, tables, lettering).blocks());
        blocks.addAll(new ConnectorSheets(harness, figures, detail.flags(), lettering).blocks());
        List<BlockColumns.Sheet> others = new BlockColumns(form.area(boards.isEmpty()), lettering).sheets(blocks);
        if (boards.isEmpty() && others.isEmpty()) {
            boards = List.of(List.of());
        }
        int count = boards.size() + others.size();
        List<Scene> sheets = new ArrayList<>();
        for (List<Item> each : boards) {
            sheets.add(form.sheet(each, TYPE, sheets.size() + 1, count));
        }
        for (BlockColumns.Sheet each : others) {
            String type = TYPE + ", " + String.join(" and ", each.subjects());
            sheets.add(form.sheet(each.items(), type, sheets.size() + 1, count));
        }
        return sheets;
    }

    private SheetDetail detail(Harness harness, Optional<Analysis> analysis) {
        Ties ties = new Ties(harness);
        Stations stations = new Stations(harness, ties, new CardMaker(harness, lettering, NoteFlags.NONE));
        Map<SegmentId, SupportPlan> supports = new TreeMap<>();
        analysis.ifPresent(results -> results.evidence()
                .bundles()
                .bySegment()
                .forEach((segment, section) -> supports.put(segment, section.supports())));
        return new SheetDetail(
                new Datums(stations.breakouts(), ties, stations.batteries()), NoteFlags.of(harness), supports, false);
    }

    private BoardMaker board(Harness harness, Optional<Analysis> analysis, SheetDetail detail) {
        SceneOptions options = new SceneOptions(SceneOptions.Numbers.SIZE, false);
        return new BoardMaker(harness, analysis, Optional.empty(), options, lettering, Optional.of(detail));
    }

    /** A harness without bundle segments: its circuit, or only its parts when that does not fit on the paper. */
    private List<List<Item>> circuit(Circuit circuit, SheetForm form) {
        Extent area = form.area(true);
        List<Item> key = circuit.legend(area.widthMm());
        double keyMm = keyMm(key);
        double room = area.heightMm() - keyMm;
        Optional<List<List<Item>>> pieces = circuit.pieces(area.widthMm(), room, 1);
        if (pieces.isEmpty()) {
            return cards(circuit.cards(), "Parts; their circuit is too large for this paper, see the tables", 0, form);
        }
        List<List<Item>> sheets = new ArrayList<>();
        for (List<Item> piece : pieces.get()) {
            sheets.add(withKey(piece, key, form.area(sheets.isEmpty())));
        }
        sheets.addAll(cards(circuit.unwired(), lettering.say("not-placed-yet"), sheets.size(), form));
        return sheets;
    }

    /** The boards of a harness: set wide or stacked, whichever takes fewer sheets; wide when that is all one or takes long. */
    private List<List<Item>> boards(Harness harness, Optional<Analysis> analysis, SheetDetail detail, SheetForm form) {
        BoardMaker wide = board(harness, analysis, detail);
        List<SortedSet<BreakoutId>> pieces = pieces(wide, form);
        if (pieces.size() > 1 && harness.breakouts().size() <= MOST_TRIED_TWICE) {
            BoardMaker stacked = board(harness, analysis, detail.withStacked(true));
            List<SortedSet<BreakoutId>> fewer = pieces(stacked, form);
            if (fewer.size() < pieces.size()) {
                return boards(stacked, fewer, form);
            }
        }
        return boards(wide, pieces, form);
    }

    private static List<SortedSet<BreakoutId>> pieces(BoardMaker maker, SheetForm form) {
        return new BoardPieces(maker, form.area(true).widthMm(), roomMm(maker, form, true), roomMm(maker, form, false))
                .all();
    }

    private static double roomMm(BoardMaker maker, SheetForm form, boolean first) {
        Extent area = form.area(first);
        return area.heightMm() - keyMm(maker.legend(area.widthMm(), first));
    }

    private List<List<Item>> boards(BoardMaker maker, List<SortedSet<BreakoutId>> pieces, SheetForm form) {
        MatchLines matchLines = new MatchLines(maker.ties(), lettering);
        Elsewhere elsewhere = matchLines.lettered(pieces);
        List<List<Item>> sheets = new ArrayList<>();
        for (SortedSet<BreakoutId> piece : pieces) {
            boolean first = sheets.isEmpty();
            Extent area = form.area(first);
            double aspect = area.widthMm() / roomMm(maker, form, first);
            List<Item> board = maker.items(new TreeSet<>(piece), aspect, Map.of(), elsewhere);
            sheets.add(withKey(board, maker.legend(area.widthMm(), first), area));
        }
        sheets = new ArrayList<>(matchLines.placed(sheets, form.paper()));
        sheets.addAll(cards(maker.stations().unplaced(), lettering.say("not-placed-yet"), sheets.size(), form));
        return sheets;
    }

    private static double keyMm(List<Item> key) {
        return Piece.bounds(key).map(extent -> extent.heightMm() + 4).orElse(0.0);
    }

    /** A drawing with the key below it. */
    private static List<Item> withKey(List<Item> drawing, List<Item> key, Extent area) {
        double keyMm = keyMm(key);
        List<Item> items = new ArrayList<>(fitted(drawing, area, area.heightMm() - keyMm));
        Placement below = Placement.moved(area.leftMm(), area.bottomMm() - keyMm + 4);
        key.forEach(item -> items.add(item.placed(below)));
        return items;
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

    /** Sheets of cards under a heading, behind the sheets there are before. */
    private List<List<Item>> cards(List<Card> cards, String heading, int before, SheetForm form) {
        List<List<Item>> sheets = new ArrayList<>();
        List<Card> waiting = new ArrayList<>(cards);
        while (!waiting.isEmpty()) {
            Extent area = form.area(before + sheets.size() == 0);
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
