package org.ohmloom.workbench.guide;

import java.awt.CardLayout;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.start.StartLoad;
import org.ohmloom.analysis.start.StartPlan;
import org.ohmloom.analysis.start.StartSensor;
import org.ohmloom.model.Harness;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** The guided list page by page: supply and places, loads, sensors. Needs no window itself. */
final class GuidePane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int PAGES = 3;

    /** Lays a plan out and chooses sizes. */
    @FunctionalInterface
    interface Layer {
        Harness layOut(StartPlan plan, Cancel cancel);
    }

    private final transient Words words = Words.of("guide");
    private final CardLayout cards = new CardLayout();
    private final JPanel pages = new JPanel(cards);
    private final GuideSupply supply;
    private final GuideTable loads;
    private final GuideTable sensors;
    private final JButton back = new JButton(words.get("back"));
    private final JButton next = new JButton(words.get("next"));
    private final JButton stop = new JButton(words.get("cancel"));
    private final JLabel place = new JLabel();
    private final JProgressBar progress = new JProgressBar();
    private final WrappedText problem = WrappedText.of("", "Ohmloom.error", 0);
    private final transient Layer layer;
    private final transient Executor worker;
    private final transient Executor eventThread;
    private final transient Consumer<Harness> done;
    private final transient Runnable closing;
    private transient AtomicBoolean cancelled = new AtomicBoolean();
    private int page;

    /**
     * A guide.
     *
     * @param layer       lays out and sizes; called on the worker
     * @param worker      a thread for that
     * @param eventThread brings its result back
     * @param done        takes the harness
     * @param closing     called when the person gives up
     */
    GuidePane(Layer layer, Executor worker, Executor eventThread, Consumer<Harness> done, Runnable closing) {
        this(layer, ShownUnits.USUAL, worker, eventThread, done, closing);
    }

    /** A guide whose bare numbers are in these units. */
    GuidePane(
            Layer layer,
            ShownUnits units,
            Executor worker,
            Executor eventThread,
            Consumer<Harness> done,
            Runnable closing) {
        super(new MigLayout("insets 16 18 14 18, fill, wrap 1, hidemode 3", "[grow,fill]"));
        HelpPage.name(this, "dialogs/new-harness");
        this.layer = layer;
        this.supply = new GuideSupply(units);
        this.worker = worker;
        this.eventThread = eventThread;
        this.done = done;
        this.closing = closing;
        setName("guide");
        List<String> names = supply.placeNames();
        loads = new GuideTable(
                "loads",
                words.get("loads"),
                words.get("loads.about"),
                List.of(
                        GuideTable.Head.typed(words.get("name")),
                        new GuideTable.Head(words.get("kind"), () -> shown(StartLoad.Kind.values())),
                        GuideTable.Head.typed(words.get("current")),
                        new GuideTable.Head(words.get("place"), supply::placeNames),
                        new GuideTable.Head(words.get("control"), () -> shown(StartLoad.Control.values()))),
                () -> List.of(
                        "",
                        GuideAnswers.shown(StartLoad.Kind.HEATER_OR_COIL),
                        "",
                        supply.placeNames().get(0),
                        GuideAnswers.shown(StartLoad.Control.SWITCH)));
        loads.row(List.of(
                words.get("first-load"),
                GuideAnswers.shown(StartLoad.Kind.ELECTRONICS),
                "4 A",
                names.get(names.size() - 1),
                GuideAnswers.shown(StartLoad.Control.SWITCH)));
        sensors = new GuideTable(
                "sensors",
                words.get("sensors"),
                words.get("sensors.about"),
                List.of(
                        GuideTable.Head.typed(words.get("name")),
                        new GuideTable.Head(words.get("kind"), () -> shown(StartSensor.Kind.values())),
                        new GuideTable.Head(words.get("place"), supply::placeNames)),
                () -> List.of(
                        "",
                        GuideAnswers.shown(StartSensor.Kind.RATIOMETRIC),
                        supply.placeNames().get(0)));
        build();
    }

    private static List<String> shown(Enum<?>[] values) {
        return Arrays.stream(values).map(GuideAnswers::shown).toList();
    }

    private void build() {
        pages.add(supply, "0");
        pages.add(loads, "1");
        pages.add(sensors, "2");
        progress.setIndeterminate(true);
        progress.setVisible(false);
        progress.getAccessibleContext().setAccessibleName(words.get("working"));
        problem.setVisible(false);
        problem.setName("guide-problem");
        JPanel buttons = new JPanel(new MigLayout("insets 6 0 0 0, fillx, hidemode 3", "[grow][][][]"));
        back.setName("guide-back");
        next.setName("guide-next");
        stop.setName("guide-cancel");
        place.setName("guide-place");
        buttons.add(place, "split 2");
        buttons.add(progress, "growx");
        buttons.add(stop);
        buttons.add(back);
        buttons.add(next);
        add(pages, "grow, push");
        add(problem, "wmin 0");
        add(buttons);
        back.addActionListener(event -> turn(page - 1));
        next.addActionListener(event -> forward());
        stop.addActionListener(event -> giveUp());
        turn(0);
    }

    /** The button that goes on. */
    JButton nextButton() {
        return next;
    }

    /** Ends what is under way, or the guide. */
    void giveUp() {
        boolean working = progress.isVisible();
        cancelled.set(true);
        working(false);
        if (!working) {
            closing.run();
        }
    }

    private void turn(int to) {
        page = Math.max(0, Math.min(PAGES - 1, to));
        cards.show(pages, String.valueOf(page));
        back.setEnabled(page > 0);
        place.setText(words.get("place-of", String.valueOf(page + 1), String.valueOf(PAGES)));
        next.setText(words.get(page == PAGES - 1 ? "lay-out" : "next"));
        say("");
        next.requestFocusInWindow();
    }

    private void forward() {
        if (page < PAGES - 1) {
            turn(page + 1);
            return;
        }
        try {
            StartPlan plan = supply.answers(loads.rows(), sensors.rows()).plan();
            layOut(plan);
        } catch (IllegalArgumentException unfit) {
            say(Words.said(unfit));
        }
    }

    private void layOut(StartPlan plan) {
        AtomicBoolean stopped = new AtomicBoolean();
        cancelled = stopped;
        say("");
        working(true);
        worker.execute(() -> {
            try {
                Harness harness = layer.layOut(plan, stopped::get);
                eventThread.execute(() -> {
                    if (!stopped.get()) {
                        working(false);
                        done.accept(harness);
                    }
                });
            } catch (CancellationException asked) {
                // The person gave up; the guide is ready again already.
            } catch (RuntimeException failed) {
                eventThread.execute(() -> {
                    working(false);
                    say(words.get("failed", Words.said(failed)));
                });
            }
        });
    }

    private void working(boolean now) {
        progress.setVisible(now);
        progress.setStringPainted(now);
        progress.setString(words.get("working"));
        next.setEnabled(!now);
        back.setEnabled(!now && page > 0);
    }

    private void say(String text) {
        problem.setText(text);
        problem.setVisible(!text.isEmpty());
        revalidate();
    }
}
