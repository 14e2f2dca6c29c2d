package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The text of a dialog: one line in bold, below it a sentence that wraps. */
final class DialogText {

    private DialogText() {}

    /**
     * A text.
     *
     * @param columns letters in a line
     */
    static JComponent of(String title, String sentence, int columns) {
        JPanel pane = new JPanel(new MigLayout("insets 0 4 4 8, wrap 1, gapy 6"));
        JLabel first = new JLabel(title);
        first.putClientProperty(FlatClientProperties.STYLE_CLASS, "h4");
        JTextArea second = new JTextArea(sentence);
        second.setEditable(false);
        second.setFocusable(false);
        second.setLineWrap(true);
        second.setWrapStyleWord(true);
        second.setOpaque(false);
        second.setBorder(null);
        int width = columns * second.getFontMetrics(second.getFont()).charWidth('n');
        second.setSize(width, Short.MAX_VALUE);
        second.setPreferredSize(new Dimension(width, second.getPreferredSize().height));
        pane.add(first);
        pane.add(second);
        return pane;
    }
}
