package org.ohmloom.workbench.inspect;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.manual.WrittenPages;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.words.Words;

/** Shows the selected thing; a selected finding above what it is about. */
public final class InspectorPane extends JPanel {
    private static final Words WORDS = Words.of("inspector");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient ScenePainter painter;
    private final Content content = new Content();
    private final JScrollPane scroll;

    public InspectorPane(Desk desk, ScenePainter painter) {
        super(new MigLayout("insets 0, fill, gap 0"));
        this.desk = desk;
        this.painter = painter;
        this.scroll = new JScrollPane(
                content,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        FocusFrame.around(scroll, content);
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        scroll.putClientProperty(FlatClientProperties.SCROLL_PANE_SMOOTH_SCROLLING, Boolean.TRUE);
        content.setName("inspector");
        content.setFocusable(true);
        HelpPage.ask(content, () -> desk.selection().finding().map(finding -> WrittenPages.ofRule(finding.rule())));
        content.getAccessibleContext().setAccessibleName(WORDS.get("inspector.inspector"));
        add(scroll, "grow, push");
        desk.listen(topic -> {
            if (topic != Topic.MESSAGE) {
                showSelected(topic == Topic.SELECTION || topic == Topic.DOCUMENT);
            }
        });
        showSelected(true);
    }

    /** The panel the inspection stands on. */
    public JPanel content() {
        return content;
    }

    /** What is shown now. */
    public Optional<Inspection> inspection() {
        Optional<Readout> readout = Readout.of(desk);
        Optional<Inspection> element =
                readout.flatMap(numbers -> desk.selection().lead().flatMap(id -> new Inspector(numbers).of(id)));
        Optional<Inspection> shown = desk.selection()
                .finding()
                .map(finding -> {
                    List<Inspection.Section> sections = new ArrayList<>(FindingSections.of(finding, desk.units()));
                    element.ifPresent(found -> sections.addAll(found.sections()));
                    return new Inspection(
                            element.map(Inspection::title).orElse(WORDS.get("inspector.finding")),
                            element.map(Inspection::subtitle).orElse(""),
                            sections);
                })
                .or(() -> element)
                .or(() -> readout.map(HarnessSummary::of));
        return shown.map(each -> each.in(desk.units()));
    }

    private void showSelected(boolean fromTop) {
        content.removeAll();
        inspection()
                .ifPresent(shown ->
                        InspectionView.fill(content, shown, desk.analysis().isEmpty() || desk.isCurrent(), painter));
        content.revalidate();
        content.repaint();
        if (fromTop) {
            scroll.getVerticalScrollBar().setValue(0);
        }
    }

    /** As wide as there is room, as tall as it needs. */
    private static final class Content extends JPanel implements Scrollable {

        private static final long serialVersionUID = 1L;

        Content() {
            super(new MigLayout("insets 10 12 14 12, gapy 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
            putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.pane");
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return 24;
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return getParent() != null && getParent().getHeight() > getPreferredSize().height;
        }
    }
}
