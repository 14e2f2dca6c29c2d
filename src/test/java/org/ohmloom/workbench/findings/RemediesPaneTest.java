package org.ohmloom.workbench.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Selection;

/** Remedies are tried beside the event thread, listed, and one of them becomes a step that can be undone. */
class RemediesPaneTest {

    private static final long PATIENCE_MINUTES = 5;

    private final Stage stage = new Stage();

    @Test
    void theBestRemedyIsAppliedAndUndoneLikeAnyOtherEdit() throws Exception {
        stage.openExample("faults");
        AtomicBoolean closed = new AtomicBoolean();
        AtomicReference<RemediesPane> made = new AtomicReference<>();
        CountDownLatch done = new CountDownLatch(1);
        OnEventThread.run(() -> {
            Finding finding = stage.desk().analysis().orElseThrow().findings().stream()
                    .filter(each -> each.rule().equals("ground-loop"))
                    .findFirst()
                    .orElseThrow();
            stage.desk().select(Selection.of(finding));
            assertTrue(stage.view.book().get("try-remedies").isEnabled());
            made.set(new RemediesPane(
                    stage.desk(),
                    finding,
                    task -> EventQueue.invokeLater(() -> {
                        task.run();
                        done.countDown();
                    }),
                    () -> closed.set(true)));
            assertFalse(made.get().applyButton().isEnabled());
            made.get().start();
        });
        assertTrue(done.await(PATIENCE_MINUTES, TimeUnit.MINUTES));
        OnEventThread.run(() -> {
            RemediesPane pane = made.get();
            Harness before = stage.desk().harness().orElseThrow();
            assertEquals("yes", pane.table().getValueAt(0, 2), pane::stateText);
            assertTrue(pane.detailsText().contains("Gone: "), pane::detailsText);
            pane.applyButton().doClick();
            assertTrue(closed.get());
            assertFalse(before == stage.desk().harness().orElseThrow());
            stage.desk().document().orElseThrow().session().undo();
            assertTrue(before == stage.desk().harness().orElseThrow());
        });
    }

    @Test
    void aFindingThatIsNotAboutReturnsHasNoRemedies() {
        stage.openExample("faults");
        OnEventThread.run(() -> {
            Finding finding = stage.desk().analysis().orElseThrow().findings().stream()
                    .filter(each -> each.rule().equals("wire-end-loose"))
                    .findFirst()
                    .orElseThrow();
            stage.desk().select(Selection.of(finding));
            assertFalse(stage.view.book().get("try-remedies").isEnabled());
        });
    }
}
