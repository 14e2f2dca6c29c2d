package org.ohmloom.workbench;

import java.awt.LayoutManager;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A tab beside the layout that shows results. */
abstract class StudyTab extends JPanel {

    private static final long serialVersionUID = 1L;

    StudyTab(LayoutManager layout) {
        super(layout);
    }

    /** Stable kebab-case text. */
    abstract String key();

    /** What stands on the tab. */
    abstract String title();

    /** What it answers, in a sentence. */
    abstract String about();

    /** What takes the keyboard when the tab is gone to. */
    abstract JComponent front();

    /** Shows the results as they are now. */
    abstract void showRows();

    /** Marks what is selected elsewhere. */
    abstract void showSelection();
}
