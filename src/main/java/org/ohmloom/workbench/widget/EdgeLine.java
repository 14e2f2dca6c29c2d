package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import javax.swing.border.AbstractBorder;

/** A fine line above or below a pane, in the colour of the look that is on when it is painted. */
public final class EdgeLine extends AbstractBorder {

    private static final long serialVersionUID = 1L;

    private final int above;
    private final int below;

    private EdgeLine(int above, int below) {
        this.above = above;
        this.below = below;
    }

    public static EdgeLine above() {
        return new EdgeLine(1, 0);
    }

    public static EdgeLine around() {
        return new EdgeLine(1, 1);
    }

    @Override
    public void paintBorder(Component c, Graphics g, int x, int y, int width, int height) {
        g.setColor(Tone.colour("Ohmloom.line"));
        g.fillRect(x, y, width, above);
        g.fillRect(x, y + height - below, width, below);
    }

    @Override
    public Insets getBorderInsets(Component c, Insets insets) {
        insets.set(above, 0, below, 0);
        return insets;
    }
}
