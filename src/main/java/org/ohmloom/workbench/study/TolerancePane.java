package org.ohmloom.workbench.study;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.tolerance.Outcome;
import org.ohmloom.analysis.tolerance.Spreads;
import org.ohmloom.analysis.tolerance.TolerancePlan;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.WrappedLabel;
import org.ohmloom.workbench.words.Words;

/** How far results spread with parts, loads and air: what to draw, and below it what came of it. */
public final class TolerancePane extends StudyTab {
    private static final Words WORDS = Words.of("tolerance");

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "tolerance";

    private final transient Desk desk;
    private final transient ToleranceDraws draws;
    private final ToleranceFields fields = new ToleranceFields();
    private final JButton draw = new JButton(WORDS.get("draw"));
    private final JButton stop = new JButton(WORDS.get("stop"));
    private final JProgressBar progress = new JProgressBar();
    private final WrappedLabel message = new WrappedLabel(" ");
    private final StudyPane<Outcome> list;
    private transient Optional<Document> shown = Optional.empty();

    public TolerancePane(Desk desk, ScenePainter painter, Samples samples, Executor eventThread) {
        super(new BorderLayout(), TabName.of(KEY));
        this.desk = desk;
        draws = new ToleranceDraws(eventThread, this::drawsChanged);
        list = new StudyPane<>(new ToleranceList(draws::latest), desk, painter, samples);
        add(head(), BorderLayout.NORTH);
        add(list);
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT
                    && !desk.document().map(TolerancePane::original).equals(shown)) {
                shown = desk.document().map(TolerancePane::original);
                draws.clear();
            }
        });
        showState();
    }

    /** What a side copy is of; draws of the one are old draws of the other. */
    private static Document original(Document open) {
        return open.original().orElse(open);
    }

    private JComponent head() {
        JPanel head = new JPanel(new MigLayout("insets 6 8 2 8, fillx, gap 6 1, wrap 1, hidemode 3"));
        draw.setName("tolerance-draw");
        draw.addActionListener(event -> draw());
        stop.setName("tolerance-stop");
        stop.addActionListener(event -> draws.stop());
        progress.setName("tolerance-progress");
        progress.getAccessibleContext().setAccessibleName(WORDS.get("progress"));
        message.setName("tolerance-message");
        JPanel buttons = new JPanel(new MigLayout("insets 2, gap 6, hidemode 3, fillx", "[][][][grow]"));
        buttons.setOpaque(false);
        buttons.add(draw);
        buttons.add(stop);
        buttons.add(progress, "w 120!");
        buttons.add(message, "growx, wmin 0");
        head.add(fields);
        head.add(buttons, "growx, wmin 0");
        return head;
    }

    /** Draws with what is entered; says what is wrong with it. */
    public void draw() {
        Optional<Analysis> results = desk.analysis().filter(analysis -> desk.isWhole());
        if (results.isEmpty()) {
            message.say(WORDS.get("not-ready"));
            return;
        }
        try {
            fields.show(results.get().harness(), usual(results.get()));
            TolerancePlan plan = fields.plan(usual(results.get()));
            progress.setMaximum(plan.runs());
            draws.draw(results.get(), plan);
        } catch (IllegalArgumentException wrong) {
            message.say(Words.said(wrong));
        }
    }

    private static Spreads usual(Analysis analysis) {
        return Spreads.of(analysis.evidence().tables());
    }

    /** Whether a study is under way. */
    public boolean isBusy() {
        return draws.isBusy();
    }

    /** The list of results. */
    StudyPane<Outcome> results() {
        return list;
    }

    /** What that list holds. */
    public Study<Outcome> sheet() {
        return list.study();
    }

    /** What is said beside the buttons. */
    String said() {
        return message.said();
    }

    private void drawsChanged() {
        showState();
        if (!draws.isBusy()) {
            list.showRows();
        }
    }

    private void showState() {
        stop.setEnabled(draws.isBusy());
        progress.setVisible(draws.isBusy());
        progress.setValue(draws.doneCount());
        if (draws.isBusy()) {
            message.say(WORDS.get("drawing", draws.doneCount(), progress.getMaximum()));
        } else if (!draws.problem().isEmpty()) {
            message.say(WORDS.get("failed", draws.problem()));
        } else {
            message.say(draws.latest()
                    .map(each -> WORDS.get(
                            "drawn",
                            each.result().plan().runs(),
                            each.result().inputs().size(),
                            each.result().plan().seed(),
                            each.result().unsolvedCount()))
                    .orElse(WORDS.get("hint")));
        }
    }

    @Override
    public JComponent front() {
        return list.front();
    }

    @Override
    public void showRows() {
        desk.analysis().ifPresent(analysis -> fields.show(analysis.harness(), usual(analysis)));
        list.showRows();
    }

    @Override
    public void showSelection() {
        list.showSelection();
    }
}
