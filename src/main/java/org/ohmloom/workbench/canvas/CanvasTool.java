package org.ohmloom.workbench.canvas;

import java.awt.Cursor;
import java.awt.Graphics2D;

/**
 * What the left button and the keys do on a canvas. Moving the view is not its affair: the wheel zooms, and dragging with the
 * middle or the right button, or with Space held, pans whatever the tool.
 */
public interface CanvasTool {

    /** The left button goes down. */
    default void pressed(Pointed at) {}

    /** The pointer moves while the button is down. */
    default void dragged(Pointed at) {}

    /** The button comes up. */
    default void released(Pointed at) {}

    /** The pointer moves. */
    default void moved(Pointed at) {}

    /** The pointer leaves the canvas. */
    default void left() {}

    /**
     * An arrow key.
     *
     * @param right steps to the right, -1 to 1
     * @param down  steps downwards, -1 to 1
     * @param far   whether Shift is held, for longer steps
     * @return whether it was of use; otherwise the view pans
     */
    default boolean arrow(int right, int down, boolean far) {
        return false;
    }

    /** Enter; whether it was of use. */
    default boolean enter() {
        return false;
    }

    /**
     * Page Down and Page Up.
     *
     * @param by 1 for the next, -1 for the previous
     * @return whether it was of use; otherwise the next thing is selected
     */
    default boolean step(int by) {
        return false;
    }

    /** Ends what is under way without a change; whether anything was. */
    default boolean cancel() {
        return false;
    }

    /** Escape; whether it was of use, otherwise nothing is selected from then on. */
    default boolean escape() {
        return cancel();
    }

    /** Another scene is shown. */
    default void sceneChanged() {}

    /** Paints what it shows over the picture, in pixels of the canvas. */
    default void paint(Graphics2D g) {}

    /** The pointer's look over something, or over nothing. */
    default Cursor cursor(boolean over) {
        return Cursor.getPredefinedCursor(over ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR);
    }
}
