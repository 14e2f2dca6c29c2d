package org.ohmloom.workbench;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JLabel;

/** The title of a view. */
final class PaneTitle {

    private PaneTitle() {}

    static JLabel of(String text) {
        JLabel title = new JLabel(text);
        title.putClientProperty(FlatClientProperties.STYLE_CLASS, "h4");
        return title;
    }
}
