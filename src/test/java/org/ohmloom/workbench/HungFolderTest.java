package org.ohmloom.workbench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;

/** A folder in a network that is out of reach may never answer. */
class HungFolderTest {

    @Test
    void whatIsReadFromAFolderOutOfReachDoesNotHoldWhatIsReadElsewhere() throws InterruptedException {
        Executor reader = OnEventThread.get(
                        () -> Workbench.services(PreferenceStore.inMemory(Preferences.DEFAULT), new ScriptedPrompts()))
                .reader();
        CountDownLatch answer = new CountDownLatch(1);
        CountDownLatch elsewhere = new CountDownLatch(1);
        reader.execute(() -> {
            try {
                answer.await();
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        });
        reader.execute(elsewhere::countDown);
        assertTrue(elsewhere.await(60, TimeUnit.SECONDS));
        answer.countDown();
    }
}
