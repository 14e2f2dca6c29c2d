package org.ohmloom.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.manual.formula.Formula;
import org.ohmloom.manual.formula.Formulas;
import org.ohmloom.manual.formula.Worked;

/** Every formula of the manual is worked by hand and computed by the program, and is cited as results cite it. */
class FormulasTest {

    @Test
    void theProgramComesToWhatTheHandDoes() {
        Map<String, String> apart = new TreeMap<>();
        Formulas.all().forEach(formula -> {
            double byProgram = formula.worked().program().getAsDouble();
            double byHand = formula.worked().byHand();
            if (!(Math.abs(byProgram - byHand) <= Worked.ROUNDING * Math.abs(byHand))) {
                apart.put(formula.key(), "by hand " + byHand + ", by the program " + byProgram);
            }
        });
        assertEquals(Map.of(), apart);
    }

    @Test
    void theResultByHandStandsAtTheEndOfItsSteps() {
        List<String> wrong = Formulas.all()
                .filter(formula -> {
                    String digits = formula.worked().steps().replaceAll("(?<=\\d) (?=\\d{3})", "");
                    String[] numbers =
                            digits.replaceAll("[^0-9.e-]+", " ").strip().split(" ");
                    return Stream.of(numbers)
                            .filter(text -> text.matches("-?\\d+(\\.\\d+)?(e-?\\d+)?"))
                            .noneMatch(text -> Math.abs(Double.parseDouble(text)
                                            - formula.worked().byHand())
                                    <= Worked.ROUNDING
                                            * Math.abs(formula.worked().byHand()));
                })
                .map(Formula::key)
                .toList();
        assertEquals(List.of(), wrong);
    }

    @Test
    void wordsAResultNamesAFormulaByStandInTheProgram() throws IOException {
        String code =
                texts("src/main/java/org/ohmloom", ".java") + texts("src/main/resources/org/ohmloom", ".properties");
        assertEquals(
                List.of(),
                Formulas.all()
                        .map(Formula::cited)
                        .filter(cited -> !code.contains(cited))
                        .toList());
    }

    /** All files of an ending in a folder, but for those of the manual. */
    private static String texts(String folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !file.toString().replace('\\', '/').contains("ohmloom/manual/"))
                    .map(FormulasTest::text)
                    .collect(Collectors.joining("\n"));
        }
    }

    @Test
    void aSentenceOfAResultLeadsToItsFormulaOrItsTable() {
        assertEquals(
                Optional.of("formulas/part-load-temperature"),
                WrittenPages.citedIn("by what it may carry, ambient + (limit - ambient) x (I/ampacity)^2: 22 °C"));
        assertEquals(
                Optional.of("tables/iso-6722-1-conductors"),
                WrittenPages.citedIn(
                        "ISO 6722-1:2011, conductor resistance at 20 C and cable outside diameter, thin wall, row 4 mm2"));
        assertEquals(
                Optional.of("formulas/battery-emf"),
                WrittenPages.citedIn("EMF 12.1 V = 12.8 V full x 0.9486 at 50 % charge"));
        assertEquals(
                Optional.of("formulas/alternator-set-point"),
                WrittenPages.citedIn("set point 13.9 V = 14.4 V -0.01 V/K x (80 °C - 25 °C)"));
        assertEquals(
                Optional.of("formulas/divider-reading"),
                WrittenPages.citedIn("1.2 ohm in series: R = Rp V / (Vp - V), 2.2 kohm to 5 V"));
        assertEquals(Optional.empty(), WrittenPages.citedIn("Worst lasting current 7.98 A RMS in Heater and pump"));
    }

    @Test
    void everySymbolOfAFormulaIsExplained() {
        Map<String, Long> counts = Formulas.all().collect(Collectors.toMap(Formula::key, formula ->
                (long) formula.symbols().size()));
        counts.forEach((key, count) -> assertTrue(count >= 2, key));
        assertEquals(counts.size(), Formulas.all().count());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
