package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.Action;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.store.HarnessText;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.findings.FindingsModel;

/** In the made-up language no English is left in what the window shows from the floors below it: whatever is said has a key. */
@ExtendWith(InStrangeLanguage.class)
class StrangeWindowTest {

    private Stage stage;

    @BeforeEach
    void strange() {
        stage = new Stage();
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void theListOfFindingsIsStrange(String example) {
        stage.openExample(example);
        PlainWords plain = new PlainWords(typed());
        Set<String> left = new TreeSet<>();
        JList<FindingsModel.Row> list = stage.view.findings().findings();
        OnEventThread.run(() -> {
            for (int k = 0; k < list.getModel().getSize(); k++) {
                FindingsModel.Row row = list.getModel().getElementAt(k);
                Component shown = list.getCellRenderer().getListCellRendererComponent(list, row, k, false, false);
                String cited =
                        row.finding().map(Finding::citation).map(Words::said).orElse("");
                for (String text : texts(shown)) {
                    Set<String> words = plain.in(text.replace(cited, ""));
                    words.forEach(word ->
                            left.add(row.finding().map(Finding::rule).orElse("heading") + ": " + word + " in " + text));
                }
            }
        });
        assertEquals(Set.of(), left, String.join("\n", left));
    }

    @Test
    void whatWasDoneIsStrangeWhereItCanBeTakenBack() {
        stage.openExample("teaching");
        WireId wire = new WireId("W1");
        for (Edit edit : List.of(
                new SetWireGauge(List.of(wire), Optional.of(Gauge.metric(6))),
                new SetWireLength(List.of(wire), OptionalDouble.of(2)),
                new TakeOut(List.of(wire)))) {
            OnEventThread.run(() -> stage.desk().apply(edit));
            Command undo = stage.view.book().get("undo");
            String name = OnEventThread.get(() -> String.valueOf(undo.getValue(Action.NAME)));
            assertTrue(name.startsWith("[Ûñðö [") || name.startsWith("[Ûñðö: ["), name);
            assertEquals(Set.of(), new PlainWords("").in(name), name);
        }
    }

    @Test
    void whyAConductorHasItsSizeIsStrange() {
        stage.openExample("teaching");
        Set<String> left = new TreeSet<>();
        Evidence evidence = stage.desk().analysis().orElseThrow().evidence();
        evidence.conductors().forEach((wire, choice) -> choice.requirements().forEach(required -> {
            String cited = required.citation().text();
            String said = Words.said(required.why()).replace(cited, "");
            OnEventThread.run(() -> stage.desk().select(Selection.of(List.of(wire.value()))));
            List<String> shown =
                    OnEventThread.get(() -> texts(stage.view.inspector().content()));
            PlainWords typed = new PlainWords(typed() + cited + evidence.basis().title());
            left.addAll(typed.in(said));
            assertTrue(
                    shown.contains(stage.desk().units().text(Words.said(required.why()))),
                    () -> required.why() + " is not among " + shown);
        }));
        assertEquals(Set.of(), left);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void whyADeviceHasItsRatingAndWhichIsProposedIsStrange(String example) {
        stage.openExample(example);
        Evidence evidence = stage.desk().analysis().orElseThrow().evidence();
        Set<String> left = new TreeSet<>();
        evidence.devices()
                .values()
                .forEach(choice ->
                        left.addAll(new PlainWords(typed() + choice.citation().text()).in(Words.said(choice.why()))));
        evidence.protection().proposals().values().forEach(proposal -> proposal.types().stream()
                .forEach(type ->
                        left.addAll(new PlainWords(typed() + type.source().english())
                                .in(Words.said(type.text()) + Words.said(type.why())))));
        assertEquals(Set.of(), left);
    }

    private String typed() {
        return HarnessText.write(stage.desk().harness().orElseThrow());
    }

    private static List<String> texts(Component shown) {
        List<String> texts = new ArrayList<>();
        for (Component each : shown instanceof Container all ? ComponentTree.all(all) : List.of(shown)) {
            if (each instanceof JLabel label && label.getText() != null) {
                texts.add(label.getText());
            } else if (each instanceof JTextComponent text) {
                texts.add(text.getText());
            }
        }
        return texts;
    }
}
