package org.ohmloom.workbench.study;

import com.formdev.flatlaf.FlatClientProperties;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.flow.FlowPicture;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.PointDrop;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.widget.HintLine;
import org.ohmloom.workbench.words.Words;

/**
 * The currents: from the sources through the loads and back, in one operating state or the largest of all. Pointing at something
 * shows its way from source to return; two points picked one after the other read the drop between them.
 */
public final class CurrentsPane extends StudyTab {
    private static final Words WORDS = Words.of("studies");

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "currents";

    private final transient Words words = Words.of("currents");
    private final transient Desk desk;
    private final LayoutCanvas canvas;
    private final HintLine reading = new HintLine("currents-reading", words.get("hint"));
    private transient Probes probes = Probes.NONE;
    private final PointBox from = new PointBox(
            "currents-from", words.get("from.about"), name -> type(name, point -> new Probes(point, probes.to())));
    private final PointBox to = new PointBox(
            "currents-to", words.get("to.about"), name -> type(name, point -> new Probes(probes.from(), point)));
    private final DropTable parts;
    private final transient LatestWins<Asked, FlowPicture> layouts;
    private transient Optional<Asked> asked = Optional.empty();
    private transient Optional<FlowPicture> picture = Optional.empty();
    private transient Optional<Document> shownOf = Optional.empty();

    /**
     * What is to be drawn.
     *
     * @param results the results
     * @param state   the state; empty for the largest of all
     * @param units   units it is written in
     */
    private record Asked(Analysis results, Optional<StateId> state, ShownUnits units) {

        /** Whether the same picture would come of it: later stages of one calculation hold the same currents. */
        boolean isLike(Asked other) {
            return state.equals(other.state)
                    && units.equals(other.units)
                    && results.harness() == other.results.harness()
                    && results.ratings() == other.results.ratings();
        }
    }

    /**
     * A pane.
     *
     * @param eventThread runs a task on the event thread
     */
    public CurrentsPane(Desk desk, ScenePainter painter, Executor eventThread) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1, hidemode 3"), TabName.of(KEY));
        this.desk = desk;
        this.canvas =
                new LayoutCanvas(KEY, TabName.of(KEY).title(), WORDS.get("currents.the-currents"), painter, this::pick);
        this.layouts = new LatestWins<>(
                "currents",
                (question, cancel, soFar) -> FlowPicture.of(question.results(), question.state(), painter.fonts()),
                Duration.ZERO,
                eventThread,
                this::receive);
        this.parts = new DropTable(id -> desk.select(Selection.of(List.of(id))));
        canvas.showTrails(id -> picture.map(shown -> trail(shown, id)).orElse(List.of()));
        add(head(), "growx");
        add(canvas, "grow, push, wmin 120, hmin 80");
        add(parts, "growx, wmin 0, hmin pref");
    }

    private JComponent head() {
        JPanel head = new JPanel(new MigLayout("insets 4 10 4 8, fillx", "[][][][][][grow,fill]", "[center]"));
        for (PointBox box : List.of(from, to)) {
            JLabel label = new JLabel(words.get(box == from ? "from" : "to"));
            label.setLabelFor(box);
            head.add(label);
            head.add(box);
        }
        JButton clear = new JButton(words.get("clear"));
        clear.setName("currents-clear");
        clear.setToolTipText(words.get("clear.about"));
        clear.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        clear.addActionListener(event -> probe(Probes.NONE));
        head.add(clear);
        head.add(reading, "wmin 0, gapleft 8");
        return head;
    }

    /** The way between the two points while nothing else is pointed at, otherwise that of the current through what is. */
    private List<Item> trail(FlowPicture shown, String id) {
        Optional<PointDrop> drop =
                probes.ids().contains(id) ? probes.drop(shown, desk.view().state()) : Optional.empty();
        return drop.map(shown::trail).orElseGet(() -> shown.trail(id));
    }

    private void type(String name, Function<Optional<PointId>, Probes> changed) {
        if (picture.isEmpty()) {
            return;
        }
        Probes.Typed typed = Probes.typed(picture.get(), name, words);
        if (typed.problem().isEmpty()) {
            probe(changed.apply(typed.point()));
        } else {
            reading.say(typed.problem());
        }
    }

    private void probe(Probes changed) {
        probes = changed;
        showSelection();
    }

    @Override
    public LayoutCanvas front() {
        return canvas;
    }

    /** What is written above the picture: a hint, or what was read. */
    String readingText() {
        return reading.getText();
    }

    /** Whether the picture is being drawn. */
    public boolean isBusy() {
        return layouts.isBusy();
    }

    private void pick(List<String> ids) {
        Optional<PointId> point = ids.stream()
                .filter(id -> picture.filter(shown -> shown.isPoint(id)).isPresent())
                .filter(id -> desk.harness().flatMap(now -> now.element(id)).isEmpty())
                .findFirst()
                .map(PointId::new);
        if (point.isEmpty()) {
            probes = Probes.NONE;
            desk.select(Selection.of(ids));
        } else {
            probes = probes.with(point.get());
        }
        showSelection();
    }

    @Override
    public void showRows() {
        Optional<Asked> now =
                desk.analysis().map(results -> new Asked(results, desk.view().state(), desk.units()));
        if (now.isEmpty()) {
            layouts.stop();
            asked = Optional.empty();
            picture = Optional.empty();
            canvas.show(Optional.empty(), words.get(desk.status().isBusy() ? "waiting" : "none"), true);
            return;
        }
        if (asked.filter(now.get()::isLike).isEmpty()) {
            asked = now;
            layouts.ask(now.get());
        }
        showSelection();
    }

    private Scene inUnits(Scene scene) {
        return desk.units().equals(ShownUnits.USUAL) ? scene : scene.saying(desk.units()::label);
    }

    private void receive(LatestWins.Outcome<Asked, FlowPicture> outcome) {
        boolean anew = !shownOf.equals(desk.document());
        shownOf = desk.document();
        picture = outcome.answer();
        probes = probes.within(picture);
        List<String> points = picture.stream()
                .flatMap(shown -> shown.points().stream())
                .map(PointId::value)
                .toList();
        from.offer(points);
        to.offer(points);
        String reason = outcome.failure()
                .map(failure -> words.get("failed", Words.said(failure)))
                .orElse("");
        canvas.show(picture.map(FlowPicture::scene).map(this::inUnits), reason, anew);
        showSelection();
    }

    @Override
    public void showSelection() {
        Selection selection = desk.selection();
        canvas.select(
                probes.isEmpty() ? selection : new Selection(probes.ids(), selection.path(), Optional.empty(), false));
        Optional<StateId> state = desk.view().state();
        from.show(probes.from().map(PointId::value));
        to.show(probes.to().map(PointId::value));
        parts.show(picture.flatMap(shown -> probes.drop(shown, state)));
        String read = picture.map(shown -> probes.sentence(shown, state, words)).orElse("");
        reading.tell(read.isEmpty() && !desk.isCurrent() && picture.isPresent() ? words.get("old") : read);
    }
}
