package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.study.CurrentsPane;
import org.ohmloom.workbench.study.ReturnsPane;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.study.StudyPane;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/** The layout and the studies, one of them in front; a bar above chooses. */
public final class ViewTabs extends JPanel {
    private static final Words WORDS = Words.of("commands");

    private static final long serialVersionUID = 1L;

    private final CardPages pages = new CardPages("views");
    private final ViewBar bar;
    private final transient Desk desk;
    private final transient List<StudyTab> studies;
    private final ReturnsPane returns;
    private final LayoutPane layout;
    private final CurrentsPane currents;
    private transient StudyTab latest;

    public ViewTabs(
            Desk desk,
            LayoutPane layout,
            CurrentsPane currents,
            List<Study<?>> studies,
            List<StudyTab> others,
            Services services,
            Samples samples) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1", "[grow,fill]", "[][grow,fill]"));
        ScenePainter painter = services.painter();
        this.desk = desk;
        this.returns = new ReturnsPane(Studies.RETURNS, desk, painter, samples);
        this.layout = layout;
        this.currents = currents;
        List<StudyTab> tabs = new ArrayList<>(List.of(currents));
        studies.forEach(study -> tabs.add(pane(study, painter, samples)));
        tabs.add(returns);
        tabs.addAll(others);
        this.studies = List.copyOf(tabs);
        this.latest = this.studies.get(0);
        getAccessibleContext().setAccessibleName(Words.of("views").get("views"));
        bar = new ViewBar(pages);
        addView("layout", WORDS.get("view-tabs.layout"), "", HelpPage.name(layout, "views/layout"));
        this.studies.forEach(
                tab -> addView(tab.key(), tab.title(), tab.about(), HelpPage.name(tab, "views/" + tab.key())));
        bar.arrange();
        add(bar, "growx, wmin 0");
        add(pages, "grow, push");
        pages.onChange(() -> studies().stream()
                .filter(pane -> pane == getSelectedComponent())
                .forEach(pane -> {
                    latest = pane;
                    pane.showRows();
                    pane.showSelection();
                }));
        Keys.bind(
                this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, Keys.menu(KeyEvent.VK_PAGE_DOWN), "next-view", () -> step(1));
        Keys.bind(
                this,
                WHEN_ANCESTOR_OF_FOCUSED_COMPONENT,
                Keys.menu(KeyEvent.VK_PAGE_UP),
                "previous-view",
                () -> step(-1));
        desk.listen(this::hear);
    }

    private <R> StudyPane<R> pane(Study<R> study, ScenePainter painter, Samples samples) {
        return new StudyPane<>(study, desk, painter, samples);
    }

    private void addView(String key, String title, String about, JComponent page) {
        pages.addPage(page);
        bar.addView(key, title, about, page);
    }

    /** The view in front. */
    public JComponent getSelectedComponent() {
        return pages.front();
    }

    /** All views. */
    public List<JComponent> views() {
        return pages.pages();
    }

    /** Brings a view to the front. */
    public void bring(JComponent view) {
        pages.bring(view);
    }

    List<StudyTab> studies() {
        return studies;
    }

    /** The currents. */
    public CurrentsPane currents() {
        return currents;
    }

    /** The canvas in front: that of the currents, otherwise that of the layout, brought to the front. */
    LayoutCanvas canvas() {
        return getSelectedComponent() == currents ? currents.front() : Reveal.inFront(layout.canvas());
    }

    /** The return paths. */
    public ReturnsPane returns() {
        return returns;
    }

    /** Keys of the views beside the layout, in the order of their tabs. */
    public List<String> keys() {
        return studies.stream().map(StudyTab::key).toList();
    }

    /** Brings the view so many places further on to the front and gives it the keyboard. */
    private void step(int places) {
        pages.step(places);
        front().requestFocusInWindow();
    }

    /** What takes the keyboard in the view in front. */
    private JComponent front() {
        return studies.stream()
                .filter(pane -> pane == getSelectedComponent())
                .map(StudyTab::front)
                .findFirst()
                .orElse(layout.canvas());
    }

    /** The study of a key. */
    public StudyTab study(String key) {
        return studies.stream()
                .filter(pane -> pane.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no study " + key));
    }

    /** Brings a study to the front and gives it the keyboard. */
    public void showStudy(String key) {
        Reveal.inFront(study(key).front()).requestFocusInWindow();
    }

    /** What takes the keyboard in the study looked at last. */
    public JComponent latestFront() {
        return latest.front();
    }

    private void hear(Topic topic) {
        switch (topic) {
            case DOCUMENT, HARNESS, RESULTS, VIEW -> showRows();
            case SELECTION -> studies.stream()
                    .filter(pane -> pane == getSelectedComponent())
                    .forEach(StudyTab::showSelection);
            case MESSAGE -> {}
        }
    }

    /** Brings the study in front up to date; the others follow when they come to the front. */
    private void showRows() {
        studies.stream().filter(pane -> pane == getSelectedComponent()).forEach(StudyTab::showRows);
    }
}
