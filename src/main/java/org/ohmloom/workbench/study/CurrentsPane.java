package org.ohmloom.workbench.study;

import com.formdev.flatlaf.FlatClientProperties;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.flow.FlowPicture;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Selection;

/**
 * The currents: from the sources through the loads and back, in one operating state or the largest of all. Pointing at something
 * shows its way from source to return; two points picked one after the other read the drop between them.
 */
public final class CurrentsPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "currents";

    /** What stands on the tab. */
    public static final String TITLE = "Currents";

    /** What it answers. */
    public static final String ABOUT =
            "What current flows where: from the sources through the loads and back over the returns";

    private static final String HINT =
            "Point at a wire or load to see its way; pick two dots to read the drop between them";
    private static final int MOST_PROBES = 2;

    private final transient Desk desk;
    private final LayoutCanvas canvas;
    private final JLabel reading = new JLabel(HINT);
    private final transient LatestWins<Asked, FlowPicture> layouts;
    private final transient List<String> probes = new ArrayList<>();
    private transient Optional<Asked> asked = Optional.empty();
    private transient Optional<FlowPicture> picture = Optional.empty();
    private transient Optional<Document> shownOf = Optional.empty();

    /**
     * What is to be drawn.
     *
     * @param results the results
     * @param state   the state; empty for the largest of all
     */
    private record Asked(Analysis results, Optional<StateId> state) {

        /** Whether the same picture would come of it: later stages of one calculation hold the same currents. */
        boolean isLike(Asked other) {
            return state.equals(other.state)
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
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        this.desk = desk;
        this.canvas = new LayoutCanvas(TITLE, "The currents", painter, this::pick);
        this.layouts = new LatestWins<>(
                "currents",
                (question, cancel, soFar) -> FlowPicture.of(question.results(), question.state(), painter.fonts()),
                Duration.ZERO,
                eventThread,
                this::receive);
        setName("view-" + KEY);
        canvas.showTrails(id -> picture.map(shown -> shown.trail(id)).orElse(List.of()));
        add(head(), "growx");
        add(canvas, "grow, push, wmin 120, hmin 80");
    }

    private JComponent head() {
        JPanel head = new JPanel(new MigLayout("insets 4 10 4 8, fillx", "[grow,fill]", "[center]"));
        reading.setName("currents-reading");
        reading.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        head.add(reading, "wmin 0");
        return head;
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String title() {
        return TITLE;
    }

    @Override
    public String about() {
        return ABOUT;
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
        Optional<String> point = ids.stream()
                .filter(id -> picture.filter(shown -> shown.isPoint(id)).isPresent())
                .filter(id -> desk.harness().flatMap(now -> now.element(id)).isEmpty())
                .findFirst();
        if (point.isEmpty()) {
            probes.clear();
            desk.select(Selection.of(ids));
        } else {
            probes.remove(point.get());
            probes.add(point.get());
            while (probes.size() > MOST_PROBES) {
                probes.remove(0);
            }
        }
        showSelection();
    }

    @Override
    public void showRows() {
        Optional<Asked> now =
                desk.analysis().map(results -> new Asked(results, desk.view().state()));
        if (now.isEmpty()) {
            layouts.stop();
            asked = Optional.empty();
            picture = Optional.empty();
            canvas.show(Optional.empty(), desk.status().isBusy() ? "Being worked out…" : "No currents yet", true);
            return;
        }
        if (asked.filter(now.get()::isLike).isEmpty()) {
            asked = now;
            layouts.ask(now.get());
        }
        showSelection();
    }

    private void receive(LatestWins.Outcome<Asked, FlowPicture> outcome) {
        boolean anew = !shownOf.equals(desk.document());
        shownOf = desk.document();
        picture = outcome.answer();
        probes.removeIf(id -> picture.filter(shown -> shown.isPoint(id)).isEmpty());
        String reason = outcome.failure()
                .map(failure -> "The currents cannot be drawn: " + failure.getMessage())
                .orElse("");
        canvas.show(picture.map(FlowPicture::scene), reason, anew);
        showSelection();
    }

    @Override
    public void showSelection() {
        Selection selection = desk.selection();
        canvas.select(probes.isEmpty() ? selection : new Selection(probes, selection.path(), Optional.empty(), false));
        Optional<StateId> state = desk.view().state();
        String text = picture.map(shown -> probes.size() == MOST_PROBES
                        ? shown.between(probes.get(0), probes.get(1), state)
                        : probes.isEmpty() ? old() : shown.at(probes.get(0), state))
                .orElse(HINT);
        reading.setText(text);
        reading.setToolTipText(text);
    }

    private String old() {
        return desk.isCurrent() ? HINT : "Being worked out again; these are the currents from before the change.";
    }
}
