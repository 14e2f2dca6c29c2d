package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.StateId;

/**
 * Lays a harness out as it lies on the board: bundle segments with their lengths, breakouts, connectors and components at
 * the ends, zones behind. A harness that has wires but neither bundle segments nor anything placed on the board is drawn as a
 * circuit instead: what feeds on the left, what is fed to the right, every wire by itself. Not to scale. The same harness gives the same scene. Safe to share
 * between threads.
 */
public final class SceneLayout {

    /** Width over height that layouts for the screen aim at. */
    public static final double SCREEN_ASPECT_RATIO = 1.6;

    private final Lettering lettering;

    /** A layout that measures with the drawing font. */
    public SceneLayout(SceneFonts fonts) {
        this.lettering = new Lettering(fonts);
    }

    /**
     * The layout view of a harness.
     *
     * @param analysis results to take numbers from; empty shows none but sizes
     * @param state    operating state whose numbers are shown; empty shows the worst of all states
     */
    public Scene layoutBoard(
            Harness harness, Optional<Analysis> analysis, Optional<StateId> state, SceneOptions options) {
        return layoutBoard(harness, analysis, state, options, SCREEN_ASPECT_RATIO);
    }

    /**
     * The layout view of a harness for a place of given proportion.
     *
     * @param aspectRatio width over height to aim at, more than 0
     */
    public Scene layoutBoard(
            Harness harness,
            Optional<Analysis> analysis,
            Optional<StateId> state,
            SceneOptions options,
            double aspectRatio) {
        return layOut(harness, analysis, state, options, aspectRatio).scene();
    }

    /**
     * The layout view of a harness together with the places on the board behind it.
     *
     * @param aspectRatio width over height to aim at, more than 0
     */
    public LaidOut layOut(
            Harness harness,
            Optional<Analysis> analysis,
            Optional<StateId> state,
            SceneOptions options,
            double aspectRatio) {
        if (Circuit.suitsScreen(harness)) {
            Figures figures = new Figures(harness, analysis, state, options);
            return new LaidOut(new Circuit(harness, figures, lettering).scene(), Optional.empty());
        }
        BoardMaker maker = new BoardMaker(harness, analysis, state, options, lettering, Optional.empty());
        Board board = maker.board(maker.stations().breakouts(), aspectRatio, harness.layout(), Elsewhere.SCREEN);
        List<Item> items = maker.items(board);
        Scene scene =
                Montage.scene(items, maker.stations().unplaced(), roomMm -> maker.legend(roomMm, false), lettering);
        return new LaidOut(scene, Optional.of(BoardPositions.places(board, Montage.shift(items))));
    }

    /**
     * Where each breakout, and the middle of each card, lies on the board now, by id of element: its own position where
     * the harness has one. Moving an element by some millimetres in the scene changes its position by as much.
     */
    public SortedMap<String, Position> positions(Harness harness) {
        return BoardPositions.of(board(harness));
    }

    /**
     * The positions that change when elements are dragged on the board; to be laid into the harness as one edit. A
     * breakout takes along what hangs there and has no position of its own.
     *
     * @param ids  ids of breakouts, components, connectors, splices or ground points; others do not move
     * @param dxMm to the right, mm
     * @param dyMm downwards, mm
     */
    public SortedMap<String, Position> moved(Harness harness, Set<String> ids, double dxMm, double dyMm) {
        return BoardPositions.moved(board(harness), ids, dxMm, dyMm);
    }

    private Board board(Harness harness) {
        BoardMaker maker = new BoardMaker(
                harness, Optional.empty(), Optional.empty(), SceneOptions.PLAIN, lettering, Optional.empty());
        return maker.board(maker.stations().breakouts(), SCREEN_ASPECT_RATIO, harness.layout(), Elsewhere.SCREEN);
    }
}
