package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JLabel;

/** The title of a view. */
public final class PaneTitle {

    private PaneTitle() {}

    public static JLabel of(String text) {
        JLabel title = new JLabel(text);
        title.putClientProperty(FlatClientProperties.STYLE_CLASS, "h4");
        return title;
    }
}
