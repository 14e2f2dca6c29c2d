package org.ohmloom.workbench.canvas;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.LaidOut;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.model.Harness;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.SceneQuestion;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.words.Words;

/** The layout: lays the harness out on a thread of its own and shows what the desk shows. */
public final class LayoutPane extends JPanel {
    private static final Words WORDS = Words.of("layout");

    private static final long serialVersionUID = 1L;
    private static final double USUAL_ASPECT_RATIO = 1.6;

    private final transient Desk desk;
    private final LayoutCanvas canvas;
    private final HeatLegend legend;
    private final transient LatestWins<SceneQuestion, LaidOut> layouts;
    private transient @Nullable Document shown;
    private transient @Nullable Document measuredFor;
    private double measured = USUAL_ASPECT_RATIO;
    private boolean picking;
    private transient Optional<LaidOut> laidOut = Optional.empty();
    private transient @Nullable Harness laidOutFor;

    /**
     * A pane.
     *
     * @param layout      lays a harness out; called on a thread of its own
     * @param eventThread runs a task on the event thread
     */
    public LayoutPane(Desk desk, ScenePainter painter, Function<SceneQuestion, LaidOut> layout, Executor eventThread) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1, hidemode 3"));
        this.desk = desk;
        this.canvas = new LayoutCanvas(
                "layout", WORDS.get("layout.layout"), WORDS.get("layout.layout.about"), painter, this::pick);
        this.layouts = new LatestWins<>(
                "layout",
                (question, cancel, soFar) -> inUnits(layout.apply(question), question),
                Duration.ZERO,
                eventThread,
                this::receive);
        this.legend = new HeatLegend(painter);
        add(canvas, "grow, push, wmin 120, hmin 80");
        add(legend, "growx, wmin 0, hmin pref");
        desk.listen(this::hear);
        ask();
    }

    /** Puts tools beside the canvas and a line about them above it. */
    public void furnish(JComponent strip, JComponent line) {
        removeAll();
        setLayout(new MigLayout("insets 0, fill, gap 0, hidemode 3", "[][grow,fill]", "[][grow,fill][]"));
        add(strip, "spany 3, growy, hmin 0");
        add(line, "growx, wmin 0, wrap");
        add(canvas, "grow, push, wmin 120, hmin 80, wrap");
        add(legend, "growx, wmin 0, hmin pref");
    }

    public LayoutCanvas canvas() {
        return canvas;
    }

    /** Where things stand on the board shown; empty for a circuit. Newer places count where the picture is still older. */
    public Optional<BoardPlaces> board() {
        Optional<BoardPlaces> shownNow = laidOut.flatMap(LaidOut::board);
        return desk.harness()
                .filter(now -> now != laidOutFor)
                .map(now -> shownNow.map(places -> places.with(now.layout())))
                .orElse(shownNow);
    }

    /** Selects on the canvas, where the person looks already. */
    public void pick(List<String> ids) {
        picking = true;
        try {
            desk.select(Selection.of(ids));
        } finally {
            picking = false;
        }
    }

    /** Whether a layout is under way. */
    public boolean isBusy() {
        return layouts.isBusy();
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
            laidOut = Optional.empty();
            canvas.show(Optional.empty(), WORDS.get("layout.open-a-harness-file"), true);
            return;
        }
        if (laidOut.isEmpty()) {
            canvas.show(Optional.empty(), "", true);
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

    private void receive(LatestWins.Outcome<SceneQuestion, LaidOut> outcome) {
        Document now = desk.document().orElse(null);
        boolean anew = now != shown;
        shown = now;
        String reason = outcome.failure()
                .map(failure -> WORDS.get("layout.the-layout-cannot-be", Words.said(failure)))
                .orElse("");
        Optional<LaidOut> before = laidOut;
        laidOut = outcome.answer();
        legend.show(outcome.question(), laidOut.flatMap(LaidOut::scale));
        laidOutFor = outcome.question().harness();
        if (!anew) {
            before.flatMap(LaidOut::board)
                    .ifPresent(old -> board().ifPresent(newer -> follow(old.shift(), newer.shift())));
        }
        canvas.show(laidOut.map(LaidOut::scene), reason, anew);
    }

    private void follow(Point old, Point now) {
        canvas.follow(now.xMm() - old.xMm(), now.yMm() - old.yMm());
    }

    /** A layout with what is left in it of other units written as a person reads it. */
    private static LaidOut inUnits(LaidOut layout, SceneQuestion question) {
        ShownUnits units = question.view().options().units();
        return units.equals(ShownUnits.USUAL)
                ? layout
                : layout.showing(layout.scene().saying(units::label));
    }
}
