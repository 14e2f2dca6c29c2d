package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** Older files are brought up to date step by step. The steps here are made up. */
@BesideOthers
class MigrationsTest {

    /** Version 1 called the title "name"; version 2 calls it "title". */
    private static ObjectNode titleFromName(ObjectNode file) {
        if (file.get("titleBlock") instanceof ObjectNode block && block.has("name")) {
            JsonNode name = block.remove("name");
            block.set("title", name);
        }
        return file;
    }

    /** Version 2 had no notes; version 3 may not have one called N1. */
    private static ObjectNode withoutNotes(ObjectNode file) {
        file.remove("notes");
        return file;
    }

    private static final Migrations TWO_STEPS =
            new Migrations(List.of(MigrationsTest::titleFromName, MigrationsTest::withoutNotes));

    @Test
    void aFileOfTheFirstVersionGoesThroughEveryStep() throws HarnessFileException {
        Harness harness = HarnessText.read(
                SmallExample.with("\"title\": \"Fan on the bench\"", "\"name\": \"Fan on the bench\""),
                Refusals.FILE,
                TWO_STEPS);
        assertEquals("Fan on the bench", harness.titleBlock().title());
        assertEquals(0, harness.notes().size());
        assertEquals("  \"version\": 3,", HarnessText.write(harness, TWO_STEPS).split("\n")[2]);
    }

    @Test
    void aFileOfALaterVersionSkipsTheStepsBeforeIt() throws HarnessFileException {
        Harness harness =
                HarnessText.read(SmallExample.with("\"version\": 1,", "\"version\": 3,"), Refusals.FILE, TWO_STEPS);
        assertEquals(1, harness.notes().size());
    }

    @Test
    void aFileNewerThanTheLastStepIsRefused() {
        HarnessFileException refused = assertThrows(
                HarnessFileException.class,
                () -> HarnessText.read(
                        SmallExample.with("\"version\": 1,", "\"version\": 4,"), Refusals.FILE, TWO_STEPS));
        assertEquals("$.version", refused.place());
    }
}
