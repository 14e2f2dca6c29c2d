package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;

/** The command that draws harnesses from the spreads of their parts. */
@BesideOthers
class ToleranceCommandTest {

    private static final String FILE = "examples/teaching.harness.json";

    @Test
    void itPrintsValuesSharesAndCautions() {
        CommandRun run = CommandRun.of("tolerance", FILE, "--runs", "20", "--load", "P1", "--spread", "joint=none");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("20 harnesses drawn"), run.out());
        assertTrue(run.out().contains("VOLTAGE LOST ON FEED AND RETURN OF LOADS"), run.out());
        assertFalse(run.out().contains("H1"), "another load");
        assertFalse(run.out().contains("JOINT"), "joints do not spread");
        assertTrue(run.out().contains("Results are a design aid."), run.out());
        assertFalse(run.out().contains("NaN"), run.out());
    }

    @Test
    void jsonHasEverythingAndIsTheSameAgain() {
        String[] asked = {"tolerance", FILE, "--runs", "20", "--format", "json", "--spread", "load:P1=0..20,peaked"};
        CommandRun run = CommandRun.of(asked);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("\"source\": \"as entered for this study\""), run.out());
        assertTrue(run.out().contains("\"explainedFraction\""), run.out());
        assertEquals(run.out(), CommandRun.of(asked).out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--runs=5|count of runs must be from 20 to 20000, was 5",
                "--runs=many|many",
                "--seed=-1|the seed must be 0 or more, was -1",
                "--load=P2|no load 'P2'; did you mean 'P1'?",
                "--state=Hot|no operating state 'Hot'",
                "--spread=load|is no spread",
                "--spread=load:BT1=0..1|load:BT1: there is no 'BT1' with a load current",
            })
    void whatIsWrongIsSaidInOneLine(String option, String sentence) {
        CommandRun run = CommandRun.of("tolerance", FILE, option);
        assertEquals(2, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().lines().findFirst().orElseThrow().contains(sentence), run.err());
        assertFalse(run.err().contains("should not have happened"), run.err());
    }

    @Test
    void anEmptyHarnessHasNothingToFollow(@TempDir Path folder) throws IOException {
        Path empty = folder.resolve("empty.harness.json");
        Files.writeString(
                empty,
                """
                {"format": "ohmloom-harness", "version": 1,
                 "titleBlock": {"title": "Empty", "number": "EX-0", "language": "en"},
                 "rules": {"basis": "road-vehicle", "nominalVolts": 12, "allowedDropFraction": 0.05,
                   "gaugeSystem": "metric", "insulation": "ISO 6722-1 class B", "ambientCelsius": 20}}
                """);
        CommandRun run = CommandRun.of("tolerance", empty.toString());
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("There is nothing to follow"), run.out());
    }
}
