package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.pack.ChangeSheet;
import org.ohmloom.store.HarnessText;
import org.ohmloom.words.Text;

/** What two harnesses differ in is said in the made-up language, whatever kinds of things and fields they have. */
@ExtendWith(InStrangeLanguage.class)
class StrangeComparisonTest {

    /** Words of rows of tables that name what is bought: labels, as their makers call them. */
    private static final List<String> OF_TABLES = List.of("sleeve");

    @Test
    void whatTwoHarnessesDifferInIsStrange() {
        Analysis before = AnalysedExamples.of("workboat");
        Analysis after = AnalysedExamples.of("rescue-pickup");
        List<Text> said = new ArrayList<>();
        RevisionComparison comparison = RevisionComparison.of(before, after);
        comparison.elements().forEach(each -> {
            said.add(each.kindText());
            each.fields()
                    .forEach(field -> said.addAll(List.of(field.fieldText(), field.beforeText(), field.afterText())));
        });
        comparison.results().forEach(each -> said.add(each.quantityText()));
        comparison.findings().forEach(each -> said.addAll(List.of(each.text(), each.was())));
        ChangeSheet.parts(comparison)
                .forEach(each ->
                        said.addAll(List.of(each.groupText(), each.numberText(), each.what(), each.unitText())));
        PlainWords plain = new PlainWords(
                HarnessText.write(before.harness()) + HarnessText.write(after.harness()) + String.join(" ", OF_TABLES));
        Set<String> left = new TreeSet<>();
        said.forEach(each -> {
            Set<String> words = plain.in(Words.said(each));
            if (!words.isEmpty()) {
                left.add(words + " in " + Words.said(each));
            }
        });
        assertTrue(said.size() > 1000, () -> said.size() + " texts");
        assertEquals(Set.of(), left, String.join("\n", left));
    }
}
