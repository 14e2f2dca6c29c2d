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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.ComboPopup;

/** A person's hand at mouse and keyboard: every click, drag, shortcut and field entry is counted. */
public final class CountedHand {

    private static final int BETWEEN_MILLIS = 25;

    private static final String UPPER = "+:\"@_<>?()%";
    private static final String LOWER = "=;'2-,./905";

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
        return see(name, each -> name.equals(each.getName()));
    }

    private static Component see(String what, Predicate<Component> wanted) {
        OnEventThread.await(
                what, () -> find(wanted).filter(Component::isEnabled).isPresent());
        return OnEventThread.get(() -> find(wanted).orElseThrow());
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
        return find(each -> name.equals(each.getName()));
    }

    private static Optional<Component> find(Predicate<Component> wanted) {
        for (Window window : Window.getWindows()) {
            Optional<Component> found = window.isShowing() ? find(window, wanted) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<Component> find(Container in, Predicate<Component> wanted) {
        for (Component each : in.getComponents()) {
            if (each.isShowing() && wanted.test(each)) {
                return Optional.of(each);
            }
            if (each instanceof Container inner) {
                Optional<Component> found = find(inner, wanted);
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

    /** Opens a box of choices and clicks on one, by what it says there. */
    public void choose(String box, String choice) {
        click(box);
        JComboBox<?> shown = (JComboBox<?>) see(box);
        OnEventThread.await("the choices of " + box, shown::isPopupVisible);
        actions.add("choose " + choice);
        press(OnEventThread.get(() -> {
            JList<Object> choices = choices(shown);
            int entry = entry(choices, choice);
            Rectangle cell = choices.getCellBounds(entry, entry);
            Point origin = choices.getLocationOnScreen();
            return new Point(origin.x + 12, origin.y + cell.y + cell.height / 2);
        }));
        OnEventThread.await("the choices to close", () -> !shown.isPopupVisible());
    }

    @SuppressWarnings("unchecked")
    private static JList<Object> choices(JComboBox<?> box) {
        return (JList<Object>) ((ComboPopup) box.getUI().getAccessibleChild(box, 0)).getList();
    }

    private static int entry(JList<Object> choices, String text) {
        List<String> shown = new ArrayList<>();
        for (int k = 0; k < choices.getModel().getSize(); k++) {
            Component cell = choices.getCellRenderer()
                    .getListCellRendererComponent(choices, choices.getModel().getElementAt(k), k, false, false);
            shown.add(((JLabel) cell).getText());
        }
        if (!shown.contains(text)) {
            throw new AssertionError("no choice " + text + " in " + shown);
        }
        return shown.indexOf(text);
    }

    /** Clicks on an entry of a menu that has come up, by what it says. */
    public void pick(String text) {
        actions.add("pick " + text);
        press(middle(see(text, each -> each instanceof JMenuItem item && text.equals(item.getText()))));
    }

    /** Types the name of a file into the dialog that asks for one, and agrees. */
    public void nameFile(Path file) {
        actions.add("name the file");
        Predicate<Component> asks = each -> each instanceof JTextField field
                && SwingUtilities.getAncestorOfClass(JFileChooser.class, field) != null;
        press(middle(see("a dialog that asks for a file", asks)));
        keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        letters(file.toString());
        keys(KeyEvent.VK_ENTER);
        OnEventThread.await("the dialog to close", () -> find(asks).isEmpty());
    }

    /** Drags a row of a table onto a row of another. */
    public void drag(String from, int row, String to, int onto) {
        actions.add("drag row " + row + " of " + from + " onto row " + onto + " of " + to);
        drag(row(from, row), row(to, onto));
    }

    private void drag(Point start, Point end) {
        Ears.hear(1, () -> {
            robot.mouseMove(start.x, start.y);
            robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
            robot.mouseMove((start.x + end.x) / 2, (start.y + end.y) / 2);
            robot.mouseMove(end.x - 2, end.y);
            robot.mouseMove(end.x, end.y);
            robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        });
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
    }

    /** Keys as they lie on an English keyboard; the upper ones of a pair with Shift. */
    private void letters(String text) {
        int capitals = (int) text.chars().filter(CountedHand::needsShift).count();
        Ears.hear(text.length() + capitals, () -> press(text));
        robot.waitForIdle();
    }

    private static boolean needsShift(int letter) {
        return UPPER.indexOf(letter) >= 0 || Character.isUpperCase(letter);
    }

    private void press(String text) {
        for (char letter : text.toCharArray()) {
            int upper = UPPER.indexOf(letter);
            boolean shift = needsShift(letter);
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
    }

    /** Turns the wheel over the middle of something, towards the person by so many notches. */
    public void turn(JComponent over, int notches) {
        actions.add("turn the wheel over " + over.getName());
        Point middle = OnEventThread.get(() -> {
            Rectangle seen = over.getVisibleRect();
            Point origin = over.getLocationOnScreen();
            return new Point(origin.x + seen.x + seen.width / 2, origin.y + seen.y + seen.height / 2);
        });
        robot.mouseMove(middle.x, middle.y);
        robot.mouseWheel(notches);
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
        drag(new Point(origin.x + from.x, origin.y + from.y), new Point(origin.x + to.x, origin.y + to.y));
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
        Ears.hear(together.length, () -> {
            for (int key : together) {
                robot.keyPress(key);
            }
            for (int k = together.length - 1; k >= 0; k--) {
                robot.keyRelease(together[k]);
            }
        });
        robot.waitForIdle();
    }

    private static Point middle(Component component) {
        return OnEventThread.get(() -> {
            Point origin = component.getLocationOnScreen();
            return new Point(origin.x + component.getWidth() / 2, origin.y + component.getHeight() / 2);
        });
    }

    private void press(Point at) {
        Ears.hear(1, () -> {
            robot.mouseMove(at.x, at.y);
            robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
            robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        });
        robot.waitForIdle();
    }
}
