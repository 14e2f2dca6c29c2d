package org.ohmloom.workbench;

import java.awt.AWTEvent;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Hears when keys and buttons let go on a real display have come to the program: on a busy machine that takes a while. */
final class Ears {

    private static final int PATIENCE_MILLIS = 2_000;

    private Ears() {}

    /**
     * Does something with keys or buttons and waits until the program has heard of it.
     *
     * @param releases how many of them are let go in it
     */
    static void hear(int releases, Runnable gesture) {
        Semaphore released = new Semaphore(0);
        AWTEventListener ears = event -> {
            if (event.getID() == KeyEvent.KEY_RELEASED || event.getID() == MouseEvent.MOUSE_RELEASED) {
                released.release();
            }
        };
        Toolkit.getDefaultToolkit().addAWTEventListener(ears, AWTEvent.KEY_EVENT_MASK | AWTEvent.MOUSE_EVENT_MASK);
        try {
            gesture.run();
            // A window that opens or closes meanwhile may keep a release to itself: waited for, not asked for.
            released.tryAcquire(releases, PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        } finally {
            Toolkit.getDefaultToolkit().removeAWTEventListener(ears);
        }
    }
}
