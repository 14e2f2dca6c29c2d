package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.ComponentId;
import org.ohmloom.pack.ChangeSheet;
import org.ohmloom.store.HarnessText;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.whatif.WhatIfPane;

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

    @Test
    void whatASideCopyChangesIsStrange() throws IOException {
        Stage stage = new Stage();
        stage.openExample("rescue-pickup");
        String typed = HarnessText.write(stage.desk().harness().orElseThrow()) + StrangeViewsTest.cited();
        OnEventThread.run(() -> {
            stage.view.viewTabs().showStudy(WhatIfPane.KEY);
            stage.view.book().get("begin-side-copy").run();
            stage.desk().apply(new TakeOut(List.of(new ComponentId("FAN1"))));
        });
        stage.awaitResults();
        WhatIfPane pane = (WhatIfPane) stage.view.viewTabs().study(WhatIfPane.KEY);
        OnEventThread.await("the comparison", () -> {
            pane.showRows();
            return ShownTexts.in(pane).stream().anyMatch(line -> line.contains("FAN1"));
        });
        Set<String> left = new TreeSet<>();
        PlainWords plain = new PlainWords(typed);
        for (JTabbedPane tabs : OnEventThread.get(() -> ComponentTree.all(pane)).stream()
                .filter(JTabbedPane.class::isInstance)
                .map(JTabbedPane.class::cast)
                .toList()) {
            for (int k = 0; k < tabs.getTabCount(); k++) {
                int at = k;
                OnEventThread.run(() -> {
                    tabs.setSelectedIndex(at);
                    for (String line : ShownTexts.in(pane)) {
                        if (!plain.in(line).isEmpty()) {
                            left.add(plain.in(line) + " in " + line);
                        }
                    }
                });
            }
        }
        assertEquals(Set.of(), left, String.join("\n", left));
    }
}
