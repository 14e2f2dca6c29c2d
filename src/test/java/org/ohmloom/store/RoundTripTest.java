package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Register;

/** What is written is read back as the same harness, and writing it again gives the same bytes. */
class RoundTripTest {
    private static final Path FILE = Path.of("random.harness.json");

    @Property(tries = 400)
    void aRandomHarnessSurvivesWritingAndReading(@ForAll long seed) throws HarnessFileException {
        Harness harness = RandomHarness.of(seed);
        String text = HarnessText.write(harness);
        Harness again = HarnessText.read(text, FILE);
        assertEquals(harness, again);
        assertEquals(text, HarnessText.write(again));
    }

    @Property(tries = 100)
    void theOrderOfTheFileDoesNotMatter(@ForAll long seed) throws HarnessFileException {
        Harness harness = RandomHarness.of(seed);
        String text = HarnessText.write(harness);
        String backwards = JsonLayout.inline(Backwards.keysAndElements(text));
        assertEquals(text, HarnessText.write(HarnessText.read(backwards, FILE)));
    }

    @Property(tries = 100)
    void noLineIsLongerThan120ColumnsUnlessOneValueIs(@ForAll long seed) {
        for (String line : HarnessText.write(RandomHarness.of(seed)).split("\n")) {
            assertTrue(line.length() <= 120 || line.contains("x".repeat(150)), line);
        }
    }

    @Test
    void everyRegisterOfTheRandomHarnessGetsElements() {
        boolean[] filled = new boolean[17];
        for (long seed = 0; seed < 20; seed++) {
            List<Register<? extends ElementId, ? extends Element>> registers =
                    RandomHarness.of(seed).registers();
            for (int k = 0; k < filled.length; k++) {
                filled[k] |= !registers.get(k).isEmpty();
            }
        }
        for (boolean each : filled) {
            assertTrue(each);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-US", "de-DE", "tr-TR", "ar-EG-u-nu-arab"})
    void theFileIsTheSameWhereverTheComputerStands(String tag) throws HarnessFileException {
        String text = HarnessText.write(RandomHarness.of(3));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertEquals(text, HarnessText.write(HarnessText.read(text, FILE)));
            assertEquals(
                    "$.segments[0] (SEG1).lengthMetres: length of segment SEG1 must be greater than 0, was -2.5",
                    Refusals.with("\"lengthMetres\": 2.4", "\"lengthMetres\": -2.5")
                            .substring(18));
        } finally {
            Locale.setDefault(before);
        }
    }
}
