package org.ohmloom.workbench;

import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Fingers on the keys of a real display: what a key sets going on the event thread has come to its end when a press returns. */
final class Keyboard implements AutoCloseable {

    private static final int PATIENCE_MILLIS = 2_000;
    private static final int ROUNDS = 4;

    private final Robot robot;
    private final Semaphore released = new Semaphore(0);
    private final AWTEventListener ears = event -> {
        if (event.getID() == KeyEvent.KEY_RELEASED) {
            released.release();
        }
    };

    Keyboard() throws AWTException {
        robot = new Robot();
        Toolkit.getDefaultToolkit().addAWTEventListener(ears, AWTEvent.KEY_EVENT_MASK);
    }

    @Override
    public void close() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(ears);
    }

    /** Presses a key while others are held. */
    void press(int key, int... held) {
        released.drainPermits();
        for (int each : held) {
            robot.keyPress(each);
        }
        robot.keyPress(key);
        robot.keyRelease(key);
        for (int k = held.length - 1; k >= 0; k--) {
            robot.keyRelease(held[k]);
        }
        try {
            // A window that opens or closes meanwhile may keep a release to itself: waited for, not asked for.
            released.tryAcquire(1 + held.length, PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        }
        settle();
    }

    /** Types small letters and spaces. */
    void type(String text) {
        text.toLowerCase(java.util.Locale.ROOT)
                .chars()
                .forEach(letter -> press(KeyEvent.getExtendedKeyCodeForChar(letter)));
    }

    /** Lets everything that is under way on the event thread come to its end. */
    static void settle() {
        for (int round = 0; round < ROUNDS; round++) {
            OnEventThread.run(() -> {});
        }
    }

    /** What has the keyboard; nothing where it is lost. */
    static @Nullable Component owner() {
        KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        return EventQueue.isDispatchThread() ? focus.getFocusOwner() : OnEventThread.get(focus::getFocusOwner);
    }
}
