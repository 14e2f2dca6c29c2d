package org.ohmloom.workbench.canvas;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.HeatScale;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.SceneQuestion;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Topic;

/** The layout: lays the harness out on a thread of its own and shows what the desk shows. */
public final class LayoutPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final double USUAL_ASPECT_RATIO = 1.6;

    private final transient Desk desk;
    private final LayoutCanvas canvas;
    private final HeatLegend legend;
    private final transient LatestWins<SceneQuestion, Drawn> layouts;
    private transient @Nullable Document shown;
    private transient @Nullable Document measuredFor;
    private double measured = USUAL_ASPECT_RATIO;
    private boolean picking;

    /**
     * A layout with the scale it is shaded by.
     *
     * @param scale empty where it is not shaded
     */
    private record Drawn(Scene scene, Optional<HeatScale> scale) {

        static Drawn of(SceneQuestion question, Function<SceneQuestion, Scene> layout) {
            return new Drawn(
                    layout.apply(question),
                    HeatScale.of(
                            question.harness(),
                            question.analysis(),
                            question.view().state(),
                            question.view().options()));
        }
    }

    /**
     * A pane.
     *
     * @param layout      lays a harness out; called on a thread of its own
     * @param eventThread runs a task on the event thread
     */
    public LayoutPane(Desk desk, ScenePainter painter, Function<SceneQuestion, Scene> layout, Executor eventThread) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1, hidemode 3"));
        this.desk = desk;
        this.canvas = new LayoutCanvas("Layout", "The harness on its board", painter, this::pick);
        this.layouts = new LatestWins<>(
                "layout",
                (question, cancel, soFar) -> Drawn.of(question, layout),
                Duration.ZERO,
                eventThread,
                this::receive);
        this.legend = new HeatLegend(painter);
        add(canvas, "grow, push, wmin 120, hmin 80");
        add(legend, "growx, wmin 0, hmin pref");
        desk.listen(this::hear);
        ask();
    }

    public LayoutCanvas canvas() {
        return canvas;
    }

    /** Whether a layout is under way. */
    public boolean isBusy() {
        return layouts.isBusy();
    }

    private void pick(List<String> ids) {
        picking = true;
        try {
            desk.select(Selection.of(ids));
        } finally {
            picking = false;
        }
    }

    private void hear(Topic topic) {
        switch (topic) {
            case DOCUMENT, HARNESS, VIEW -> ask();
            case RESULTS -> {
                if (desk.isCurrent()) {
                    ask();
                }
            }
            case SELECTION -> canvas.select(
                    picking ? Selection.of(desk.selection().ids()) : desk.selection());
            case MESSAGE -> {}
        }
    }

    private void ask() {
        if (desk.harness().isEmpty()) {
            layouts.stop();
            canvas.show(Optional.empty(), "Open a harness file, or drop one here", true);
            return;
        }
        layouts.ask(new SceneQuestion(desk.harness().get(), desk.analysis(), desk.view(), aspectRatio()));
    }

    /** The proportion of the canvas when the document was opened: a layout that keeps its shape is easier to know. */
    private double aspectRatio() {
        Document now = desk.document().orElse(null);
        if (now != measuredFor && canvas.getHeight() > 0) {
            measuredFor = now;
            measured = Math.max(0.4, Math.min(4, canvas.getWidth() / (double) canvas.getHeight()));
        }
        return measured;
    }

    private void receive(LatestWins.Outcome<SceneQuestion, Drawn> outcome) {
        Document now = desk.document().orElse(null);
        boolean anew = now != shown;
        shown = now;
        String reason = outcome.failure()
                .map(failure -> "The layout cannot be drawn: " + failure.getMessage())
                .orElse("");
        legend.show(outcome.question(), outcome.answer().flatMap(Drawn::scale));
        canvas.show(outcome.answer().map(Drawn::scene), reason, anew);
    }
}
