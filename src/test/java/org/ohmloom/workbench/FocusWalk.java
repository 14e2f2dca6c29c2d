package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.DefaultButtonModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JList;
import javax.swing.JMenuBar;
import javax.swing.JRootPane;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicSplitPaneDivider;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.command.Command;

/**
 * A walk by Tab round everything in a window that takes the keyboard, and what is wrong on the way: a stop that is not to be
 * seen, has no name or does not show that it has the keyboard, a trap, a control that is never reached.
 */
final class FocusWalk {

    private static final int MOST_STOPS = 400;
    private static final int MOST_IN_ONE = 250;
    private static final int AROUND = 4;

    private final Keyboard keys;
    private final String place;
    private final Consumer<Component> atEach;
    private final Set<Component> reached = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> wrong = new LinkedHashSet<>();
    private final Set<String> byControlTab = new LinkedHashSet<>();

    /**
     * A walk not begun.
     *
     * @param place  what findings are told of
     * @param atEach does something at each stop and leaves the keyboard there
     */
    FocusWalk(Keyboard keys, String place, Consumer<Component> atEach) {
        this.keys = keys;
        this.place = place;
        this.atEach = atEach;
    }

    /** What is wrong, a line each. */
    Set<String> wrong() {
        return wrong;
    }

    /** What Tab does not leave and Ctrl+Tab does. */
    Set<String> byControlTab() {
        return byControlTab;
    }

    /** How many things had the keyboard. */
    int stops() {
        return reached.size();
    }

    /** Goes round once, forwards, from where the keyboard is. */
    FocusWalk round(Window window) {
        Component first = Keyboard.owner();
        Component here = first;
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            if (here == null) {
                say("after " + stop + " steps nothing has the keyboard");
                return this;
            }
            reached.add(here);
            look(here, window);
            atEach.accept(here);
            if (Keyboard.owner() != here) {
                say("the keyboard went from " + told(here) + " to " + told(Keyboard.owner())
                        + " and did not come back");
            }
            Component next = step(here);
            if (next == here) {
                if (reached.size() > 1 || wanted(window).size() > 1) {
                    say(told(here) + " keeps the keyboard");
                }
                return missed(window);
            }
            if (next == first) {
                return missed(window);
            }
            if (next != null && reached.contains(next)) {
                say("Tab goes from " + told(here) + " to " + told(next) + " and never comes to " + told(first));
                return missed(window);
            }
            here = next;
        }
        say("no way round in " + MOST_STOPS + " steps");
        return this;
    }

    private @Nullable Component step(Component here) {
        Shot before = OnEventThread.get(() -> Shot.of(here));
        boolean leaves = isLeftByTab(here);
        for (int press = 0; press < MOST_IN_ONE && Keyboard.owner() == here; press++) {
            if (leaves) {
                keys.press(KeyEvent.VK_TAB);
            } else {
                byControlTab.add(told(here));
                keys.press(KeyEvent.VK_TAB, KeyEvent.VK_CONTROL);
            }
            if (OnEventThread.get(here::getFocusTraversalKeysEnabled)) {
                break;
            }
        }
        Component next = Keyboard.owner();
        if (next != here && OnEventThread.get(() -> before.equals(Shot.of(here)))) {
            say(told(here) + " does not show that it has the keyboard");
        }
        return next;
    }

    /** Whether Tab leaves a component; Ctrl+Tab does otherwise. */
    static boolean isLeftByTab(Component here) {
        return OnEventThread.get(() -> !here.getFocusTraversalKeysEnabled()
                || here.getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS).stream()
                        .anyMatch(each -> each.getKeyCode() == KeyEvent.VK_TAB && each.getModifiers() == 0));
    }

    private void look(Component here, Window window) {
        OnEventThread.run(() -> {
            if (SwingUtilities.getWindowAncestor(here) != window && here != window) {
                say("the keyboard left the window for " + told(here));
            }
            AccessibleContext context = here.getAccessibleContext();
            String name = context == null ? null : context.getAccessibleName();
            if (name == null || name.isBlank()) {
                say(told(here) + " has no name to be read out");
            }
            if (!here.isShowing() || !here.isEnabled()) {
                say(told(here) + " has the keyboard and is not there to be used");
            } else if (here instanceof JComponent component
                    && component.getVisibleRect().isEmpty()) {
                say(told(here) + " has the keyboard out of sight");
            }
        });
    }

    /** Says which controls were not reached. */
    private FocusWalk missed(Window window) {
        OnEventThread.run(() -> wanted(window).stream()
                .filter(each -> !reached.contains(each) && !inGroupReached(each) && !typedInto(each))
                .forEach(each -> say(told(each) + " is not reached by Tab")));
        return this;
    }

    private boolean inGroupReached(Component each) {
        return each instanceof AbstractButton button
                && button.getModel() instanceof DefaultButtonModel model
                && model.getGroup() != null
                && Collections.list(model.getGroup().getElements()).stream().anyMatch(reached::contains);
    }

    /** A box that is typed into has the keyboard in its field. */
    private boolean typedInto(Component each) {
        return each instanceof JComboBox<?> box
                && box.isEditable()
                && reached.contains(box.getEditor().getEditorComponent());
    }

    private List<Component> wanted(Window window) {
        return ComponentTree.all(window).stream().filter(FocusWalk::isControl).collect(Collectors.toList());
    }

    private static boolean isControl(Component each) {
        if (!each.isShowing() || !each.isEnabled() || isPartOfAnother(each)) {
            return false;
        }
        if (each instanceof AbstractButton button && !each.isFocusable()) {
            // A button beside a command's menu item may leave the keyboard to that, one of a chooser of files to the
            // menu of its list.
            return !(button.getAction() instanceof Command)
                    && SwingUtilities.getAncestorOfClass(JFileChooser.class, each) == null;
        }
        return each.isFocusable()
                && (each instanceof AbstractButton
                        || each instanceof JTextComponent
                        || each instanceof JTable
                        || each instanceof JList<?>
                        || each instanceof JTree
                        || each instanceof JComboBox<?>
                        || each instanceof JTabbedPane
                        || each instanceof LayoutCanvas);
    }

    private static boolean isPartOfAnother(Component each) {
        if (each.getClass().getName().startsWith("com.formdev.")) {
            return true;
        }
        for (Container up = each.getParent(); up != null; up = up.getParent()) {
            if (up instanceof JComboBox<?>
                    || up instanceof JScrollBar
                    || up instanceof JSpinner
                    || up instanceof JMenuBar
                    || up instanceof JTextComponent
                    || up instanceof JSplitPane split && each.getParent() != split && isDivider(each)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isDivider(Component each) {
        return each.getParent() instanceof BasicSplitPaneDivider;
    }

    private void say(String what) {
        wrong.add(place + ": " + what);
    }

    static String told(@Nullable Component each) {
        if (each == null) {
            return "nothing";
        }
        String kind = each.getClass().getSimpleName();
        String text = each instanceof AbstractButton button ? " \"" + button.getText() + "\"" : "";
        StringBuilder name = new StringBuilder(String.valueOf(each.getName()));
        for (Container up = each.getParent(); up != null && name.length() < 60; up = up.getParent()) {
            if (up.getName() != null && !up.getName().startsWith("null.")) {
                name.insert(0, up.getName() + "/");
            }
        }
        return (kind.isEmpty() ? each.getClass().getSuperclass().getSimpleName() : kind) + " " + name + text;
    }

    /**
     * What is on the screen of a component and close round it.
     *
     * @param room   where in its window, px
     * @param pixels all its colours as one number
     */
    private record Shot(Rectangle room, int pixels) {

        static Shot of(Component shown) {
            JRootPane root = SwingUtilities.getRootPane(shown);
            if (root == null || !shown.isShowing()) {
                return new Shot(new Rectangle(), 0);
            }
            Component framed = shown;
            if (SwingUtilities.getAncestorOfClass(JViewport.class, shown) != null
                    && shown.getParent() instanceof JViewport) {
                framed = SwingUtilities.getAncestorOfClass(JScrollPane.class, shown);
            }
            Rectangle room = SwingUtilities.convertRectangle(framed.getParent(), framed.getBounds(), root);
            room.grow(AROUND, AROUND);
            room = room.intersection(new Rectangle(0, 0, root.getWidth(), root.getHeight()));
            if (room.isEmpty()) {
                return new Shot(room, 0);
            }
            BufferedImage image = new BufferedImage(room.width, room.height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.translate(-room.x, -room.y);
            g.setClip(room);
            root.paint(g);
            g.dispose();
            int[] colours = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
            return new Shot(room, Arrays.hashCode(colours));
        }
    }
}
