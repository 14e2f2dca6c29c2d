package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.words.TypedEdits;

/** Opening, saving and leaving: nothing is lost and nothing is asked twice. */
class FilingTest {

    @TempDir
    private Path folder;

    private final Stage stage = new Stage();

    @Test
    void anExampleIsSavedWhereThePersonSaysAndTheEndingIsAddedOnce() {
        stage.openExample("teaching");
        stage.prompts.target = Optional.of(folder.resolve("mine"));
        assertTrue(stage.answer(stage.view.filing()::save));
        assertTrue(Files.exists(folder.resolve("mine.harness.json")));
        assertEquals(List.of("save teaching"), stage.prompts.asked);
        assertEquals(
                List.of(folder.resolve("mine.harness.json")),
                stage.preferences.now().recent());
    }

    @Test
    void changesAreAskedAboutByNameAndCancelKeepsThem() {
        saved();
        edit();
        assertFalse(stage.answer(stage.view.filing()::close));
        assertEquals(List.of("unsaved mine"), stage.prompts.asked);
        assertTrue(OnEventThread.get(() -> stage.desk().document().isPresent()));

        stage.prompts.unsaved = Prompts.Unsaved.DISCARD;
        assertTrue(stage.answer(stage.view.filing()::close));
        assertTrue(OnEventThread.get(() -> stage.desk().document().isEmpty()));
    }

    @Test
    void savingOnLeavingWritesTheChange() throws IOException {
        Path file = saved();
        edit();
        stage.prompts.unsaved = Prompts.Unsaved.SAVE;
        assertTrue(stage.answer(stage.view.filing()::close));
        assertTrue(Files.readString(file).contains("\"gauge\": \"6 mm2\""));
    }

    @Test
    void aFileChangedByAnotherIsNotOverwritten() throws IOException {
        Path file = saved();
        edit();
        String other = Files.readString(file).replace("Two-load teaching harness", "Changed by another");
        Files.writeString(file, other);
        assertFalse(stage.answer(stage.view.filing()::save));
        assertEquals(other, Files.readString(file));
        assertTrue(stage.prompts.asked.get(0).startsWith("changed "), stage.prompts.asked.toString());
        assertTrue(OnEventThread.get(
                () -> stage.desk().document().orElseThrow().session().isChanged()));
    }

    @Test
    void whenSavingIsRefusedMineMayReplaceTheOtherWhichStaysBesideIt() throws IOException {
        Path file = saved();
        edit();
        String other = Files.readString(file).replace("Two-load teaching harness", "Changed by another");
        Files.writeString(file, other);
        stage.prompts.changedOnDisk = Prompts.ChangedOnDisk.REPLACE;
        assertTrue(stage.answer(stage.view.filing()::save));
        assertTrue(Files.readString(file).contains("\"gauge\": \"6 mm2\""));
        assertEquals(other, Files.readString(file.resolveSibling(file.getFileName() + ".bak")));
        assertTrue(stage.prompts.asked.get(0).startsWith("changed mine"), stage.prompts.asked.toString());
    }

    @Test
    void aFileChangedOnDiskIsNoticedWhenLookedAtAndReadAgainAsAStepThatCanBeUndone() throws IOException {
        Path file = saved();
        DiskWatch watch = stage.view.filing().watch();
        look();
        assertEquals(DiskWatch.Standing.SAME, watch.standing());
        edit();
        Harness mine = stage.desk().harness().orElseThrow();
        Files.writeString(file, Files.readString(file).replace("Two-load teaching harness", "Changed by another"));
        look();
        OnEventThread.await("the notice", () -> watch.standing() == DiskWatch.Standing.CHANGED);
        assertSame(mine, stage.desk().harness().orElseThrow(), "noticing changes nothing");

        OnEventThread.run(watch::readAgain);
        OnEventThread.await("the file read again", () -> watch.standing() == DiskWatch.Standing.SAME);
        Document document = stage.desk().document().orElseThrow();
        assertEquals("Changed by another", document.harness().titleBlock().title());
        assertFalse(document.session().isChanged());
        OnEventThread.run(() -> document.session().undo());
        assertSame(mine, document.harness(), "what was edited is one step back");
        assertTrue(document.session().isChanged());
        assertTrue(stage.answer(stage.view.filing()::save), "the file was read, so it may be replaced");
        assertEquals(List.of(), stage.prompts.asked);
    }

    @Test
    void keepingMineCountsAsAChangeAndSavesOverTheOtherWithoutAskingAgain() throws IOException {
        Path file = saved();
        DiskWatch watch = stage.view.filing().watch();
        Files.writeString(file, Files.readString(file).replace("Two-load teaching harness", "Changed by another"));
        look();
        OnEventThread.await("the notice", () -> watch.standing() == DiskWatch.Standing.CHANGED);
        OnEventThread.run(watch::keepMine);
        assertEquals(DiskWatch.Standing.SAME, watch.standing());
        assertTrue(OnEventThread.get(
                () -> stage.desk().document().orElseThrow().session().isChanged()));
        look();
        assertEquals(DiskWatch.Standing.SAME, watch.standing(), "asked once");
        assertTrue(stage.answer(stage.view.filing()::save));
        assertTrue(Files.readString(file).contains("Two-load teaching harness"));

        Files.delete(file);
        look();
        OnEventThread.await("the notice", () -> watch.standing() == DiskWatch.Standing.GONE);
        OnEventThread.run(watch::keepMine);
        assertTrue(stage.answer(stage.view.filing()::save));
        assertTrue(Files.exists(file));
        assertEquals(List.of(), stage.prompts.asked);
    }

    /** Looks and waits until what was found is there: reading is done in the order it is asked for. */
    private void look() {
        AtomicBoolean looked = new AtomicBoolean();
        OnEventThread.run(() -> {
            stage.view.filing().watch().look();
            stage.reader().execute(() -> EventQueue.invokeLater(() -> looked.set(true)));
        });
        OnEventThread.await("a look at the disk", looked::get);
    }

    @Test
    void aFileOpenInAnotherWindowIsTheSameDocumentThereAndNothingIsLost() throws IOException {
        Path file = saved();
        OpenDocuments documents = new OpenDocuments();
        Stage one = new Stage(documents);
        Stage other = new Stage(documents);
        OnEventThread.run(() -> one.view.filing().open(file));
        OnEventThread.await("the file", () -> one.desk().document().isPresent());
        OnEventThread.run(() -> one.desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "6")));
        OnEventThread.run(() -> other.view.filing().open(file));
        assertSame(one.desk().document().orElseThrow(), other.desk().document().orElseThrow());
        assertTrue(
                other.desk().message().contains("another window"), other.desk().message());

        OnEventThread.run(() -> other.view.book().get("undo").run());
        assertFalse(one.desk().document().orElseThrow().session().isChanged(), "undone in one, undone in both");
        OnEventThread.run(() -> other.view.book().get("redo").run());
        assertTrue(other.answer(other.view.filing()::close), "the other window still holds the changes");
        assertEquals(List.of(), other.prompts.asked);
        assertTrue(one.desk().document().orElseThrow().session().isChanged());
        assertFalse(one.answer(one.view.filing()::close), "the last window asks");
        assertEquals(List.of("unsaved mine"), one.prompts.asked);
    }

    @Test
    void aSideCopyWhoseOriginalIsEditedInAnotherWindowCannotBeKeptUntilThatIsTakenBack() throws IOException {
        Path file = saved();
        OpenDocuments documents = new OpenDocuments();
        Stage one = new Stage(documents);
        Stage other = new Stage(documents);
        OnEventThread.run(() -> one.view.filing().open(file));
        OnEventThread.await("the file", () -> one.desk().document().isPresent());
        OnEventThread.run(() -> {
            other.view.filing().open(file);
            one.view.book().get("begin-side-copy").run();
            one.desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "6"));
        });
        assertTrue(one.view.book().get("keep-side-copy").isEnabled());
        OnEventThread.run(() -> other.desk().apply(TypedEdits.conductor(List.of(new WireId("W5")), "4")));
        assertFalse(one.view.book().get("keep-side-copy").isEnabled());
        OnEventThread.run(() -> other.view.book().get("undo").run());
        OnEventThread.run(() -> one.view.book().get("keep-side-copy").run());
        assertEquals(one.desk().harness().orElseThrow(), other.desk().harness().orElseThrow(), "kept for both windows");
    }

    @Test
    void aBadFileGivesOneLineAndLeavesTheOpenHarness() throws IOException {
        stage.openExample("teaching");
        Path bad = folder.resolve("bad.harness.json");
        Files.writeString(bad, "{\"format\": \"ohmloom-harness\", \"version\": 1, ");
        OnEventThread.run(() -> stage.view.filing().open(bad));
        OnEventThread.await("the refusal", () -> !stage.prompts.asked.isEmpty());
        String said = stage.prompts.asked.get(0);
        assertTrue(said.contains("bad.harness.json"), said);
        assertEquals(1, said.lines().count(), said);
        assertEquals(
                "teaching",
                OnEventThread.get(() -> stage.desk().document().orElseThrow().name()));
    }

    private Path saved() {
        stage.openExample("teaching");
        stage.prompts.target = Optional.of(folder.resolve("mine.harness.json"));
        assertTrue(stage.answer(stage.view.filing()::save));
        stage.prompts.asked.clear();
        return folder.resolve("mine.harness.json");
    }

    private void edit() {
        OnEventThread.run(() -> stage.desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "6")));
    }
}
