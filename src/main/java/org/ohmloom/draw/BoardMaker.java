package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/**
 * Makes board drawings of one harness, of the whole of it or of some of its breakouts. Drawings for the screen keep their
 * places whatever numbers are shown and whether wires are; those with the detail of a sheet are as small as what is shown
 * allows. For one thread.
 */
final class BoardMaker {

    private final Harness harness;
    private final Lettering lettering;
    private final boolean wires;
    private final Figures figures;
    private final Ties ties;
    private final CardMaker maker;
    private final Stations stations;
    private final SortedMap<WireId, WirePath> paths;
    private final Map<String, List<WireId>> wiresOf;
    private final Thickness thickness;
    private final Thickness planned;
    private final RunTexts texts;
    private final Optional<SheetDetail> detail;
    private final Map<BreakoutId, Double> leastAreas = new HashMap<>();

    BoardMaker(
            Harness harness,
            Optional<Analysis> analysis,
            Optional<StateId> state,
            SceneOptions options,
            Lettering lettering,
            Optional<SheetDetail> detail) {
        boolean steady = detail.isEmpty();
        this.harness = harness;
        this.lettering = lettering;
        this.wires = options.wires();
        this.figures = new Figures(harness, analysis, state, options, lettering);
        this.ties = new Ties(harness);
        this.detail = detail;
        this.maker =
                new CardMaker(harness, lettering, detail.map(SheetDetail::flags).orElse(NoteFlags.NONE));
        this.stations = new Stations(harness, ties, maker);
        this.paths = new WirePaths(harness, ties).all();
        this.wiresOf = Bundles.of(harness, paths);
        this.thickness = new Thickness(wiresOf, wires);
        this.planned = new Thickness(wiresOf, wires || steady);
        this.texts = new RunTexts(harness, figures, lettering, wiresOf, detail);
    }

    Ties ties() {
        return ties;
    }

    Stations stations() {
        return stations;
    }

    /** Room that the cards at a breakout and half of each run there take on any board, mm2. */
    double leastAreaMm2(BreakoutId breakout) {
        return leastAreas.computeIfAbsent(
                breakout,
                id -> stations.at(id).stream()
                                .mapToDouble(card -> card.widthMm() * card.heightMm())
                                .sum()
                        + ties.at(id).stream()
                                .mapToDouble(tie -> texts.of(tie, tie.other(id), false, false)
                                                .widthMm()
                                        * RunTexts.LEAST_HEIGHT_MM
                                        / 2)
                                .sum());
    }

    /** The scale wires and bundles are shaded by, if they are. */
    Optional<HeatScale> scale() {
        return figures.scale();
    }

    /** The key for a room of that width, mm, with the marks along runs or without. */
    List<Item> legend(double roomMm, boolean symbols) {
        return Legend.items(
                harness, wires && figures.scale().isEmpty(), true, symbols && detail.isPresent(), lettering, roomMm);
    }

    /**
     * The board with these breakouts.
     *
     * @param breakouts   breakouts to show; ties that lead to others end with a note where they go on
     * @param aspectRatio width over height to aim at
     * @param positions   positions on the board by id of element
     * @param elsewhere   how it speaks of what it leaves out
     */
    List<Item> items(
            SortedSet<BreakoutId> breakouts, double aspectRatio, Map<String, Position> positions, Elsewhere elsewhere) {
        return items(board(breakouts, aspectRatio, positions, elsewhere));
    }

    /** The drawing of a board. */
    List<Item> items(Board board) {
        RunLabels labels = new RunLabels(lettering, thickness, detail.isPresent());
        Doors doors = new Doors(board, maker, texts, planned);
        Optional<Strands> strands = wires ? Optional.of(strands(board, doors)) : Optional.empty();
        List<Item> items = new ArrayList<>(
                new BoardDrawing(harness, board, doors, texts, thickness, lettering, maker, labels, strands, this::body)
                        .items());
        detail.ifPresent(sheet -> items.addAll(new RunMarks(board, doors, texts, thickness, sheet).items()));
        strands.ifPresent(drawn -> {
            items.addAll(drawn.items());
            harness.wires().all().stream()
                    .filter(wire -> !paths.containsKey(wire.id()))
                    .flatMap(wire -> drawn.direct(wire, element(wire.from()), element(wire.to())).stream())
                    .forEach(items::add);
        });
        return items;
    }

    /** How far a board of these breakouts reaches on sheets, what is written along runs not counted. */
    Optional<Extent> boundsOnSheet(SortedSet<BreakoutId> breakouts, double aspectRatio) {
        return board(breakouts, aspectRatio, Map.of(), Elsewhere.UNSETTLED).bounds();
    }

    /** Where everything lies. */
    Board board(
            SortedSet<BreakoutId> breakouts, double aspectRatio, Map<String, Position> positions, Elsewhere elsewhere) {
        Sprouts sprouts = new Sprouts(harness, stations, texts, planned, lettering, elsewhere);
        RunLabels labels = new RunLabels(lettering, planned, detail.isPresent());
        return new BoardPlanner(sprouts, texts, labels, planned, positions, stations.sources())
                .plan(Tree.all(breakouts, ties), aspectRatio);
    }

    /** The ink of the body of a bundle: its step, otherwise the usual one, as at breakouts where many meet. */
    private Ink body(String id) {
        return harness.breakouts().has(new BreakoutId(id))
                ? Ink.BUNDLE
                : figures.step(id, wiresOf.getOrDefault(id, List.of()))
                        .map(HeatStep::ink)
                        .orElse(Ink.BUNDLE);
    }

    private Strands strands(Board board, Doors doors) {
        Tracing tracing = new Tracing(board, doors);
        List<Trace> traces = paths.values().stream()
                .flatMap(path -> tracing.of(path).stream())
                .toList();
        return new Strands(
                harness, doors, wiresOf, figures, traces, new StrandNames(figures, lettering, detail.isEmpty()));
    }

    /** Id of what a wire ends on; empty for a loose end. */
    static String element(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return at.connector().value();
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return at.component().value();
        }
        if (end instanceof WireEnd.AtGround at) {
            return at.ground().value();
        }
        return end instanceof WireEnd.AtSplice at ? at.splice().value() : "";
    }
}
