package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/**
 * Spoiled example files through the whole program: a result, or one line on standard error that names the file; never a
 * stack trace, and never a refusal that calls itself a mistake of the program.
 */
@BesideOthers
class MangledFilesCommandTest {

    private static final long SEED = 20261125;
    private static final int SAMPLE = 12;
    private static final int FULL = 60;
    /** The smaller ones more often, for they are as good to spoil and take less time. */
    private static final List<String> EXAMPLES =
            List.of("teaching", "teaching", "faults", "faults", "star-ground", "star-ground", "workboat");

    private static final List<String> DOCUMENTS =
            List.of("drawing", "pin-tables", "bill-of-materials", "wire-list", "bundles", "calculation");
    private static final String NAME = "mangled.harness.json";
    private static final Pattern STACK_TRACE =
            Pattern.compile("(?m)^\\s+at [\\w.$]+\\(|^Exception in thread|^Caused by:");

    @TempDir
    Path folder;

    @Test
    void aSpoiledFileGivesAResultOrOneLineThatNamesIt() throws IOException {
        int count = Campaign.count(SAMPLE, FULL);
        List<byte[]> originals = new ArrayList<>();
        for (String example : EXAMPLES) {
            originals.add(Files.readAllBytes(Path.of("examples", example + ".harness.json")));
        }
        Random random = new Random(SEED);
        Mangler mangler = new Mangler(random);
        Path file = folder.resolve(NAME);
        int refused = 0;
        for (int number = 0; number < count; number++) {
            byte[] mangled = mangler.mangled(originals.get(random.nextInt(originals.size())));
            Files.write(file, mangled);
            CommandRun run = run(number, file);
            requireOrderly(number, run);
            assertTrue(Arrays.equals(mangled, Files.readAllBytes(file)), "file " + number + " was touched");
            refused += run.status() == ExitStatus.UNUSABLE ? 1 : 0;
        }
        // both ways are really walked: neither is every file refused nor every file taken
        assertTrue(refused > count / 5 && refused < count * 4 / 5, refused + " of " + count + " were refused");
    }

    /** Of fifteen files ten are checked, four sized, and one document of the pack is made of one. */
    private CommandRun run(int number, Path file) {
        int turn = number % 15;
        try {
            if (turn < 10) {
                return CommandRun.of("check", file.toString(), "--format", turn % 2 == 0 ? "text" : "json");
            }
            if (turn < 14) {
                return CommandRun.of("size", file.toString(), "--out", inFolder("sized.harness.json"));
            }
            String document = DOCUMENTS.get(number / 15 % DOCUMENTS.size());
            return CommandRun.of("pack", file.toString(), "--out", inFolder("pack"), "--documents", document);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError escaped) {
            throw new AssertionError("file " + number + " made the program throw", escaped);
        }
    }

    private String inFolder(String name) {
        return folder.resolve(name).toString();
    }

    private static void requireOrderly(int number, CommandRun run) {
        String err = "file " + number + ", status " + run.status() + ": " + run.err();
        assertTrue(run.status() >= ExitStatus.CLEAN && run.status() <= ExitStatus.UNUSABLE, err);
        assertFalse(STACK_TRACE.matcher(run.out() + "\n" + run.err()).find(), err);
        if (run.status() == ExitStatus.UNUSABLE) {
            assertEquals(1, run.err().lines().count(), err);
            assertTrue(run.err().contains(NAME), err);
            assertFalse(run.err().contains("should not have happened"), err);
        } else {
            assertEquals("", run.err(), err);
        }
    }
}
