package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SheetPen;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.units.Formats;

/** Makes the form boards of a harness: one for each assembly, the pieces of an assembly side by side. */
public final class FormBoards {

    private static final double PIECE_MM = 30;

    private final Analysis analysis;
    private final Harness harness;
    private final SceneFonts fonts;
    private final BoardSize size;
    private final Optional<Paper> paper;

    private FormBoards(Analysis analysis, SceneFonts fonts, BoardSize size, Optional<Paper> paper) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.fonts = fonts;
        this.size = size;
        this.paper = paper;
    }

    /**
     * The boards; none for a harness without segments.
     *
     * @param size  the largest board there is; a harness that does not fit is laid on a larger one, and that is said
     * @param paper paper of the tiles; empty for each board whole on one sheet of its own size
     */
    public static List<FormBoard> of(Analysis analysis, SceneFonts fonts, BoardSize size, Optional<Paper> paper) {
        return new FormBoards(analysis, fonts, size, paper).all();
    }

    private List<FormBoard> all() {
        if (harness.segments().isEmpty()) {
            return List.of();
        }
        FormCards cards = new FormCards(harness, fonts);
        Map<SortedSet<AssemblyId>, List<FormPiece>> groups = new LinkedHashMap<>();
        for (FormPiece piece : FormPieces.of(harness, analysis.evidence().bundles(), cards)) {
            groups.computeIfAbsent(piece.assemblies(), each -> new ArrayList<>())
                    .add(piece);
        }
        return groups.entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getKey().isEmpty()
                        ? "\uffff"
                        : entry.getKey().first().value()))
                .map(entry -> board(name(entry.getKey()), entry.getValue()))
                .toList();
    }

    private String name(SortedSet<AssemblyId> assemblies) {
        return assemblies.isEmpty()
                ? harness.titleBlock().title()
                : assemblies.stream()
                        .map(harness.assemblies()::get)
                        .map(each -> each.number() + " " + each.name() + ", revision " + each.revision())
                        .collect(Collectors.joining("; "));
    }

    private FormBoard board(String name, List<FormPiece> pieces) {
        FormPlan first = FormPlan.of(pieces, size.widthMm(), size.heightMm());
        List<Extent> before = things(first);
        TileGrid grid =
                paper.map(each -> TileGrid.best(each, before, cards(first))).orElseGet(() -> TileGrid.whole(before));
        FormPlan plan = CardShift.of(first, grid);
        List<Extent> things = things(plan);
        List<Extent> cards = cards(plan);
        TextRoom room = new TextRoom(grid.covered().grown(-1), new OneTile(grid, things));
        List<Item> items = FormDrawing.items(plan, analysis.evidence(), new Lettering(fonts), room);
        for (Item item : items) {
            if (!(item.mark() instanceof Line)) {
                things.add(item.mark().bounds());
            }
        }
        List<String> remarks = new ArrayList<>();
        plan.pieces().forEach(piece -> remarks.addAll(piece.opened()));
        if (plan.widthMm() > size.widthMm() + 1 || plan.heightMm() > size.heightMm() + 1) {
            remarks.add(
                    0,
                    "Needs a board of " + Formats.millimetres(Math.ceil(plan.widthMm())) + " by "
                            + Formats.millimetres(Math.ceil(plan.heightMm())) + ": no layout was found on the "
                            + size.text() + " asked for. Put boards together, or give a larger one.");
        }
        return new FormBoard(
                name,
                plan.widthMm(),
                plan.heightMm(),
                items,
                segments(plan, grid, things),
                remarks,
                grid,
                things,
                cards);
    }

    private static List<Extent> cards(FormPlan plan) {
        return plan.laid().stream()
                .flatMap(laid -> laid.cards().stream())
                .flatMap(Optional::stream)
                .toList();
    }

    /** What lies on a board in rectangles no longer than a few centimetres, so that slanting runs use no empty tile. */
    private static List<Extent> things(FormPlan plan) {
        List<Extent> things = new ArrayList<>();
        for (Laid laid : plan.laid()) {
            for (int k = 0; k < laid.ways().size(); k++) {
                things.addAll(along(
                        laid.ways().get(k).points(), laid.tree().runs().get(k).widthMm()));
            }
            for (int k = 0; k < laid.cards().size(); k++) {
                laid.cards().get(k).ifPresent(things::add);
                laid.pointer(k).ifPresent(line -> things.addAll(along(line, SheetPen.THIN_MM)));
            }
        }
        return things;
    }

    private static List<Extent> along(List<Point> line, double widthMm) {
        List<Extent> pieces = new ArrayList<>();
        double length = Way.lengthMm(line);
        for (double at = 0; at < length; at += PIECE_MM) {
            Point a = Way.along(line, at);
            Point b = Way.along(line, Math.min(length, at + PIECE_MM));
            pieces.add(Extent.around(List.of(a, b)).grown(widthMm / 2));
        }
        return pieces;
    }

    private List<LaidSegment> segments(FormPlan plan, TileGrid grid, List<Extent> things) {
        List<String> used = grid.used(things).stream()
                .map(each -> TileGrid.name(each[0], each[1]))
                .toList();
        List<LaidSegment> segments = new ArrayList<>();
        for (Laid laid : plan.laid()) {
            for (int k = 0; k < laid.ways().size(); k++) {
                FormRun run = laid.tree().runs().get(k);
                Way way = laid.ways().get(k);
                if (!run.leader()) {
                    List<String> tiles = grid.used(along(way.points(), run.widthMm())).stream()
                            .map(each -> TileGrid.name(each[0], each[1]))
                            .filter(used::contains)
                            .toList();
                    boolean opened = laid.tree().nodes().get(run.to()).id().equals(run.id());
                    segments.add(new LaidSegment(
                            new SegmentId(run.id()), way.points(), run.widthMm(), way.folds(), opened, tiles));
                }
            }
        }
        segments.sort(Comparator.comparing(LaidSegment::segment));
        return segments;
    }
}
