package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.border.AbstractBorder;

/** Lets a panel of text take the keyboard, so that it can be gone to and read out; an edge shows where one is. */
public final class FocusEdge {

    private FocusEdge() {}

    /**
     * Lets a panel take the keyboard.
     *
     * @param name what is read out
     */
    public static void on(JPanel panel, String name) {
        panel.setFocusable(true);
        // Tab passes over what has no keys of its own.
        panel.getInputMap().put(Keys.plain(KeyEvent.VK_SPACE), "none");
        panel.getAccessibleContext().setAccessibleName(name);
        panel.setBorder(new AbstractBorder() {
            private static final long serialVersionUID = 1L;

            @Override
            public void paintBorder(Component on, Graphics g, int x, int y, int width, int height) {
                if (on.isFocusOwner()) {
                    g.setColor(Tone.colour("Ohmloom.selection"));
                    g.drawRect(x, y, width - 1, height - 1);
                }
            }
        });
        panel.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                if (panel.getParent() instanceof JComponent parent) {
                    parent.scrollRectToVisible(panel.getBounds());
                }
                panel.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                panel.repaint();
            }
        });
        panel.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                panel.requestFocusInWindow();
            }
        });
    }
}
