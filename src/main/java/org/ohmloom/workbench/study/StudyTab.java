package org.ohmloom.workbench.study;

import java.awt.LayoutManager;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A tab beside the layout that shows results. */
public abstract class StudyTab extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient TabName name;

    public StudyTab(LayoutManager layout, TabName name) {
        super(layout);
        this.name = name;
        setName("view-" + name.key());
    }

    /** Stable kebab-case text. */
    public final String key() {
        return name.key();
    }

    /** What stands on the tab. */
    public final String title() {
        return name.title();
    }

    /** What it answers, in a sentence. */
    public final String about() {
        return name.about();
    }

    /** What takes the keyboard when the tab is gone to. */
    public abstract JComponent front();

    /** Shows the results as they are now. */
    public abstract void showRows();

    /** Marks what is selected elsewhere. */
    public abstract void showSelection();
}
