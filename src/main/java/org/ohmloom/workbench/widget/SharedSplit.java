package org.ohmloom.workbench.widget;

import java.awt.event.KeyEvent;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import org.ohmloom.workbench.words.Words;

/** Two panes with a divider between, which starts at a share of the room and stays where a person puts it. */
public final class SharedSplit extends JSplitPane {

    private static final long serialVersionUID = 1L;

    private final double share;
    private boolean placed;

    /**
     * A split.
     *
     * @param name  what comes behind the divider
     * @param share share of the first pane, 0 to 1
     */
    public SharedSplit(String name, int orientation, JComponent first, JComponent second, double share) {
        super(orientation, true, first, second);
        this.share = share;
        setName("split-" + name);
        setResizeWeight(share);
        setBorder(null);
        getAccessibleContext()
                .setAccessibleName(Words.of("window")
                        .get("divider-before", Words.of("window").get("divider." + name)));
        // Keys of its own would take F6 and F8 from the commands.
        InputMap keys = getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        keys.put(Keys.plain(KeyEvent.VK_F6), "none");
        keys.put(Keys.plain(KeyEvent.VK_F8), "none");
    }

    @Override
    public void doLayout() {
        int room = getOrientation() == HORIZONTAL_SPLIT ? getWidth() : getHeight();
        if (!placed && room > 0) {
            placed = true;
            setDividerLocation((int) (room * share));
        }
        super.doLayout();
    }
}
