package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.border.AbstractBorder;

/**
 * A fine line round what has the keyboard: round a list or table that scrolls, or round one cell of it. Selected rows look alike
 * with and without the keyboard, so that they can be seen from another view; the line says where one is.
 */
public final class FocusFrame extends AbstractBorder {

    private static final long serialVersionUID = 1L;
    private static final int LINE = 1;

    private final transient Component holder;
    private final String otherwise;
    private final int beside;

    private FocusFrame(Component holder, String otherwise, int beside) {
        this.holder = holder;
        this.otherwise = otherwise;
        this.beside = beside;
    }

    /** Round what is scrolled; nothing is to be seen while it has not the keyboard. */
    public static void around(JScrollPane scroll, JComponent view) {
        around(scroll, view, "");
    }

    /**
     * Round what is scrolled.
     *
     * @param view      what takes the keyboard in it
     * @param otherwise colour of the line while it has not; blank for none
     */
    public static void around(JScrollPane scroll, JComponent view, String otherwise) {
        scroll.setBorder(new FocusFrame(view, otherwise, LINE));
        view.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                scroll.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                scroll.repaint();
            }
        });
    }

    /**
     * Round the cell that has the keyboard in a table.
     *
     * @param beside room left and right of what stands in the cell, px
     */
    public static FocusFrame cell(Component table, int beside) {
        return new FocusFrame(table, "", beside);
    }

    @Override
    public void paintBorder(Component on, Graphics g, int x, int y, int width, int height) {
        if (holder.isFocusOwner() || !otherwise.isBlank()) {
            g.setColor(Tone.colour(holder.isFocusOwner() ? "Ohmloom.selection" : otherwise));
            g.drawRect(x, y, width - LINE, height - LINE);
        }
    }

    @Override
    public Insets getBorderInsets(Component on, Insets insets) {
        insets.set(LINE, beside, LINE, beside);
        return insets;
    }
}
