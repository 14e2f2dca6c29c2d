package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.awt.SecondaryLoop;
import java.awt.Toolkit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JLabel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.words.TypedEdits;

/**
 * A disk that takes as long as the test wants: saving and opening are done by hand, one task after the other, and meanwhile the
 * window is used.
 */
class SlowDiskTest {

    private static final WireId W4 = new WireId("W4");

    @TempDir
    private Path folder;

    private final Queue<Runnable> writing = new ConcurrentLinkedQueue<>();
    private final Queue<Runnable> patience = new ConcurrentLinkedQueue<>();
    private final Queue<Runnable> reading = new ConcurrentLinkedQueue<>();
    private final Stage stage = Stage.builtOn(own -> new Services(
            // Nothing here needs numbers.
            (question, cancel, soFar) -> {
                throw new CancellationException();
            },
            own.layout(),
            own.painter(),
            own.preferences(),
            own.prompts(),
            reading::add,
            own.eventThread(),
            own.documents(),
            new Saves(writing::add, own.eventThread(), patience::add)));
    private Path file;

    @BeforeEach
    void open() throws IOException {
        file = folder.resolve("mine.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        OnEventThread.run(() -> stage.view.filing().open(file));
        doNext(reading);
    }

    /** Does what the disk was asked for first, here and not on the event thread, and lets the event thread hear of it. */
    private static void doNext(Queue<Runnable> disk) {
        disk.remove().run();
        OnEventThread.run(() -> {});
    }

    private Document document() {
        return OnEventThread.get(() -> stage.desk().document().orElseThrow());
    }

    private boolean isChanged() {
        return OnEventThread.get(() -> document(stage).session().isChanged());
    }

    private static Document document(Stage stage) {
        return stage.desk().document().orElseThrow();
    }

    private void edit(String size) {
        OnEventThread.run(() -> stage.desk().apply(TypedEdits.conductor(List.of(W4), size)));
    }

    private void save() {
        OnEventThread.run(() -> stage.view.filing().save());
    }

    private static Optional<Gauge> sizeIn(Path file) throws Exception {
        Harness harness = HarnessFiles.read(file);
        return harness.wires().get(W4).gauge();
    }

    @Test
    void whatIsEditedWhileItIsSavedIsNotTakenForSaved() throws Exception {
        edit("6");
        save();
        assertEquals(1, writing.size(), "nothing is written on the event thread");
        edit("10");
        doNext(writing);
        assertEquals(Optional.of(Gauge.metric(6)), sizeIn(file), "as it was when saving was asked for");
        assertTrue(isChanged(), "the later edit is not on disk");
        OnEventThread.run(() -> document(stage).session().undo());
        assertFalse(isChanged(), "what is on disk");
    }

    @Test
    void ofTwoQuickSavesTheLaterIsOnDiskInTheEndAndAThirdWithNothingNewIsNotWritten() throws Exception {
        edit("6");
        save();
        edit("10");
        save();
        save();
        assertEquals(1, writing.size(), "the second waits for the first");
        doNext(writing);
        doNext(writing);
        assertEquals(Optional.of(Gauge.metric(10)), sizeIn(file));
        assertEquals(Optional.of(Gauge.metric(6)), sizeIn(file.resolveSibling(file.getFileName() + ".bak")));
        assertEquals(0, writing.size());
        assertFalse(isChanged());
        assertEquals(List.of(), stage.prompts.asked, "the second is not taken for somebody else's");
    }

    @Test
    void closingWaitsForTheSaveAndAsksNothing() throws Exception {
        edit("6");
        save();
        AtomicReference<Optional<Boolean>> closed = new AtomicReference<>(Optional.empty());
        OnEventThread.run(() -> stage.view.filing().close(answer -> closed.set(Optional.of(answer))));
        assertEquals(Optional.empty(), closed.get());
        assertFalse(stage.answer(stage.view.filing()::mayLeave), "asked twice it does not close twice");
        doNext(writing);
        assertEquals(Optional.of(true), closed.get());
        assertEquals(Optional.of(Gauge.metric(6)), sizeIn(file));
        assertEquals(List.of(), stage.prompts.asked);
    }

    /** Closes while a save does not come back; what the question is answered with is settled before. */
    private AtomicReference<Optional<Boolean>> closing() {
        AtomicReference<Optional<Boolean>> closed = new AtomicReference<>(Optional.empty());
        OnEventThread.run(() -> stage.view.filing().close(answer -> closed.set(Optional.of(answer))));
        return closed;
    }

    /** A person has waited long enough to wonder. */
    private void wonder() {
        OnEventThread.run(patience.remove()::run);
    }

    @Test
    void aSaveThatNeverComesBackHoldsNobodyWhoWantsToLeave() {
        edit("6");
        save();
        AtomicReference<Optional<Boolean>> closed = closing();
        wonder();
        assertEquals(Optional.empty(), closed.get(), "a person who waits is asked again later");
        stage.prompts.slowSave = Prompts.SlowSave.LEAVE;
        wonder();
        assertEquals(Optional.of(true), closed.get());
        assertEquals(List.of("slow save of mine", "slow save of mine"), stage.prompts.asked);
        assertEquals(0, patience.size(), "nobody is asked any more");
        doNext(writing);
        assertEquals(Optional.empty(), OnEventThread.get(() -> stage.desk().document()));
    }

    @Test
    void whoStaysGoesOnAndIsAskedAnewAtTheNextClosing() throws Exception {
        edit("6");
        save();
        stage.prompts.slowSave = Prompts.SlowSave.STAY;
        AtomicReference<Optional<Boolean>> closed = closing();
        wonder();
        assertEquals(Optional.of(false), closed.get());
        edit("10");
        closed = closing();
        assertEquals(Optional.empty(), closed.get());
        stage.prompts.unsaved = Prompts.Unsaved.SAVE;
        doNext(writing);
        doNext(writing);
        assertEquals(Optional.of(true), closed.get());
        assertEquals(Optional.of(Gauge.metric(10)), sizeIn(file));
    }

    @Test
    void aSaveThatEndsWhileThePersonIsAskedDecidesAndClosesTheQuestion() {
        edit("6");
        save();
        stage.prompts.duringSlowSave = () -> {
            writing.remove().run();
            // while a dialog stands its window goes on hearing events, as here
            SecondaryLoop loop =
                    Toolkit.getDefaultToolkit().getSystemEventQueue().createSecondaryLoop();
            EventQueue.invokeLater(loop::exit);
            loop.enter();
        };
        stage.prompts.slowSave = Prompts.SlowSave.STAY;
        AtomicReference<Optional<Boolean>> closed = closing();
        wonder();
        OnEventThread.run(() -> {});
        assertEquals(Optional.of(true), closed.get());
        assertEquals(List.of("slow save of mine", "saved meanwhile"), stage.prompts.asked);
    }

    @Test
    void whoSavesOnClosingIsAskedTooWhenThatTakesLong() {
        edit("6");
        stage.prompts.unsaved = Prompts.Unsaved.SAVE;
        stage.prompts.slowSave = Prompts.SlowSave.LEAVE;
        AtomicReference<Optional<Boolean>> closed = closing();
        assertEquals(Optional.empty(), closed.get());
        wonder();
        assertEquals(Optional.of(true), closed.get());
        assertEquals(List.of("unsaved mine", "slow save of mine"), stage.prompts.asked);
    }

    @Test
    void savedOnClosingAndEditedMeanwhileItAsksAgain() throws Exception {
        edit("6");
        stage.prompts.unsaved = Prompts.Unsaved.SAVE;
        AtomicReference<Optional<Boolean>> closed = new AtomicReference<>(Optional.empty());
        OnEventThread.run(() -> stage.view.filing().close(answer -> closed.set(Optional.of(answer))));
        edit("10");
        doNext(writing);
        assertEquals(Optional.empty(), closed.get());
        doNext(writing);
        assertEquals(Optional.of(true), closed.get());
        assertEquals(List.of("unsaved mine", "unsaved mine"), stage.prompts.asked);
        assertEquals(Optional.of(Gauge.metric(10)), sizeIn(file));
    }

    @Test
    void aSaveThatFailsLosesNothingAndSaysOneLineOnce() throws Exception {
        edit("6");
        save();
        edit("10");
        save();
        AtomicReference<Optional<Boolean>> closed = new AtomicReference<>(Optional.empty());
        OnEventThread.run(() -> stage.view.filing().close(answer -> closed.set(Optional.of(answer))));
        // Somebody takes the folder away before it is written.
        Path gone = folder.resolveSibling(folder.getFileName() + "-gone");
        Files.move(folder, gone);
        doNext(writing);
        assertEquals(0, writing.size(), "what waited is not tried on the same disk");
        assertEquals(2, stage.prompts.asked.size(), stage.prompts.asked.toString());
        String said = stage.prompts.asked.get(0);
        assertTrue(said.contains("there is no folder"), said);
        assertEquals(1, said.lines().count(), said);
        assertEquals("unsaved mine", stage.prompts.asked.get(1), "closing asks, and is called off");
        assertEquals(Optional.of(false), closed.get());
        assertTrue(isChanged());
        assertEquals(
                Optional.of(Gauge.metric(10)),
                document().harness().wires().get(W4).gauge());

        Files.move(gone, folder);
        save();
        doNext(writing);
        assertFalse(isChanged());
        assertEquals(Optional.of(Gauge.metric(10)), sizeIn(file));
    }

    @Test
    void itsFirstFileIsAskedForOnceHoweverOftenSavingIsAskedFor() throws Exception {
        OnEventThread.run(() -> stage.view.filing().openExample("teaching"));
        doNext(reading);
        Path other = folder.resolve("other.harness.json");
        stage.prompts.target = Optional.of(other);
        save();
        edit("6");
        save();
        doNext(writing);
        doNext(writing);
        assertEquals(List.of("save teaching"), stage.prompts.asked);
        assertEquals(Optional.of(Gauge.metric(6)), sizeIn(other));
        assertFalse(isChanged());
    }

    @Test
    void whatIsReadOrWrittenIsSaidWhileItLasts() {
        JLabel said = OnEventThread.get(() -> ComponentTree.find(stage.view, "file-work", JLabel.class));
        assertFalse(OnEventThread.get(said::isVisible));
        edit("6");
        save();
        OnEventThread.await("a word about the save", said::isVisible);
        assertEquals("Saving mine…", OnEventThread.get(said::getText));
        doNext(writing);
        assertFalse(OnEventThread.get(said::isVisible));
        OnEventThread.run(() -> stage.view.filing().open(file));
        OnEventThread.await("a word about the reading", said::isVisible);
        doNext(reading);
        assertFalse(OnEventThread.get(said::isVisible));
    }

    @Test
    void whatIsEditedWhileAnotherFileIsReadIsAskedAboutBeforeItMakesRoom() {
        Document mine = document();
        OnEventThread.run(() -> stage.view.filing().openExample("workboat"));
        edit("6");
        doNext(reading);
        assertEquals(List.of("unsaved mine"), stage.prompts.asked);
        assertEquals(mine, document(), "left unanswered, all stays as it is");
    }

    @Test
    void ofTwoFilesAskedForTheLaterIsOpened() {
        OnEventThread.run(() -> {
            stage.view.filing().openExample("workboat");
            stage.view.filing().openExample("teaching");
        });
        doNext(reading);
        assertEquals("mine", document().name());
        doNext(reading);
        assertEquals("teaching", document().name());
    }

    @Test
    void aFileOpenElsewhereUnderAnotherNameIsKnownByTheDiskAndNotOnTheEventThread() throws IOException {
        Path link = folder.resolve("link.harness.json");
        Files.createLink(link, file);
        Stage other = Stage.builtOn(own -> new Services(
                stage.services().calculation(),
                own.layout(),
                own.painter(),
                own.preferences(),
                own.prompts(),
                reading::add,
                own.eventThread(),
                stage.services().documents(),
                own.saves()));
        OnEventThread.run(() -> other.view.filing().open(link));
        assertTrue(OnEventThread.get(() -> other.desk().document().isEmpty()), "the disk has not answered yet");
        doNext(reading);
        assertEquals(document(), OnEventThread.get(() -> document(other)));
    }

    @Test
    void aLookAtADiskThatDoesNotAnswerIsNotAskedForAgain() {
        OnEventThread.run(() -> stage.view.filing().watch().look());
        OnEventThread.run(() -> stage.view.filing().watch().look());
        assertEquals(1, reading.size());
        doNext(reading);
        OnEventThread.run(() -> stage.view.filing().watch().look());
        assertEquals(1, reading.size(), "once it has answered");
    }
}
