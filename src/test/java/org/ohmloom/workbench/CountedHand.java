package org.ohmloom.workbench;

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

/** A person's hand at mouse and keyboard: every click, drag, shortcut and field entry is counted. */
public final class CountedHand {

    private static final int BETWEEN_MILLIS = 25;

    private static final String UPPER = "+:\"@_<>?()";
    private static final String LOWER = "=;'2-,./90";

    private final Robot robot;
    private final List<String> actions = new ArrayList<>();
    private final List<String> typed = new ArrayList<>();

    public CountedHand() throws AWTException {
        this(BETWEEN_MILLIS);
    }

    /** A hand that rests some milliseconds after each movement of a finger. */
    public CountedHand(int betweenMillis) throws AWTException {
        robot = new Robot();
        robot.setAutoDelay(betweenMillis);
    }

    /** What was done, in order. */
    public List<String> actions() {
        return List.copyOf(actions);
    }

    /** What was typed, in order. */
    public List<String> typed() {
        return List.copyOf(typed);
    }

    /** Waits until something of that name can be seen and used. */
    public static Component see(String name) {
        OnEventThread.await(name, () -> find(name).filter(Component::isEnabled).isPresent());
        return OnEventThread.get(() -> find(name).orElseThrow());
    }

    /** Whether something of that name can be seen; asked on the event thread. */
    public static boolean isSeen(String name) {
        return find(name).isPresent();
    }

    /** What a label says; nothing where it cannot be seen. Asked on the event thread. */
    public static String text(String name) {
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
    public void click(String name) {
        actions.add("click " + name);
        press(middle(see(name)));
    }

    /** Clicks on an entry of a list. */
    public void clickEntry(String list, int entry) {
        actions.add("click entry " + entry + " of " + list);
        JList<?> shown = (JList<?>) see(list);
        press(OnEventThread.get(() -> {
            Rectangle cell = shown.getCellBounds(entry, entry);
            Point origin = shown.getLocationOnScreen();
            return new Point(origin.x + 20, origin.y + cell.y + cell.height / 2);
        }));
    }

    /** Drags a row of a table onto a row of another. */
    public void drag(String from, int row, String to, int onto) {
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
    public void enter(String field, String text) {
        actions.add("type " + text + " into " + field);
        typed.add(text);
        Component seen = see(field);
        Component editor = OnEventThread.get(
                () -> seen instanceof JComboBox<?> box ? box.getEditor().getEditorComponent() : seen);
        press(middle(editor));
        keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        letters(text);
        robot.waitForIdle();
    }

    /** Keys as they lie on an English keyboard; the upper ones of a pair with Shift. */
    private void letters(String text) {
        for (char letter : text.toCharArray()) {
            int upper = UPPER.indexOf(letter);
            boolean shift = upper >= 0 || Character.isUpperCase(letter);
            int key = KeyEvent.getExtendedKeyCodeForChar(upper >= 0 ? LOWER.charAt(upper) : letter);
            if (shift) {
                robot.keyPress(KeyEvent.VK_SHIFT);
            }
            robot.keyPress(key);
            robot.keyRelease(key);
            if (shift) {
                robot.keyRelease(KeyEvent.VK_SHIFT);
            }
        }
    }

    /** Types into what has the keyboard. */
    public void type(String text) {
        actions.add("type " + text);
        typed.add(text);
        letters(text);
        robot.waitForIdle();
    }

    /** Clicks on a place of something. */
    public void clickAt(Component on, Point at) {
        actions.add("click on " + on.getName());
        Point origin = OnEventThread.get(on::getLocationOnScreen);
        press(new Point(origin.x + at.x, origin.y + at.y));
    }

    /** Drags from a place of something to another. */
    public void dragOn(Component on, Point from, Point to) {
        actions.add("drag on " + on.getName());
        Point origin = OnEventThread.get(on::getLocationOnScreen);
        robot.mouseMove(origin.x + from.x, origin.y + from.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseMove(origin.x + (from.x + to.x) / 2, origin.y + (from.y + to.y) / 2);
        robot.mouseMove(origin.x + to.x - 2, origin.y + to.y);
        robot.mouseMove(origin.x + to.x, origin.y + to.y);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    /**
     * Types into a column of a table from a cell downwards, Enter after each; an empty text leaves a cell as it is.
     *
     * @param row what the first column says of the first row
     */
    public void fill(String table, String row, String column, String... texts) {
        JTable shown = (JTable) see(table);
        Point cell = OnEventThread.get(() -> {
            int at = rowOf(shown, row);
            Rectangle first = shown.getCellRect(at, 0, true);
            Rectangle seen = shown.getVisibleRect();
            if (!seen.intersects(first)) {
                throw new AssertionError(row + " of " + table + " cannot be seen");
            }
            return new Point(Math.max(first.x, seen.x) + 12, first.y + first.height / 2);
        });
        clickAt(shown, cell);
        int right = OnEventThread.get(() -> shown.getColumnModel().getColumnIndex(column)
                - shown.getColumnModel().getSelectionModel().getLeadSelectionIndex());
        for (int k = 0; k < Math.abs(right); k++) {
            keys(right > 0 ? KeyEvent.VK_RIGHT : KeyEvent.VK_LEFT);
        }
        for (String text : texts) {
            if (text.isEmpty()) {
                shortcut(KeyEvent.VK_DOWN);
            } else {
                type(text);
                keys(KeyEvent.VK_ENTER);
            }
        }
    }

    private static int rowOf(JTable table, String row) {
        for (int k = 0; k < table.getRowCount(); k++) {
            if (String.valueOf(table.getValueAt(k, 0)).equals(row)) {
                return k;
            }
        }
        throw new AssertionError("no row " + row);
    }

    /** Presses keys together. */
    public void shortcut(int... together) {
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
