package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** Harnesses grown at random, from a few wires to very many, on paper: all of it inside, legible, nothing on anything. */
@BesideOthers
class GrownHarnessDrawTest {

    @ParameterizedTest
    @CsvSource({"1, 10, A4", "2, 25, A3", "3, 60, A4", "4, 60, A3", "5, 150, A1", "7, 400, A2", "8, 1500, A0"})
    void nothingWrittenLiesOnAnythingOrOutsideItsSheet(long seed, int wires, Paper paper) {
        Harness harness = GrownHarness.of(seed, wires);
        assertEquals(wires, harness.wires().size());
        List<Scene> sheets = new DrawingSheet(Drawn.FONTS).sheets(harness, Optional.empty(), paper);
        for (int k = 0; k < sheets.size(); k++) {
            Scene sheet = sheets.get(k);
            String place = wires + " wires, " + paper + " sheet " + (k + 1) + " of " + sheets.size();
            Drawn.keep("grown-" + wires + "-" + paper + "-" + (k + 1), sheet, DrawStyle.PRINT, 4);
            List<String> wrong = new ArrayList<>(Overlaps.texts(sheet));
            wrong.addAll(Overlaps.textsOnLines(sheet));
            wrong.addAll(Overlaps.outside(sheet));
            assertEquals(List.of(), wrong, place);
        }
    }
}
