package org.ohmloom.workbench.widget;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import org.ohmloom.workbench.words.Words;

/** Two panes with a divider between, which keeps to a share of the room until a person moves it, and stays there then. */
public final class SharedSplit extends JSplitPane {

    private static final long serialVersionUID = 1L;

    private final double share;
    private boolean firstWhole;

    /** The room it was last placed in, and where. */
    private int placedIn;

    private int placedAt;

    /**
     * A split.
     *
     * @param name  what comes behind the divider
     * @param share share of the first pane, 0 to 1
     */
    public SharedSplit(String name, int orientation, JComponent first, JComponent second, double share) {
        super(orientation, true, first, second);
        this.share = share;
        name(this, name);
    }

    /**
     * Gives the first pane what it asks for, where that is more than its share and not more than half the room; what the room grows
     * by is the second's.
     */
    public SharedSplit firstWhole() {
        firstWhole = true;
        return this;
    }

    /**
     * Names a split as the window does, without a border, and leaves to the commands the keys it would take.
     *
     * @param name what comes behind the divider
     */
    public static void name(JSplitPane split, String name) {
        Words words = Words.of("window");
        split.setName("split-" + name);
        split.setBorder(null);
        split.getAccessibleContext().setAccessibleName(words.get("divider-before", words.get("divider." + name)));
        Keys.leave(split, KeyEvent.VK_F6, KeyEvent.VK_F8);
        DividerKeys.on(split);
    }

    private int wanted(int room) {
        if (!firstWhole) {
            return (int) (room * share);
        }
        Dimension whole = getLeftComponent().getPreferredSize();
        int asked = getOrientation() == HORIZONTAL_SPLIT ? whole.width : whole.height;
        return Math.min(room / 2, Math.max(asked, placedIn > 0 ? placedAt : (int) (room * share)));
    }

    @Override
    public void doLayout() {
        int room = getOrientation() == HORIZONTAL_SPLIT ? getWidth() : getHeight();
        boolean moved = placedIn > 0 && getDividerLocation() != placedAt;
        if (room > 0 && !moved) {
            setDividerLocation(wanted(room));
        }
        super.doLayout();
        if (!moved) {
            placedIn = room;
            placedAt = getDividerLocation();
        }
    }
}
