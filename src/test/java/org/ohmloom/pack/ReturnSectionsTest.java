package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.chart.ChartPicturesTest;
import org.ohmloom.draw.study.MadeReturns;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.pack.page.Block;

/** The return paths in the calculation report. */
@BesideOthers
class ReturnSectionsTest {

    private static final SceneFonts FONTS = SceneFonts.load();

    /** Height of the pictures of a page with a heading above, mm. */
    private static final double PAGE_MM = 143;

    @Test
    void nothingIsPrintedWhereThereIsNothingToSay() {
        Analysis silent = MadeReturns.with(Packs.analysis("teaching"), ReturnStudy.NONE);
        assertEquals(List.of(), new ReturnSections(silent, FONTS).blocks());
    }

    @Test
    void everyPartHasItsHeadingItsTableAndReadablePictures() {
        Analysis analysis = MadeReturns.in(Packs.analysis("faults"), 1);
        List<Block> blocks = new ReturnSections(analysis, FONTS).blocks();
        List<String> headings = blocks.stream()
                .filter(block -> block instanceof Block.Heading)
                .map(block -> ((Block.Heading) block).text())
                .toList();
        assertEquals(
                List.of(
                        "Ground points",
                        "Return paths, each point in its worst state",
                        "Loops of the return network",
                        "Offsets of reference points",
                        "Who offsets what, in the worst state of each",
                        "Sensor errors",
                        "Coupling along bundles",
                        "Lost returns",
                        "What could not be judged of the return paths"),
                headings);
        blocks.forEach(block -> {
            if (block instanceof Block.Pictures pictures) {
                pictures.scenes().forEach(scene -> {
                    assertTrue(scene.heightMm() <= PAGE_MM, "height " + scene.heightMm());
                    assertEquals(List.of(), ChartPicturesTest.overlaps(scene));
                    assertEquals(List.of(), ChartPicturesTest.outside(scene));
                });
            }
        });
        Set<String> files = new HashSet<>();
        blocks.forEach(block -> {
            if (block instanceof Block.Table table) {
                assertTrue(files.add(table.file()), table.file());
            }
        });
    }

    @Test
    void everyGroundPointStandsInItsTableOnceForEveryState() {
        Analysis analysis = MadeReturns.in(Packs.analysis("faults"), 1);
        Block.Table table = new GroundSection(analysis, FONTS)
                .blocks().stream()
                        .filter(block -> block instanceof Block.Table)
                        .map(block -> (Block.Table) block)
                        .findFirst()
                        .orElseThrow();
        int grounds = analysis.harness().grounds().size();
        assertEquals(grounds * analysis.states().size(), table.rows().size());
        assertEquals(
                grounds,
                ReturnReadings.grounds(analysis.evidence().returns(), Optional.empty())
                        .size());
    }
}
