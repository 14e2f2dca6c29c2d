package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicSplitPaneUI;
import org.jspecify.annotations.Nullable;

/**
 * Lets the divider of a split be moved by keys: it takes the keyboard and shows so, follows the arrows, Home and End, and gives the
 * keyboard back by Escape or Enter.
 */
public final class DividerKeys {

    private static final int STEP = 8;
    private static final String BACK = "Ohmloom.keyboardBack";

    private DividerKeys() {}

    /** Lets a split be moved. */
    static void on(JSplitPane split) {
        step(split, KeyEvent.VK_LEFT, -1);
        step(split, KeyEvent.VK_UP, -1);
        step(split, KeyEvent.VK_RIGHT, 1);
        step(split, KeyEvent.VK_DOWN, 1);
        bind(split, KeyEvent.VK_HOME, () -> move(split, Integer.MIN_VALUE));
        bind(split, KeyEvent.VK_END, () -> move(split, Integer.MAX_VALUE));
        bind(split, KeyEvent.VK_ESCAPE, () -> giveBack(split));
        bind(split, KeyEvent.VK_ENTER, () -> giveBack(split));
        split.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                mark(split);
            }

            @Override
            public void focusLost(FocusEvent event) {
                mark(split);
            }
        });
    }

    private static void bind(JSplitPane split, int key, Runnable task) {
        Keys.bind(split, JComponent.WHEN_FOCUSED, Keys.plain(key), "divider-" + key, task);
    }

    private static void step(JSplitPane split, int key, int direction) {
        bind(split, key, () -> move(split, split.getDividerLocation() + direction * UIScale.scale(STEP)));
    }

    private static void move(JSplitPane split, int wanted) {
        int least = split.getMinimumDividerLocation();
        int most = Math.max(least, split.getMaximumDividerLocation());
        split.setDividerLocation(Math.max(least, Math.min(most, wanted)));
    }

    private static void mark(JSplitPane split) {
        if (split.getUI() instanceof BasicSplitPaneUI ui) {
            ui.getDivider()
                    .setBorder(
                            split.isFocusOwner()
                                    ? BorderFactory.createLineBorder(Tone.colour("Ohmloom.selection"), UIScale.scale(2))
                                    : null);
            ui.getDivider().repaint();
        }
    }

    /**
     * Moves the keyboard to the divider nearest to what has it, from a divider to the next further out, and from the outermost back
     * to where it came from.
     */
    public static void next(@Nullable Component owner) {
        if (owner == null) {
            return;
        }
        Optional<JSplitPane> outer =
                Optional.ofNullable((JSplitPane) SwingUtilities.getAncestorOfClass(JSplitPane.class, owner));
        if (outer.isPresent()) {
            Object back = owner instanceof JSplitPane inner ? inner.getClientProperty(BACK) : owner;
            outer.get().putClientProperty(BACK, back);
            outer.get().requestFocusInWindow();
        } else if (owner instanceof JSplitPane outermost) {
            giveBack(outermost);
        }
    }

    private static void giveBack(JSplitPane split) {
        if (split.getClientProperty(BACK) instanceof Component back) {
            split.putClientProperty(BACK, null);
            back.requestFocusInWindow();
        }
    }
}
