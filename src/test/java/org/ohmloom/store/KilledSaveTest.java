package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;

/** A few kills of the campaign in every build: power that fails while saving leaves the old or the new file. */
@BesideOthers
class KilledSaveTest {

    @TempDir
    Path folder;

    @Test
    void aProgramKilledWhileItSavesLeavesTheOldOrTheNewFileWhole() throws Exception {
        KillRun run = new KillRun(folder);
        run.run(1);
        assertEquals(1, run.done());
        // started again it goes on where it stopped
        new KillRun(folder).run(2);
        assertEquals(2, run.done());
        HarnessFiles.read(folder.resolve("saves").resolve("target0.harness.json"));
    }
}
