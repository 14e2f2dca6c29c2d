package org.ohmloom.workbench.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.concurrent.Executor;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import org.ohmloom.workbench.widget.AppIcon;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** The manual in a window of its own, which no dialog blocks. Escape closes it; it keeps its page and place. */
final class ManualWindow extends JFrame {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 760;
    private static final int CONTENTS = 290;

    private final transient Words words = Words.of("manual");
    private final ManualPane pane;

    /**
     * A window, not shown yet.
     *
     * @param over       what it is opened from; it lies on the same screen
     * @param background runs the reading of the manual
     */
    ManualWindow(Component over, Executor background) {
        setName("manual");
        setIconImages(AppIcon.images());
        setModalExclusionType(Dialog.ModalExclusionType.APPLICATION_EXCLUDE);
        setDefaultCloseOperation(WindowConstants.HIDE_ON_CLOSE);
        pane = new ManualPane(background, EventQueue::invokeLater, page -> setTitle(words.get("window", page)));
        setContentPane(pane);
        getRootPane()
                .registerKeyboardAction(
                        event -> setVisible(false), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
        place(over.getGraphicsConfiguration());
        setLocationRelativeTo(over);
        pane.divide(UIScale.scale(CONTENTS));
    }

    private void place(GraphicsConfiguration screen) {
        Rectangle room = screen == null ? new Rectangle(0, 0, WIDTH, HEIGHT) : screen.getBounds();
        setSize(Math.min(room.width, UIScale.scale(WIDTH)), Math.min(room.height, UIScale.scale(HEIGHT)));
    }

    /** Comes to the front with a page. */
    void show(String page) {
        pane.show(page);
        setVisible(true);
        toFront();
        pane.first().requestFocusInWindow();
    }
}
