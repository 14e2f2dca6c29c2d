package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.pack.page.ReportPages;
import org.ohmloom.pack.page.TitleFields;
import org.ohmloom.review.Cautions;

/** What a cover tells of a harness, and how every later sheet of a report leads to the cautions. */
@BesideOthers
class CoverTest {

    private static final SceneFonts FONTS = SceneFonts.load();

    private static List<Scene> sheets(String example, PackDocument document) {
        Analysis analysis = AnalysedExamples.of(example);
        FileNames names = new FileNames(analysis.harness().titleBlock().number());
        TitleFields fields = TitleFields.of(analysis.harness().titleBlock(), document.title());
        return new ReportPages(FONTS)
                .set(
                        document == PackDocument.COVER
                                ? new Cover(analysis, PackOptions.ALL.documents(), names).report()
                                : new CalculationReport(analysis, FONTS, List.of()).report(),
                        fields)
                .scenes();
    }

    private static String words(Scene sheet) {
        return sheet.items().stream()
                .filter(item -> item.mark() instanceof Text)
                .map(item -> ((Text) item.mark()).text())
                .collect(Collectors.joining(" "));
    }

    private static String words(List<Scene> sheets) {
        return sheets.stream().map(CoverTest::words).collect(Collectors.joining(" "));
    }

    @Test
    void theCoverTellsWhatIsAskedForWhatIsOpenAndWhatItComesTo() {
        Analysis analysis = AnalysedExamples.of("star-ground");
        String words = words(sheets("star-ground", PackDocument.COVER));
        assertTrue(words.contains("class 2, dedicated service (IPC/WHMA-A-620)"), words);
        assertTrue(words.contains("0 errors, 0 warnings"), words);
        assertTrue(words.contains("Mass of wires and coverings along the segments"), words);
        assertTrue(words.contains("Wires to be made " + analysis.totals().wires()), words);
        for (PackDocument document : PackDocument.values()) {
            assertTrue(document == PackDocument.COVER || words.contains(document.title()), document.title());
        }
    }

    @Test
    void theTimeAtTheBenchIsTheSumOfItsOperations() {
        // teaching: every operation counted times its minutes in the table build-times
        Analysis analysis = AnalysedExamples.of("teaching");
        BuildTimes times = BuildTimes.of(analysis);
        double sum = 0;
        for (String operation : times.counts().keySet()) {
            sum += times.counts().get(operation)
                    * analysis.evidence().tables().buildMinutes(operation).value();
        }
        assertEquals(sum, times.minutes(), 1e-9);
        String words = words(sheets("teaching", PackDocument.COVER));
        assertTrue(words.contains("in all " + Math.round(sum)), words);
        assertTrue(words.contains("cut and mark a wire " + times.counts().get("wire")), words);
    }

    @Test
    void cautionsStandOnTheFirstSheetOfAReportAndEveryLaterOneLeadsThere() {
        List<Scene> sheets = sheets("teaching", PackDocument.CALCULATION);
        assertTrue(sheets.size() > 1);
        assertTrue(words(sheets.get(0)).contains(Cautions.ALL.get(0).english()));
        for (Scene later : sheets.subList(1, sheets.size())) {
            assertTrue(words(later).contains("Cautions: sheet 1."));
            assertFalse(words(later).contains(Cautions.ALL.get(0).english()));
        }
    }
}
