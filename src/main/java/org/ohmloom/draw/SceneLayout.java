package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
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
     * The layout view of a harness together with the places on the board behind it and the scale it is shaded by.
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
            Figures figures = new Figures(harness, analysis, state, options, lettering);
            return new LaidOut(new Circuit(harness, figures, lettering).scene(), Optional.empty(), figures.scale());
        }
        BoardMaker maker = new BoardMaker(harness, analysis, state, options, lettering, Optional.empty());
        Board board = maker.board(maker.stations().breakouts(), aspectRatio, harness.layout(), Elsewhere.SCREEN);
        List<Item> items = maker.items(board);
        Scene scene =
                Montage.scene(items, maker.stations().unplaced(), roomMm -> maker.legend(roomMm, false), lettering);
        return new LaidOut(scene, Optional.of(BoardPositions.places(board, Montage.shift(items))), maker.scale());
    }
}
