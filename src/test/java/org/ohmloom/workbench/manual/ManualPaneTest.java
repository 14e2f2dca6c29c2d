package org.ohmloom.workbench.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import org.junit.jupiter.api.Test;
import org.ohmloom.manual.Hit;
import org.ohmloom.manual.Manual;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.settings.Look;

/** The manual's pane, worked as a person does: by its fields, buttons and keys. */
class ManualPaneTest {

    private final List<String> titles = new ArrayList<>();
    private final ManualPane pane = OnEventThread.get(this::made);

    private ManualPane made() {
        Look.LIGHT.install();
        ManualPane made = new ManualPane(Runnable::run, Runnable::run, titles::add);
        made.setSize(1000, 700);
        made.show(Manual.HOME);
        return made;
    }

    @Test
    void theContentsListEveryChapterAndFollowThePage() {
        OnEventThread.run(() -> {
            JTree tree = named(JTree.class, "manual-contents");
            assertEquals(
                    Manual.bundled().chapters().size(),
                    tree.getModel().getChildCount(tree.getModel().getRoot()));
            pane.show("views/currents");
            assertEquals("Currents", String.valueOf(tree.getLastSelectedPathComponent()));
            assertEquals("Currents", titles.get(titles.size() - 1));
        });
    }

    @Test
    void backAndForwardGoThroughThePages() {
        OnEventThread.run(() -> {
            pane.show("views/currents");
            pane.show("views/returns");
            press("manual-back");
            assertEquals(Optional.of("views/currents"), pane.shown());
            press("manual-back");
            assertEquals(Optional.of(Manual.HOME), pane.shown());
            assertFalse(named(AbstractButton.class, "manual-back").isEnabled());
            press("manual-forward");
            assertEquals(Optional.of("views/currents"), pane.shown());
            pane.show("views/duty");
            assertFalse(named(AbstractButton.class, "manual-forward").isEnabled());
        });
    }

    @Test
    void typingFindsPagesBestFirstAndMarksTheWords() {
        OnEventThread.run(() -> {
            named(JTextField.class, "manual-search").setText("cavity double");
            JList<?> hits = named(JList.class, "manual-hits");
            assertTrue(hits.getModel().getSize() > 1);
            assertEquals(
                    Optional.of(((Hit) hits.getModel().getElementAt(0)).page().id()), pane.shown());
            assertTrue(view().marks() > 1, "words are marked");
            int marks = view().marks();
            named(JTextField.class, "manual-search").setText("cavity");
            named(JTextField.class, "manual-search").setText("cavity double");
            assertEquals(marks, view().marks(), "marks of an earlier page are gone");
            named(JTextField.class, "manual-search").setText("");
            assertEquals(0, hits.getModel().getSize());
        });
    }

    @Test
    void tabWalksTheLinksAndEnterFollowsOne() {
        OnEventThread.run(() -> {
            key(view(), KeyEvent.VK_TAB);
            assertEquals(Optional.of("First steps"), marked());
            key(view(), KeyEvent.VK_TAB);
            assertEquals(Optional.of("Views"), marked());
            key(view(), KeyEvent.VK_ENTER);
            assertEquals(Optional.of("views/README"), pane.shown());
        });
    }

    @Test
    void aLinkWithCodeInItIsOneLink() {
        OnEventThread.run(() -> {
            pane.show("command-line/README");
            key(view(), KeyEvent.VK_TAB);
            assertEquals(Optional.of("open"), marked());
            key(view(), KeyEvent.VK_TAB);
            assertEquals(Optional.of("check"), marked());
        });
    }

    @Test
    void aChangeOfLookKeepsThePageAndTakesItsColours() {
        OnEventThread.run(() -> {
            pane.show("views/currents");
            var light = view().getBackground();
            Look.DARK.install();
            SwingUtilities.updateComponentTreeUI(pane);
            assertEquals(Optional.of("views/currents"), pane.shown());
            assertFalse(light.equals(view().getBackground()));
            Look.LIGHT.install();
        });
    }

    private Optional<String> marked() {
        try {
            return view().links().marked();
        } catch (BadLocationException gone) {
            throw new AssertionError(gone);
        }
    }

    private PageView view() {
        return named(PageView.class, "manual-page");
    }

    private void press(String button) {
        named(AbstractButton.class, button).doClick(0);
    }

    private static void key(JComponent component, int code) {
        Object name = component.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(code, 0));
        component.getActionMap().get(name).actionPerformed(null);
    }

    private <C extends Component> C named(Class<C> type, String name) {
        return find(pane, type, name).orElseThrow(() -> new AssertionError(name));
    }

    private static <C extends Component> Optional<C> find(Container container, Class<C> type, String name) {
        for (Component child : container.getComponents()) {
            if (type.isInstance(child) && name.equals(child.getName())) {
                return Optional.of(type.cast(child));
            }
            if (child instanceof Container inner) {
                Optional<C> found = find(inner, type, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
