package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/**
 * Lays a harness out as it lies on the board: bundle segments with their lengths, breakouts, connectors and components at
 * the ends, zones behind. Not to scale. The same harness gives the same scene. Safe to share between threads.
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
        Figures figures = new Figures(harness, analysis, state, options.numbers());
        Ties ties = new Ties(harness);
        CardMaker maker = new CardMaker(harness, lettering);
        Stations stations = new Stations(harness, ties, maker);
        SortedMap<WireId, WirePath> paths = new WirePaths(harness, ties).all();
        Map<String, List<WireId>> wiresOf = Bundles.of(harness, paths);
        Thickness thickness = new Thickness(wiresOf, options.wires());
        RunTexts texts = new RunTexts(harness, figures, lettering, wiresOf);
        Sprouts sprouts = new Sprouts(harness, stations, texts, thickness, lettering);
        RunLabels labels = new RunLabels(lettering, thickness);
        BoardPlanner planner =
                new BoardPlanner(sprouts, texts, labels, thickness, harness.layout(), stations.sources());
        Board board = planner.plan(Tree.all(stations.breakouts(), ties), aspectRatio);
        Doors doors = new Doors(board, maker, texts, thickness);
        Tracing tracing = new Tracing(board, doors);
        List<Trace> traces = paths.values().stream()
                .flatMap(path -> tracing.of(path).stream())
                .toList();
        Optional<Strands> strands =
                options.wires() ? Optional.of(new Strands(harness, doors, wiresOf, figures, traces)) : Optional.empty();
        List<Item> items = new ArrayList<>(
                new BoardDrawing(harness, board, doors, texts, thickness, lettering, maker, labels, strands).items());
        strands.ifPresent(drawn -> {
            items.addAll(drawn.items());
            harness.wires().all().stream()
                    .filter(wire -> !paths.containsKey(wire.id()))
                    .flatMap(wire -> drawn.direct(wire, element(wire.from()), element(wire.to())).stream())
                    .forEach(items::add);
        });
        return Montage.scene(
                items, stations.unplaced(), room -> Legend.items(harness, options.wires(), lettering, room), lettering);
    }

    private static String element(WireEnd end) {
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
