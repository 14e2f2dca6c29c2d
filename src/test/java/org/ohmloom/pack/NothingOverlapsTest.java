package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.draw.Overlaps;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ShopHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;

/**
 * On no page of any document of the pack does something written lie on something else written, or leave the sheet: for the examples
 * and for 200 harnesses of 10 to 1,500 wires with the system property {@code ohmloom.campaign=full}. Large ones have a size at every
 * wire, as choosing them takes longer than all pages, and are set from what is known when the currents and temperatures are; their
 * drawings and wiring diagrams are looked at by {@code ShopHarnessesTest}.
 */
@BesideOthers
class NothingOverlapsTest {

    private static final int ALL = 200;
    private static final int SAMPLE = 3;
    private static final int FEWEST_WIRES = 10;
    private static final int MOST_WIRES = 1500;
    private static final int MOST_WIRES_WITHOUT_SIZE = 150;
    private static final int MOST_WIRES_OF_SAMPLE = 40;

    /** Counts in even ratios from the fewest to the most. */
    private static int wires(int seed) {
        int count = Campaign.FULL ? ALL : SAMPLE;
        double most = Campaign.FULL ? MOST_WIRES : MOST_WIRES_OF_SAMPLE;
        return (int) Math.round(FEWEST_WIRES * Math.pow(most / FEWEST_WIRES, seed / (count - 1.0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "faults", "workboat", "rescue-pickup"})
    void ofAnExample(String name) {
        PackOptions options = PackOptions.ALL;
        assertEquals(List.of(), wrong(AnalysedExamples.of(name), options, name));
    }

    @Test
    void ofHarnessesMadeAtRandom() {
        List<String> wrong =
                Campaign.each(Campaign.count(SAMPLE, ALL), NothingOverlapsTest::wrongOfAHarnessMadeAtRandom).stream()
                        .flatMap(List::stream)
                        .toList();
        assertEquals(List.of(), wrong.stream().limit(10).toList(), wrong.size() + " in all");
    }

    static List<String> wrongOfAHarnessMadeAtRandom(int seed) {
        boolean small = wires(seed) <= MOST_WIRES_WITHOUT_SIZE;
        Analysis analysis = small
                ? Analyst.analyse(ShopHarness.of(1000 + seed, wires(seed)), WireTables.bundled(), Cancel.NEVER)
                : firstStage(ShopHarness.sized(1000 + seed, wires(seed)));
        Paper paper = Paper.values()[seed % Paper.values().length];
        return wrong(analysis, small ? on(paper) : withoutDrawings(on(paper)), "seed " + seed + " on " + paper);
    }

    private static PackOptions withoutDrawings(PackOptions options) {
        try {
            return options.withDocuments(options.documents().stream()
                    .filter(document -> document != PackDocument.DRAWING && document != PackDocument.WIRING_DIAGRAM)
                    .map(PackDocument::id)
                    .collect(Collectors.joining(",")));
        } catch (PackException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static Analysis firstStage(Harness harness) {
        AtomicReference<Analysis> first = new AtomicReference<>();
        try {
            return Analyst.analyse(
                    harness,
                    WireTables.bundled(),
                    () -> first.get() != null,
                    soFar -> first.compareAndSet(null, soFar));
        } catch (CancellationException enough) {
            return first.get();
        }
    }

    private static PackOptions on(Paper paper) {
        try {
            return PackOptions.ALL.withPaper(paper.label());
        } catch (PackException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static List<String> wrong(Analysis analysis, PackOptions options, String place) {
        Map<PackDocument, List<Scene>> pages = BuildPack.pages(analysis, options);
        assertEquals(EnumSet.copyOf(options.documents()), pages.keySet());
        List<String> wrong = new ArrayList<>();
        pages.forEach((document, scenes) -> {
            for (int k = 0; k < scenes.size(); k++) {
                String at = place + ", " + document.id() + " page " + (k + 1) + ": ";
                Overlaps.texts(scenes.get(k)).forEach(each -> wrong.add(at + each));
                Overlaps.outside(scenes.get(k)).forEach(each -> wrong.add(at + each));
            }
        });
        return wrong;
    }
}
