package org.ohmloom.workbench.guide;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Says what to do first, above the board as long as nothing lies on it. */
public final class FirstStepBanner extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    /**
     * A banner.
     *
     * @param guide begins the guide
     */
    public FirstStepBanner(Desk desk, Action guide) {
        super(new MigLayout("insets 10 14 10 12, fillx, gapy 2", "[grow,fill][]"));
        this.desk = desk;
        Words words = Words.of("guide");
        setName("first-step");
        putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.pane");
        JButton begin = new JButton(guide);
        begin.setName("first-step-guide");
        add(PaneTitle.of(words.get("first-step.title")), "wrap");
        add(WrappedText.of(words.get("first-step"), "Label.foreground", 0), "growx, wmin 0");
        add(begin, "aligny top");
        desk.listen(topic -> refresh());
        refresh();
    }

    private void refresh() {
        boolean bare = desk.harness().filter(FirstStepBanner::bare).isPresent();
        if (bare != isVisible()) {
            if (bare && getParent() != null) {
                // the height of the text follows from its width: from the one it will have, not from the one it had
                setSize(getParent().getWidth(), getHeight());
                doLayout();
            }
            setVisible(bare);
            revalidate();
        }
    }

    private static boolean bare(Harness harness) {
        return harness.components().all().isEmpty()
                && harness.breakouts().all().isEmpty()
                && harness.wires().all().isEmpty();
    }
}
