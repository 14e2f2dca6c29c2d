package org.ohmloom.workbench.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.junit.jupiter.api.Test;
import org.ohmloom.analysis.start.FirstHarness;
import org.ohmloom.analysis.start.StartLoad;
import org.ohmloom.analysis.start.StartPlan;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Document;

/** A new harness: by the guide, page by page, and empty. */
class GuideTest {

    private final List<StartPlan> plans = new ArrayList<>();
    private final List<Harness> made = new ArrayList<>();

    private GuidePane guide() {
        return new GuidePane(
                (plan, cancel) -> {
                    plans.add(plan);
                    return FirstHarness.laidOut(plan, GaugeSystem.METRIC, WireTables.bundled());
                },
                Runnable::run,
                Runnable::run,
                made::add,
                () -> {});
    }

    @Test
    void theGuideAsItOpensLaysOutAHarnessWithoutAnythingTyped() {
        OnEventThread.run(() -> {
            GuidePane guide = guide();
            JButton next = guide.nextButton();
            next.doClick();
            next.doClick();
            assertTrue(made.isEmpty());
            next.doClick();
        });
        assertEquals(1, plans.size());
        assertEquals(3, plans.get(0).places().size());
        assertEquals(Optional.empty(), plans.get(0).unitPlace());
        assertEquals(4, plans.get(0).loads().get(0).amps());
        assertEquals("Untitled", made.get(0).titleBlock().title());
    }

    @Test
    void whatIsTypedInARowIsReadWithItsUnitAndEitherDecimalSign() {
        OnEventThread.run(() -> {
            GuidePane guide = guide();
            JTable loads = (JTable) named(guide, "guide-loads").orElseThrow();
            ((JButton) named(guide, "add-loads").orElseThrow()).doClick();
            loads.getCellEditor().cancelCellEditing();
            loads.setValueAt("Valve", 1, 0);
            loads.setValueAt("1200 mA", 1, 2);
            loads.setValueAt("0,5", 0, 2);
            press(guide, 3);
        });
        StartPlan plan = plans.get(0);
        assertEquals(0.5, plan.loads().get(0).amps());
        assertEquals(1.2, plan.loads().get(1).amps());
        assertEquals(StartLoad.Kind.HEATER_OR_COIL, plan.loads().get(1).kind());
    }

    @Test
    void whatCannotBeReadIsNamedAndTheGuideStays() {
        String problem = OnEventThread.get(() -> {
            GuidePane guide = guide();
            ((JTable) named(guide, "guide-loads").orElseThrow()).setValueAt("much", 0, 2);
            press(guide, 3);
            return ((JTextComponent) named(guide, "guide-problem").orElseThrow()).getText();
        });
        assertTrue(problem.startsWith("Work lamp, Current: "), problem);
        assertTrue(made.isEmpty());
    }

    @Test
    void aSensorWithoutAControlUnitIsRefusedInOneSentence() {
        GuideAnswers answers = new GuideAnswers(
                "T",
                "",
                "12 V",
                "80 Ah",
                "Rear",
                "",
                "Rear",
                GuideAnswers.none(),
                List.of(List.of("Rear", "40", "2")),
                List.of(),
                List.of(List.of("Level", "", "Rear")));
        assertEquals(
                "sensors need a control unit that reads them; give it a place",
                assertThrows(IllegalArgumentException.class, answers::plan).getMessage());
    }

    @Test
    void aHarnessLaidOutIsAStepThatCanBeUndoneAndIsNotSavedYet() {
        OnEventThread.run(() -> press(guide(), 3));
        Document document = NewHarness.of(made.get(0));
        assertTrue(document.session().isChanged());
        document.session().undo();
        assertTrue(document.harness().components().all().isEmpty());
        assertFalse(document.session().isChanged());
    }

    @Test
    void anEmptyHarnessIsAnalysedAndSaysWhatToDoFirst() {
        Stage stage = new Stage();
        OnEventThread.run(() -> stage.view.book().get("new-empty").run());
        stage.awaitResults();
        assertTrue(OnEventThread.get(
                () -> named(stage.view, "first-step").orElseThrow().isVisible()));
        OnEventThread.run(() -> stage.view.filing().openExample("teaching"));
        OnEventThread.await(
                "the example",
                () -> !stage.desk().harness().orElseThrow().wires().all().isEmpty());
        assertFalse(OnEventThread.get(
                () -> named(stage.view, "first-step").orElseThrow().isVisible()));
    }

    @Test
    void theNoteOfAnEmptyBoardIsAsTallAsItsWidthAsksFromTheStart() {
        Stage stage = new Stage();
        OnEventThread.run(() -> {
            JPanel work = new JPanel(new MigLayout("insets 0, fillx"));
            FirstStepBanner note =
                    new FirstStepBanner(stage.desk(), stage.view.book().get("new-guided"));
            work.add(note, "growx, wmin 0");
            // as it was in a narrow window, before anything was opened
            note.setSize(240, 400);
            note.doLayout();
            int narrow = note.getPreferredSize().height;
            work.setSize(1200, 600);
            stage.view.book().get("new-empty").run();
            int first = note.getPreferredSize().height;
            work.doLayout();
            note.doLayout();
            assertEquals(note.getPreferredSize().height, first);
            assertTrue(first < narrow, first + " of " + narrow);
        });
    }

    @Test
    void everyFieldAndButtonOfTheGuideHasAName() {
        List<String> nameless = OnEventThread.get(() -> {
            List<String> found = new ArrayList<>();
            walk(guide(), found);
            return found;
        });
        assertEquals(List.of(), nameless);
    }

    private static void walk(Container around, List<String> nameless) {
        for (Component each : around.getComponents()) {
            boolean typed = each instanceof JTable
                    || each instanceof JButton button && button.getText() != null
                    || each instanceof JTextField
                    || each instanceof JComboBox<?>;
            if (typed && each.getAccessibleContext().getAccessibleName() == null) {
                nameless.add(each.getClass() + " " + each.getName());
            }
            if (each instanceof Container inner && !(each instanceof JComboBox<?>)) {
                walk(inner, nameless);
            }
        }
    }

    private static void press(GuidePane guide, int times) {
        for (int k = 0; k < times; k++) {
            guide.nextButton().doClick();
        }
    }

    private static Optional<Component> named(Container around, String name) {
        for (Component each : around.getComponents()) {
            if (name.equals(each.getName())) {
                return Optional.of(each);
            }
            if (each instanceof Container inner) {
                Optional<Component> found = named(inner, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    @Test
    void anEmptyHarnessBeginsWithItsBoardInFront() {
        Stage stage = new Stage().openExample("teaching");
        OnEventThread.run(() -> {
            stage.view.viewTabs().showStudy("returns");
            stage.view.book().get("new-empty").run();
        });
        assertSame(
                stage.view.layoutPane(),
                OnEventThread.get(() -> stage.view.viewTabs().getSelectedComponent()));
    }
}
