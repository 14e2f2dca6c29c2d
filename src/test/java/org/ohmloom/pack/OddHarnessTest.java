package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;

/** Harnesses that are hardly begun, or named in ways a computer dislikes, have a pack as well. */
@BesideOthers
class OddHarnessTest {
    private static final DesignRules RULES =
            new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 40);

    @TempDir
    private Path folder;

    private void write(Harness harness) throws PackException {
        BuildPack.write(
                Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER), folder, PackOptions.ALL, Progress.NONE);
    }

    @Test
    void anEmptyHarnessSaysThatThereIsNothing() throws IOException, PackException {
        write(Harness.empty(TitleBlock.of("Nothing yet", "EX-0"), RULES));
        assertTrue(Packs.text(Packs.find(folder, "wire-list.pdf")).contains("No wire is to be made."));
        assertTrue(Packs.text(Packs.find(folder, "bill-of-materials.pdf")).contains("Nothing is to be bought."));
        assertTrue(Packs.text(Packs.find(folder, "calculation.pdf")).contains("nothing was solved"));
        assertEquals(List.of(), Packs.rows(Packs.find(folder, "wire-list.csv")));
    }

    @Test
    void aWireWithNothingDecidedSaysSoPlainly() throws IOException, PackException {
        WireEnd loose = new WireEnd.Loose();
        write(Harness.empty(TitleBlock.of("Begun", "EX-0"), RULES).with(Wire.of("W1", loose, loose, SignalClass.FEED)));
        Map<String, String> row =
                Packs.rows(Packs.find(folder, "wire-list.csv")).get(0);
        assertEquals("loose", row.get("From"));
        assertEquals("not chosen", row.get("Size"));
        assertEquals("not chosen", row.get("Colour"));
        assertEquals("", row.get("Length mm"));
        assertEquals("unknown", row.get("Length by"));
    }

    @Test
    void namesWithFormulasQuotesAndForeignLettersComeThrough() throws IOException, PackException {
        String formula = "=SUM(A1:A9)";
        String quoted = "feed, \"left\" 12 V µΩ é";
        Harness harness = Harness.empty(TitleBlock.of("配線 harness — Größe", "EX/0: \\*?"), RULES)
                .withAll(List.of(splice("S1", formula), splice("S2", quoted), splice("S3", "x".repeat(400))));
        write(harness);
        List<Map<String, String>> rows = Packs.rows(Packs.find(folder, "pin-tables-splices.csv"));
        assertEquals("'" + formula, rows.get(0).get("Name"));
        assertEquals(quoted, rows.get(1).get("Name"));
        String text = Packs.text(Packs.find(folder, "pin-tables.pdf"));
        assertTrue(text.contains(quoted), text);
        assertTrue(text.replace(" ", "").contains("x".repeat(400)), "every letter of a name of 400 letters");
    }

    private static Splice splice(String id, String name) {
        return new Splice(new SpliceId(id), name, 0.0002, Optional.empty(), Optional.empty(), false, Optional.empty());
    }
}
