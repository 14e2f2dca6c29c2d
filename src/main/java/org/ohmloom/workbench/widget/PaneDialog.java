package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** A window that holds one pane, over the window of another component; closed by Escape, it is thrown away. */
public final class PaneDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    private boolean noSmaller;

    /** A window to be filled and shown; the other one waits for it. */
    public PaneDialog(Component over, String name, String title) {
        this(over, name, title, ModalityType.DOCUMENT_MODAL);
    }

    /** A window to be filled and shown. */
    public PaneDialog(Component over, String name, String title, ModalityType modality) {
        super(SwingUtilities.getWindowAncestor(over), title, modality);
        setName(name);
        setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        onEscape(this::dispose);
    }

    /** Lets Escape do something else than close it. */
    public void onEscape(Runnable task) {
        getRootPane()
                .registerKeyboardAction(
                        event -> task.run(), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    /** Does something once it is closed, in whatever way. */
    public void onClosed(Runnable task) {
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                task.run();
            }
        });
    }

    /** Lets nobody make it smaller than what is put in asks for. */
    public PaneDialog noSmaller() {
        noSmaller = true;
        return this;
    }

    /** Puts the pane in, at the size it asks for. */
    public void fill(JComponent pane) {
        setContentPane(pane);
        pack();
        if (noSmaller) {
            setMinimumSize(getSize());
        }
        setLocationRelativeTo(getOwner());
    }

    /** Puts the pane in, at the size it asks for; Enter presses the button. */
    public void fill(JComponent pane, JButton button) {
        fill(pane);
        getRootPane().setDefaultButton(button);
    }

    /**
     * Puts in a pane that ends with an answer, shows it and waits for that.
     *
     * @param pane   makes the pane, handed what takes its answer: empty when a person gives up
     * @param button its button that Enter presses
     * @return the answer; empty too when the window was closed without one
     */
    public <T, P extends JComponent> Optional<T> ask(
            Function<Consumer<Optional<T>>, P> pane, Function<P, JButton> button) {
        AtomicReference<Optional<T>> answer = new AtomicReference<>(Optional.empty());
        P made = pane.apply(given -> {
            answer.set(given);
            dispose();
        });
        fill(made, button.apply(made));
        setVisible(true);
        return answer.get();
    }
}
