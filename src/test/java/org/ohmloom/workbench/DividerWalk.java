package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JSplitPane;
import javax.swing.plaf.basic.BasicSplitPaneUI;

/** Goes to the dividers of a window by keys, moves each and comes back; and what is wrong on the way. */
final class DividerWalk {

    private static final int MOST = 8;

    private final Keyboard keys;
    private final Set<String> wrong = new LinkedHashSet<>();
    private final Set<String> moved = new TreeSet<>();

    DividerWalk(Keyboard keys) {
        this.keys = keys;
    }

    /** What is wrong, a line each. */
    Set<String> wrong() {
        return wrong;
    }

    /** Names of the dividers that were moved. */
    Set<String> moved() {
        return moved;
    }

    /** From divider to divider until the keyboard is back where it was. */
    DividerWalk from(String place) {
        Component before = Keyboard.owner();
        Optional<JSplitPane> last = Optional.empty();
        int marked = 0;
        for (int step = 0; step < MOST; step++) {
            keys.press(KeyEvent.VK_F6, KeyEvent.VK_SHIFT);
            if (last.isPresent() && marked == pixels(last.get())) {
                wrong.add(last.get().getName() + " does not show that it has the keyboard");
            }
            if (Keyboard.owner() == before) {
                return this;
            }
            if (Keyboard.owner() instanceof JSplitPane split) {
                moveAndBack(split);
                last = Optional.of(split);
                marked = pixels(split);
            } else {
                wrong.add(place + ": Shift+F6 goes to " + FocusWalk.told(Keyboard.owner()));
                return this;
            }
        }
        wrong.add(place + ": the keyboard does not come back from the dividers");
        return this;
    }

    private void moveAndBack(JSplitPane split) {
        String name = OnEventThread.get(split::getName);
        boolean across = OnEventThread.get(split::getOrientation) == JSplitPane.HORIZONTAL_SPLIT;
        String spoken = OnEventThread.get(() -> split.getAccessibleContext().getAccessibleName());
        if (spoken == null || spoken.isBlank()) {
            wrong.add(name + " has no name to be read out");
        }
        int before = OnEventThread.get(split::getDividerLocation);
        keys.press(across ? KeyEvent.VK_LEFT : KeyEvent.VK_UP);
        int less = OnEventThread.get(split::getDividerLocation);
        keys.press(across ? KeyEvent.VK_RIGHT : KeyEvent.VK_DOWN);
        int again = OnEventThread.get(split::getDividerLocation);
        if (less >= before || again != before) {
            wrong.add(name + " goes from " + before + " to " + less + " and back to " + again);
        }
        moved.add(name);
    }

    /** What is on the screen of a divider, as one number. */
    private static int pixels(JSplitPane split) {
        return OnEventThread.get(() -> painted(split));
    }

    private static int painted(JSplitPane split) {
        Component divider = ((BasicSplitPaneUI) split.getUI()).getDivider();
        BufferedImage image = new BufferedImage(divider.getWidth(), divider.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        divider.paint(g);
        g.dispose();
        return Arrays.hashCode(image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()));
    }
}
