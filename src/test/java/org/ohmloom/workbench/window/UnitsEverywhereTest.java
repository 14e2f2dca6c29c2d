package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.model.Harness;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.units.ShownUnits.Decimals;
import org.ohmloom.units.ShownUnits.Lengths;
import org.ohmloom.units.ShownUnits.Sizes;
import org.ohmloom.units.ShownUnits.Temperatures;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.widget.CardPages;

/** Everything a person reads of an example follows the units at once, and comes back as it was. */
class UnitsEverywhereTest {

    private static final ShownUnits AMERICAN =
            new ShownUnits(Sizes.AWG, Lengths.FEET, Temperatures.FAHRENHEIT, Decimals.POINT);
    private static final ShownUnits COMMA =
            new ShownUnits(Sizes.AS_NAMED, Lengths.METRIC, Temperatures.CELSIUS, Decimals.COMMA);

    private static final Pattern METRIC =
            Pattern.compile("(?<![\\p{L}0-9.,-])[0-9]+(?:\\.[0-9]+)? (?:m|mm|°C)(?![\\p{L}0-9²³/])|\\((?:m|mm|°C)\\)");
    private static final Pattern POINT =
            Pattern.compile("(?<![\\p{L}0-9.,-])[0-9]+\\.[0-9]+ ?(?:V|A|W|mV|mΩ|m|mm|mm²|%|kg)\\b");

    @Test
    void everyViewFollowsTheUnitsAndTheHarnessStaysAsItIs() {
        Stage stage = new Stage().openExample("star-ground");
        Harness before = OnEventThread.get(() -> stage.desk().harness().orElseThrow());
        // Run over the range of their duties only once somebody looks.
        OnEventThread.run(() -> stage.view.viewTabs().showStudy("duty-range"));
        OnEventThread.await("duties", () -> stage.desk().dutySteps().isPresent());
        choose(stage, ShownUnits.USUAL);
        List<String> usual = texts(stage);
        assertTrue(
                count(usual, METRIC) > 40,
                "the example shows lengths and temperatures in many places: " + count(usual, METRIC));

        choose(stage, AMERICAN);
        assertEquals(Set.of(), left(texts(stage), METRIC));

        choose(stage, COMMA);
        assertEquals(Set.of(), left(texts(stage), POINT));

        choose(stage, ShownUnits.USUAL);
        assertEquals(new TreeSet<>(usual), new TreeSet<>(texts(stage)));
        assertSame(before, OnEventThread.get(() -> stage.desk().harness().orElseThrow()));
    }

    private static void choose(Stage stage, ShownUnits units) {
        OnEventThread.run(() -> {
            stage.desk().showIn(units);
            // Drawn on a thread of its own, and only while in front.
            stage.view.viewTabs().bring(stage.view.viewTabs().currents());
        });
        OnEventThread.await("currents", () -> !stage.view.viewTabs().currents().isBusy());
        OnEventThread.await("layout", () -> !stage.view.layoutPane().isBusy());
    }

    /** Names people gave to parts, sizes of coverings as makers name them, citations, and what a cell takes as an example. */
    private static final Pattern NAMES = Pattern.compile(
            "^Pressure sensor |contact [0-9.]+ mm|[0-9.]+ mm nominal|conduit [0-9.]+ mm|seal, [0-9.]+ to|\\brow (?:up to )?[0-9.]+|^Type ");

    private static long count(List<String> texts, Pattern pattern) {
        return texts.stream().filter(text -> pattern.matcher(text).find()).count();
    }

    private static Set<String> left(List<String> texts, Pattern pattern) {
        return texts.stream()
                .filter(text -> pattern.matcher(text).find())
                .filter(text -> !NAMES.matcher(text).find())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Everything written in the window, while each of some things is selected. */
    private static List<String> texts(Stage stage) {
        return OnEventThread.get(() -> {
            List<String> texts = new ArrayList<>();
            for (String id : List.of("", "W1", "SEG1", "F1", "G1")) {
                stage.desk().select(id.isEmpty() ? Selection.NONE : Selection.of(List.of(id)));
                walk(stage.view.inspector(), texts);
            }
            stage.desk().findings().forEach(each -> {
                stage.desk().select(Selection.of(each.finding()));
                walk(stage.view.inspector(), texts);
            });
            for (JComponent view : stage.view.viewTabs().views()) {
                stage.view.viewTabs().bring(view);
                walk(view, texts);
            }
            for (JComponent list : pages(stage.view.lists())) {
                walk(list, texts);
            }
            walk(stage.view.findings(), texts);
            walk(stage.view, texts);
            return texts;
        });
    }

    private static void walk(Component component, List<String> texts) {
        if (component instanceof JTabbedPane tabs) {
            for (int k = 0; k < tabs.getTabCount(); k++) {
                tabs.setSelectedIndex(k);
                walk(tabs.getComponentAt(k), texts);
            }
            return;
        }
        if (component instanceof CardPages) {
            return;
        }
        if (component instanceof JLabel label) {
            texts.add(String.valueOf(label.getText()));
        } else if (component instanceof AbstractButton button) {
            texts.add(String.valueOf(button.getText()));
        } else if (component instanceof JTextComponent text) {
            texts.add(String.valueOf(text.getText()));
        } else if (component instanceof JTable table) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                texts.add(
                        String.valueOf(table.getColumnModel().getColumn(column).getHeaderValue()));
                for (int row = 0; row < table.getRowCount(); row++) {
                    texts.add(String.valueOf(table.getValueAt(row, column)));
                }
            }
        } else if (component instanceof JList<?> list) {
            rows(list, texts);
        } else if (component instanceof LayoutCanvas canvas) {
            canvas.scene().map(Scene::items).orElse(List.of()).forEach(item -> drawn(item, texts));
        }
        if (component instanceof Container container) {
            for (Component inner : container.getComponents()) {
                walk(inner, texts);
            }
        }
    }

    private static List<JComponent> pages(Container container) {
        for (Component each : container.getComponents()) {
            if (each instanceof CardPages pages) {
                return pages.pages();
            }
            if (each instanceof Container inner && !pages(inner).isEmpty()) {
                return pages(inner);
            }
        }
        return List.of();
    }

    private static <E> void rows(JList<E> list, List<String> texts) {
        for (int k = 0; k < list.getModel().getSize(); k++) {
            walk(
                    list.getCellRenderer()
                            .getListCellRendererComponent(list, list.getModel().getElementAt(k), k, false, false),
                    texts);
        }
    }

    private static void drawn(Item item, List<String> texts) {
        item.description().ifPresent(texts::add);
        if (item.mark() instanceof Text text) {
            texts.add(text.text());
        }
    }
}
