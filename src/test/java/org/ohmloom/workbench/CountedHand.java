package org.ohmloom.workbench.channel;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import org.ohmloom.workbench.OnEventThread;

/** A person's hand at mouse and keyboard: every click, drag, shortcut and field entry is counted. */
final class CountedHand {

    private static final int BETWEEN_MILLIS = 25;

    private final Robot robot;
    private final List<String> actions = new ArrayList<>();
    private final List<String> typed = new ArrayList<>();

    CountedHand() throws AWTException {
        robot = new Robot();
        robot.setAutoDelay(BETWEEN_MILLIS);
    }

    /** What was done, in order. */
    List<String> actions() {
        return List.copyOf(actions);
    }

    /** What was typed, in order. */
    List<String> typed() {
        return List.copyOf(typed);
    }

    /** Waits until something of that name can be seen and used. */
    static Component see(String name) {
        OnEventThread.await(name, () -> find(name).filter(Component::isEnabled).isPresent());
        return OnEventThread.get(() -> find(name).orElseThrow());
    }

    /** Whether something of that name can be seen; asked on the event thread. */
    static boolean isSeen(String name) {
        return find(name).isPresent();
    }

    /** What a label says; nothing where it cannot be seen. Asked on the event thread. */
    static String text(String name) {
        return find(name).map(each -> ((JLabel) each).getText()).orElse("");
    }

    private static Optional<Component> find(String name) {
        for (Window window : Window.getWindows()) {
            Optional<Component> found = window.isShowing() ? find(window, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<Component> find(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (name.equals(each.getName()) && each.isShowing()) {
                return Optional.of(each);
            }
            if (each instanceof Container inner) {
                Optional<Component> found = find(inner, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Clicks on something. */
    void click(String name) {
        actions.add("click " + name);
        press(middle(see(name)));
    }

    /** Clicks on an entry of a list. */
    void clickEntry(String list, int entry) {
        actions.add("click entry " + entry + " of " + list);
        JList<?> shown = (JList<?>) see(list);
        press(OnEventThread.get(() -> {
            Rectangle cell = shown.getCellBounds(entry, entry);
            Point origin = shown.getLocationOnScreen();
            return new Point(origin.x + 20, origin.y + cell.y + cell.height / 2);
        }));
    }

    /** Drags a row of a table onto a row of another. */
    void drag(String from, int row, String to, int onto) {
        actions.add("drag row " + row + " of " + from + " onto row " + onto + " of " + to);
        Point start = row(from, row);
        Point end = row(to, onto);
        robot.mouseMove(start.x, start.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseMove((start.x + end.x) / 2, (start.y + end.y) / 2);
        robot.mouseMove(end.x - 2, end.y);
        robot.mouseMove(end.x, end.y);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    private static Point row(String table, int row) {
        JTable shown = (JTable) see(table);
        return OnEventThread.get(() -> {
            Rectangle cell = shown.getCellRect(row, 1, true);
            Point origin = shown.getLocationOnScreen();
            return new Point(origin.x + cell.x + 12, origin.y + cell.y + cell.height / 2);
        });
    }

    /** Types into a field, in the place of what stands there. */
    void enter(String field, String text) {
        actions.add("type " + text + " into " + field);
        typed.add(text);
        Component seen = see(field);
        Component editor = OnEventThread.get(
                () -> seen instanceof JComboBox<?> box ? box.getEditor().getEditorComponent() : seen);
        press(middle(editor));
        keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        for (char letter : text.toCharArray()) {
            boolean shift = Character.isUpperCase(letter);
            int key = KeyEvent.getExtendedKeyCodeForChar(letter);
            if (shift) {
                robot.keyPress(KeyEvent.VK_SHIFT);
            }
            robot.keyPress(key);
            robot.keyRelease(key);
            if (shift) {
                robot.keyRelease(KeyEvent.VK_SHIFT);
            }
        }
        robot.waitForIdle();
    }

    /** Presses keys together. */
    void shortcut(int... together) {
        StringBuilder text = new StringBuilder("press");
        for (int key : together) {
            text.append(' ').append(KeyEvent.getKeyText(key));
        }
        actions.add(text.toString());
        keys(together);
    }

    private void keys(int... together) {
        for (int key : together) {
            robot.keyPress(key);
        }
        for (int k = together.length - 1; k >= 0; k--) {
            robot.keyRelease(together[k]);
        }
        robot.waitForIdle();
    }

    private static Point middle(Component component) {
        return OnEventThread.get(() -> {
            Point origin = component.getLocationOnScreen();
            return new Point(origin.x + component.getWidth() / 2, origin.y + component.getHeight() / 2);
        });
    }

    private void press(Point at) {
        robot.mouseMove(at.x, at.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }
}
