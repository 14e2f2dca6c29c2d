package org.ohmloom.workbench.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.pack.PackOptions;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;

/** Writing the build pack from the workbench: it tells how far it got and stops when asked. */
class PackExportTest {

    @TempDir
    private Path folder;

    private final List<PackExport.Step> steps = new CopyOnWriteArrayList<>();
    private final List<PackExport.Result> results = new CopyOnWriteArrayList<>();
    private final Analysis analysis = teaching();

    @Test
    void everyDocumentIsAStepAndTheFilesAreThere() {
        PackExport export = new PackExport(analysis, steps::add, results::add);
        OnEventThread.run(() -> export.start(folder.resolve("pack"), PackOptions.ALL));
        OnEventThread.await("the pack", () -> !results.isEmpty());
        assertTrue(results.get(0).problem().isEmpty(), results.toString());
        assertTrue(results.get(0).files().stream().allMatch(Files::exists));
        assertTrue(steps.size() >= PackOptions.ALL.documents().size(), steps.toString());
        assertFalse(OnEventThread.get(export::isRunning));
    }

    @Test
    void aPackThatIsCancelledLeavesNothingBehind() throws IOException {
        List<PackExport> running = new ArrayList<>();
        PackExport export = new PackExport(
                analysis,
                step -> {
                    steps.add(step);
                    running.get(0).cancel();
                },
                results::add);
        running.add(export);
        OnEventThread.run(() -> {
            export.start(folder.resolve("pack"), PackOptions.ALL);
            export.cancel();
        });
        OnEventThread.await("the end", () -> !results.isEmpty());
        assertEquals(List.of(), results.get(0).files());
        assertTrue(results.get(0).problem().isEmpty());
        try (var left = Files.walk(folder)) {
            assertEquals(0, left.filter(Files::isRegularFile).count());
        }
    }

    @Test
    void aFolderThatIsAFileIsRefusedInOneLine() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "not a folder");
        PackExport export = new PackExport(analysis, steps::add, results::add);
        OnEventThread.run(() -> export.start(file, PackOptions.ALL));
        OnEventThread.await("the refusal", () -> !results.isEmpty());
        String problem = results.get(0).problem().orElseThrow();
        assertEquals(1, problem.lines().count(), problem);
        assertEquals("not a folder", Files.readString(file));
    }

    private static Analysis teaching() {
        Stage stage = new Stage().openExample("teaching");
        return OnEventThread.get(() -> stage.desk().analysis().orElseThrow());
    }
}
