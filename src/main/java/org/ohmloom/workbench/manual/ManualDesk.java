package org.ohmloom.workbench.manual;

import java.awt.Component;
import java.awt.KeyEventPostProcessor;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.ohmloom.manual.Manual;
import org.ohmloom.workbench.widget.HelpPage;

/** Opens the manual: at its first page, or at the page about what has the keyboard. */
public final class ManualDesk {

    private final Supplier<Component> over;
    private @Nullable ManualWindow window;

    /**
     * A desk; its window is made when it is first asked for.
     *
     * @param over the window it is opened from
     */
    public ManualDesk(Supplier<Component> over) {
        this.over = over;
    }

    /** Opens the manual at its first page. */
    public void open() {
        open(Manual.HOME);
    }

    /** Opens a page. */
    public void open(String page) {
        ManualWindow shown = window;
        if (shown == null) {
            shown = new ManualWindow(over.get(), ManualDesk::inBackground);
            window = shown;
        }
        shown.show(page);
    }

    /** Opens the page about what has the keyboard. */
    public void openHere() {
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        open(here(focused == null ? over.get() : focused));
    }

    /** The page about a component; the first one when nothing tells. */
    public static String here(@Nullable Component focused) {
        return HelpPage.of(focused).orElse(Manual.HOME);
    }

    private boolean isOurs(Component focused) {
        Window at = focused instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(focused);
        while (at != null && at != over.get() && at != window) {
            at = at.getOwner();
        }
        return at != null;
    }

    private static void inBackground(Runnable task) {
        Thread thread = new Thread(task, "manual");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Lets a key that nothing else took open the page, in dialogs of its window too, where the menus do not reach.
     *
     * @param keys the keys of the command now
     * @return ends it; all windows share the keyboard, and a closed one would be held by it
     */
    public Runnable listen(Supplier<Optional<KeyStroke>> keys) {
        KeyEventPostProcessor opening = event -> {
            boolean asked = event.getID() == KeyEvent.KEY_PRESSED
                    && !event.isConsumed()
                    && isOurs(event.getComponent())
                    && keys.get()
                            .filter(KeyStroke.getKeyStrokeForEvent(event)::equals)
                            .isPresent();
            if (asked) {
                event.consume();
                SwingUtilities.invokeLater(this::openHere);
            }
            return asked;
        };
        KeyboardFocusManager keyboard = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        keyboard.addKeyEventPostProcessor(opening);
        return () -> keyboard.removeKeyEventPostProcessor(opening);
    }
}
