package org.ohmloom.workbench.widget;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** A list with words below its last row that scroll with it; as wide as what it is scrolled in. */
public final class ListWithFoot extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1L;

    private final transient JList<?> list;
    private final transient JComponent foot;

    public ListWithFoot(JList<?> list, JComponent foot) {
        super(new BorderLayout());
        this.list = list;
        this.foot = foot;
        setOpaque(true);
        add(list, BorderLayout.CENTER);
        add(foot, BorderLayout.SOUTH);
    }

    /**
     * That of the list as it is: a panel is told of another look before what lies in it. A list between two looks has none of its own
     * and would ask the panel for it.
     */
    @Override
    public Color getBackground() {
        return list == null || !list.isBackgroundSet() ? super.getBackground() : list.getBackground();
    }

    /** As high as list and words are at the width they are shown in: wrapped words only know their height by their width. */
    @Override
    public Dimension getPreferredSize() {
        int width = getParent() == null ? getWidth() : getParent().getWidth();
        if (width > 0 && foot.getWidth() != width) {
            foot.setSize(width, foot.getHeight());
        }
        return super.getPreferredSize();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return list.getPreferredScrollableViewportSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return getFontMetrics(getFont()).getHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
