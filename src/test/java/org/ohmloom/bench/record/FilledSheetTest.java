package org.ohmloom.bench.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.store.CsvTable;
import org.ohmloom.words.Text;

/** The tables of the test sheet with their blanks filled in, and what comes of slips. */
class FilledSheetTest {
    private static final Harness TEACHING = AnalysedExamples.of("teaching").harness();
    private static final double EXACT = 1e-12;

    private static FilledSheet taken(String text) throws Exception {
        return FilledSheet.of(CsvTable.parse(text, "t.csv"), TEACHING, RecordDefaults.NONE);
    }

    private static List<String> refused(String text) {
        return assertThrows(RecordRefusedException.class, () -> taken(text)).lines().stream()
                .map(Text::english)
                .toList();
    }

    @Test
    void aLineOfTheContinuityMatrixIsAReadingWithAllThatIsWrittenBesideIt() throws Exception {
        FilledSheet sheet =
                taken("Net;From;To;Wires at 20 °C mΩ;Method;Measured mΩ;By, date;Serial number;Temperature °C;Remark\n"
                        + "N1;X1.1;X2.1;31,75;four wires;1,234;AB 2026-02-03T09:10;0007;21,5;dry\n"
                        + "N2;X1.2;G2, terminal of W6;19,05;two wires;;;;;\n");

        Reading reading = sheet.readings().get(0);
        assertEquals(1, sheet.readings().size());
        assertEquals(1, sheet.blanks());
        assertEquals(List.of(), sheet.leftOut());
        assertEquals(new Measured.Path("X1.1", "X2.1", 0.001234), reading.measured());
        assertEquals(Optional.of(Reading.Method.FOUR_WIRE), reading.method());
        assertEquals(Optional.of("AB"), reading.by());
        assertEquals(Optional.of("2026-02-03T09:10"), reading.measuredAt());
        assertEquals(Optional.of("0007"), reading.serialNumber());
        assertEquals(OptionalDouble.of(21.5), reading.conductorCelsius());
        assertEquals(Optional.of("dry"), reading.remark());
        assertEquals("BR1", reading.id().value());
    }

    @Test
    void theUnitStandsInTheHeadOrInTheCell() throws Exception {
        for (String text : List.of(
                "Wire,Measured (mOhm)\nW8,2.4\n",
                "Wire,Measured [µΩ]\nW8,2400\n",
                "Wire,Measured\nW8,2.4 mΩ\n",
                "wire,MEASURED Ω\nW8,2.4e-3\n")) {
            Measured.OfWire wire =
                    (Measured.OfWire) taken(text).readings().get(0).measured();
            assertEquals(0.0024, wire.wireOhms(), EXACT, text);
        }
        assertEquals(
                List.of(
                        "t.csv, line 2: column 'Measured': '2.4' has no unit; a resistance such as '4.7 kOhm' is needed;"
                                + " or name the unit in the head of the column"),
                refused("Wire,Measured\nW8,2.4\n"));
        assertEquals(
                List.of("t.csv, line 2: column 'Measured V': 'Measured V' is not the head of a resistance"),
                refused("Wire,Measured V\nW8,2.4\n"));
    }

    @Test
    void everyTableOfTheSheetIsKnownByItsColumns() throws Exception {
        assertEquals(
                new Measured.Isolation("X1.1", 2e8, OptionalDouble.of(500), true),
                taken(
                                "Net,Probe at,Against,Test voltage V,At least MΩ,Measured MΩ\nN1,X1.1,all other nets,500,100,> 200\n")
                        .readings()
                        .get(0)
                        .measured());
        assertEquals(
                new Measured.Isolation("X1.1", 4e7, OptionalDouble.empty(), false),
                taken("Probe at,Test voltage V,Measured MΩ\nX1.1,ohmmeter only,40\n")
                        .readings()
                        .get(0)
                        .measured());
        assertEquals(
                new Measured.CableCheck("C1", "shield W5", Measured.CableCheck.Outcome.FAILED),
                taken("Cable,Check,Passed or failed\nC1,shield W5,Failed\n")
                        .readings()
                        .get(0)
                        .measured());
        assertEquals(
                4.4482216152605 * 50,
                ((Measured.Pull) taken("Terminal,Conductor,Pull,Lowest force lbf\nCT-T,1.5 mm²,5,50\n")
                                .readings()
                                .get(0)
                                .measured())
                        .lowestNewtons(),
                EXACT);
        assertEquals(
                new Measured.Powered(
                        "H1", "both", OptionalDouble.of(11.8), OptionalDouble.of(0.4), OptionalDouble.empty()),
                taken("Load,State,Voltage V,Voltage found V,Drop found mV\nH1,both,11.9,11.8,400\n")
                        .readings()
                        .get(0)
                        .measured());
        assertTrue(taken("Joint,Measured mΩ,Replaces\nG1,0.4,yes\n")
                .readings()
                .get(0)
                .replaces());
    }

    @Test
    void everySlipIsToldWithItsLineAndNothingIsTaken() {
        assertEquals(
                List.of(
                        "t.csv, line 2: column 'Measured mΩ': 'abc' does not begin with a number; a resistance such as"
                                + " '4.7 kOhm' is needed",
                        "t.csv, line 3: a value is written, but nothing in the column 'To'",
                        "t.csv, line 4: column 'By, date': the date is written as 2026-01-31, not 'AB 3.2.26'",
                        "t.csv, line 5: column 'Method': 'three' is neither; write two wires or four wires"),
                refused("From,To,Measured mΩ,Method,\"By, date\"\nX1.1,X2.1,abc,,\nX1.1,,3,,\nX1.1,X2.1,3,,AB 3.2.26\n"
                        + "X1.1,X2.1,3,three,\n"));
    }

    @Test
    void aColumnNobodyKnowsIsKeptOutAndNamed() throws Exception {
        assertEquals(
                List.of("Weather"),
                taken("Wire,Measured mΩ,Weather\nW8,2.4,rain\n").leftOut());
        assertTrue(refused("Colour,Weather\nred,rain\n")
                .get(0)
                .startsWith("t.csv: the columns do not say what was measured"));
    }

    @Test
    void theSameSheetTakenTwiceLeavesOneReadingOfEachLine() throws Exception {
        String text = "Wire,Measured mΩ,Date,Serial number\nW8,2.4,2026-02-03,0001\nW5,18.2,2026-02-03,0001\n";
        Harness once = TEACHING.withAll(taken(text).readings());
        FilledSheet again =
                FilledSheet.of(CsvTable.parse(text.replace("2.4", "2.5"), "t.csv"), once, RecordDefaults.NONE);
        Harness twice = once.withAll(again.readings());

        assertEquals(2, twice.readings().size());
        assertEquals(
                0.0025,
                twice.readings().all().stream()
                        .filter(reading -> reading.measured().place().equals("W8"))
                        .findFirst()
                        .orElseThrow()
                        .measured()
                        .ohms()
                        .orElseThrow(),
                EXACT);
    }
}
