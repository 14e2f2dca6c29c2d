package org.ohmloom.workbench;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Fingers on the keys of a real display: what a key sets going on the event thread has come to its end when a press returns. */
final class Keyboard {

    private static final int ROUNDS = 4;

    private final Robot robot;

    Keyboard() throws AWTException {
        robot = new Robot();
    }

    /** Presses a key while others are held. */
    void press(int key, int... held) {
        Ears.hear(1 + held.length, () -> {
            for (int each : held) {
                robot.keyPress(each);
            }
            robot.keyPress(key);
            robot.keyRelease(key);
            for (int k = held.length - 1; k >= 0; k--) {
                robot.keyRelease(held[k]);
            }
        });
        settle();
    }

    /** Types small letters and spaces. */
    void type(String text) {
        text.toLowerCase(Locale.ROOT).chars().forEach(letter -> press(KeyEvent.getExtendedKeyCodeForChar(letter)));
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
