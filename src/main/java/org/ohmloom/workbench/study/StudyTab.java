package org.ohmloom.workbench.study;

import java.awt.LayoutManager;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A tab beside the layout that shows results. */
public abstract class StudyTab extends JPanel {

    private static final long serialVersionUID = 1L;

    public StudyTab(LayoutManager layout) {
        super(layout);
    }

    /** Stable kebab-case text. */
    public abstract String key();

    /** What stands on the tab. */
    public abstract String title();

    /** What it answers, in a sentence. */
    public abstract String about();

    /** What takes the keyboard when the tab is gone to. */
    public abstract JComponent front();

    /** Shows the results as they are now. */
    public abstract void showRows();

    /** Marks what is selected elsewhere. */
    public abstract void showSelection();
}
