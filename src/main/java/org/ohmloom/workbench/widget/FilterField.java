package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JTextField;

/** A field above a list: shows the rows that hold what is typed into it, as it is typed. */
public final class FilterField extends JTextField {

    private static final long serialVersionUID = 1L;

    /**
     * A field.
     *
     * @param shown    what stands in it while it is empty
     * @param name     what it is called for readers of the screen
     * @param filtered shows the rows anew
     */
    public FilterField(int columns, String shown, String name, Runnable filtered) {
        super(columns);
        putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, shown);
        putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, Boolean.TRUE);
        putClientProperty(FlatClientProperties.TEXT_FIELD_LEADING_ICON, Icons.of("find"));
        getAccessibleContext().setAccessibleName(name);
        TextUndo.install(this);
        TextChanges.listen(this, filtered);
    }
}
