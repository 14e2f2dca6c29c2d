package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

@BesideOthers
class ManualCommandTest {

    @Test
    void itPrintsAPageAsItStandsInTheRepository() {
        CommandRun run = CommandRun.of("manual", "rules/no-return-path");
        assertEquals(0, run.status());
        assertTrue(run.out().startsWith("# A load has no return to a source\n"), run.out());
    }

    @Test
    void itListsThePagesThatHoldAllWordsAndTheContentsWithoutAny() {
        assertTrue(CommandRun.of("manual", "state", "matrix").out().startsWith("views/state-matrix  State matrix"));
        String contents = CommandRun.of("manual").out();
        assertTrue(contents.contains("views/README  Views"), contents);
        assertTrue(contents.contains("  formulas/wire-gauge  Diameter of an AWG size"), contents);
    }

    @Test
    void wordsOnNoPageAreRefusedInOneLine() {
        CommandRun run = CommandRun.of("manual", "xylophone");
        assertEquals(2, run.status());
        assertEquals(
                "ohmloom: no page of the manual holds 'xylophone'; 'ohmloom manual' lists all\n",
                run.err().replace("\r", ""));
    }
}
