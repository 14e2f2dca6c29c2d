package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.canvas.LayoutCanvas;

/** Whatever can take the keyboard has a name that can be read out. */
class AccessibilityTest {

    @Test
    void everythingThatTakesTheKeyboardHasAName() {
        Stage stage = new Stage().openExample("faults");
        List<String> nameless = OnEventThread.get(() -> {
            List<String> found = new ArrayList<>();
            walk(stage.view, found);
            walk(stage.view.menus(), found);
            return found;
        });
        assertEquals(List.of(), nameless);
    }

    @Test
    void aComponentWithoutANameWouldBeFound() {
        List<String> found = OnEventThread.get(() -> {
            List<String> nameless = new ArrayList<>();
            walk(new JList<>(), nameless);
            return nameless;
        });
        assertEquals(1, found.size());
    }

    @Test
    void noButtonTakesTheLetterOfAMenu() {
        // Alt with a letter presses a button of the window before it opens a menu
        Stage stage = new Stage().openExample("teaching");
        List<Integer> menus =
                MenuPlan.MENUS.stream().map(menu -> (int) menu.mnemonic()).toList();
        assertEquals(List.of(), OnEventThread.get(() -> {
            List<String> taking = new ArrayList<>();
            buttons(stage.view, button -> {
                if (menus.contains(button.getMnemonic())) {
                    taking.add((char) button.getMnemonic() + " " + button.getName() + " " + button.getText());
                }
            });
            return taking;
        }));
    }

    private static void buttons(Container container, Consumer<AbstractButton> each) {
        for (Component child : container.getComponents()) {
            if (child instanceof AbstractButton button) {
                each.accept(button);
            } else if (child instanceof Container inner) {
                buttons(inner, each);
            }
        }
    }

    private static void walk(Component component, List<String> nameless) {
        if (takesKeyboard(component)) {
            AccessibleContext context = component.getAccessibleContext();
            String name = context == null ? null : context.getAccessibleName();
            if (name == null || name.isBlank()) {
                nameless.add(component.getClass().getSimpleName() + " " + component.getName());
            }
        }
        // The parts of a chooser are its own affair: it is read out as one thing.
        if (component instanceof Container container && !(component instanceof JComboBox<?>)) {
            for (Component child : container.getComponents()) {
                walk(child, nameless);
            }
        }
    }

    private static boolean takesKeyboard(Component component) {
        if (!component.isFocusable() || component.getClass().getName().startsWith("com.formdev.")) {
            return false;
        }
        return component instanceof AbstractButton
                || component instanceof JTextComponent
                || component instanceof JTable
                || component instanceof JList<?>
                || component instanceof JTabbedPane
                || component instanceof JComboBox<?>
                || component instanceof JSplitPane
                || component instanceof LayoutCanvas;
    }
}
