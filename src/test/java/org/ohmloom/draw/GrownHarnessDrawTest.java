package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.Harness;

/** Harnesses grown at random, from a few wires to very many, on paper: all of it inside, legible, nothing on anything. */
@BesideOthers
class GrownHarnessDrawTest {

    /** Seed, wires and paper; the large ones in the full campaign only. */
    static Stream<Arguments> grown() {
        Stream<Arguments> all = Stream.of(
                arguments(1, 10, Paper.A4),
                arguments(2, 25, Paper.A3),
                arguments(3, 60, Paper.A4),
                arguments(4, 60, Paper.A3),
                arguments(5, 150, Paper.A1),
                arguments(7, 400, Paper.A2),
                arguments(8, 1500, Paper.A0));
        return all.limit(Campaign.count(5, 7));
    }

    @ParameterizedTest
    @MethodSource("grown")
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
