package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;

/** Components side by side in as many rows as the width needs, and as high as those rows. */
public final class WrapLayout extends FlowLayout {

    private static final long serialVersionUID = 1L;

    private WrapLayout(int gap) {
        super(LEADING, UIScale.scale(gap), UIScale.scale(gap));
    }

    /** Lays a container out like that, its height following its width. */
    public static void on(JComponent container, int gap) {
        container.setLayout(new WrapLayout(gap));
        container.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                if (container.getPreferredSize().height != container.getHeight()) {
                    container.revalidate();
                }
            }
        });
    }

    @Override
    public Dimension preferredLayoutSize(Container target) {
        return rows(target, target.getWidth());
    }

    @Override
    public Dimension minimumLayoutSize(Container target) {
        int widest = 0;
        for (Component each : target.getComponents()) {
            widest = each.isVisible() ? Math.max(widest, each.getPreferredSize().width) : widest;
        }
        Insets insets = target.getInsets();
        return new Dimension(
                widest + insets.left + insets.right + 2 * getHgap(), rows(target, target.getWidth()).height);
    }

    private Dimension rows(Container target, int width) {
        Insets insets = target.getInsets();
        int room = width <= 0 ? Integer.MAX_VALUE : width - insets.left - insets.right - 2 * getHgap();
        int across = 0;
        int widest = 0;
        int height = 0;
        int rowHeight = 0;
        for (Component each : target.getComponents()) {
            if (each.isVisible()) {
                Dimension size = each.getPreferredSize();
                if (across > 0 && across + getHgap() + size.width > room) {
                    height += rowHeight + getVgap();
                    across = 0;
                    rowHeight = 0;
                }
                across += (across > 0 ? getHgap() : 0) + size.width;
                rowHeight = Math.max(rowHeight, size.height);
                widest = Math.max(widest, across);
            }
        }
        return new Dimension(
                widest + insets.left + insets.right + 2 * getHgap(),
                height + rowHeight + insets.top + insets.bottom + 2 * getVgap());
    }
}
