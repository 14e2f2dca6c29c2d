package org.ohmloom.workbench.study;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/** The return paths: the picture of the ground points, loops, offsets, sensors, coupling and lost returns, each with its list. */
public final class ReturnsPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "returns";

    private final transient Desk desk;
    private final JTabbedPane tabs = new JTabbedPane();
    private final transient List<StudyPane<?>> panes;

    public ReturnsPane(List<Study<?>> studies, Desk desk, ScenePainter painter, Samples samples) {
        super(new BorderLayout(), TabName.of(KEY));
        this.desk = desk;
        panes = List.copyOf(
                studies.stream().map(study -> pane(study, painter, samples)).toList());
        tabs.setName("returns-lists");
        tabs.getAccessibleContext().setAccessibleName(Words.of("returns").get("lists"));
        tabs.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
        panes.forEach(pane -> HelpPage.name(pane, "views/" + pane.key()));
        panes.forEach(pane -> tabs.addTab(pane.title(), null, pane, pane.about()));
        tabs.addChangeListener(event -> {
            showRows();
            showSelection();
        });
        add(states(), BorderLayout.NORTH);
        add(tabs);
    }

    private <R> StudyPane<R> pane(Study<R> study, ScenePainter painter, Samples samples) {
        return new StudyPane<>(study, desk, painter, samples);
    }

    private JComponent states() {
        JPanel panel = new JPanel(new MigLayout("insets 4 10 0 8, gapx 6", "", "[center]"));
        StateChooser chooser = new StateChooser(desk);
        chooser.setName("returns-state");
        JLabel label = new JLabel(Words.of("returns").get("state"));
        label.setLabelFor(chooser);
        panel.add(label);
        panel.add(chooser, "w 120::220, h pref!");
        panel.setOpaque(false);
        return panel;
    }

    /** The lists in the order of their tabs. */
    List<StudyPane<?>> panes() {
        return panes;
    }

    /** Brings a list to the front. */
    public void showList(String key) {
        panes.stream().filter(pane -> pane.key().equals(key)).forEach(tabs::setSelectedComponent);
    }

    private Optional<StudyPane<?>> shown() {
        return panes.stream()
                .filter(pane -> pane == tabs.getSelectedComponent())
                .findFirst();
    }

    @Override
    public JComponent front() {
        return shown().map(StudyPane::front).orElse(tabs);
    }

    @Override
    public void showRows() {
        shown().ifPresent(StudyPane::showRows);
    }

    @Override
    public void showSelection() {
        shown().ifPresent(StudyPane::showSelection);
    }
}
