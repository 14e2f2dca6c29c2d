package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
        assertTrue(OnEventThread.get(() -> stage.view.filing().save()));
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
        assertFalse(OnEventThread.get(() -> stage.view.filing().close()));
        assertEquals(List.of("unsaved mine"), stage.prompts.asked);
        assertTrue(OnEventThread.get(() -> stage.desk().document().isPresent()));

        stage.prompts.unsaved = Prompts.Unsaved.DISCARD;
        assertTrue(OnEventThread.get(() -> stage.view.filing().close()));
        assertTrue(OnEventThread.get(() -> stage.desk().document().isEmpty()));
    }

    @Test
    void savingOnLeavingWritesTheChange() throws IOException {
        Path file = saved();
        edit();
        stage.prompts.unsaved = Prompts.Unsaved.SAVE;
        assertTrue(OnEventThread.get(() -> stage.view.filing().close()));
        assertTrue(Files.readString(file).contains("\"gauge\": \"6 mm2\""));
    }

    @Test
    void aFileChangedByAnotherIsNotOverwritten() throws IOException {
        Path file = saved();
        edit();
        String other = Files.readString(file).replace("Two-load teaching harness", "Changed by another");
        Files.writeString(file, other);
        assertFalse(OnEventThread.get(() -> stage.view.filing().save()));
        assertEquals(other, Files.readString(file));
        assertTrue(stage.prompts.asked.get(0).startsWith("changed "), stage.prompts.asked.toString());
        assertTrue(OnEventThread.get(
                () -> stage.desk().document().orElseThrow().session().isChanged()));
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
        assertTrue(OnEventThread.get(() -> stage.view.filing().save()));
        stage.prompts.asked.clear();
        return folder.resolve("mine.harness.json");
    }

    private void edit() {
        OnEventThread.run(() -> stage.desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "6")));
    }
}
