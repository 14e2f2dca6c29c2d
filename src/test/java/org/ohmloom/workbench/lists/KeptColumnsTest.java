package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.words.PseudoLanguage;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.widget.Samples;

/** Which columns a list shows is kept from one start to the next, whatever language the next one is in. */
class KeptColumnsTest {

    private final Locale usual = Locale.getDefault(Locale.Category.DISPLAY);
    private final Stage stage = new Stage();

    @AfterEach
    void asItWas() {
        Locale.setDefault(Locale.Category.DISPLAY, usual);
    }

    private ListsPane started(Locale language) {
        Locale.setDefault(Locale.Category.DISPLAY, language);
        return OnEventThread.get(
                () -> new ListsPane(stage.desk(), new Samples(new ScenePainter(SceneFonts.load())), stage.preferences));
    }

    private static Map<String, List<String>> keys(Map<String, Sheet<?>> lists) {
        Map<String, List<String>> keys = new TreeMap<>();
        lists.forEach((list, sheet) ->
                keys.put(list, sheet.columns().stream().map(Column::key).toList()));
        return keys;
    }

    private static int width(SheetTable table, String key) {
        return table.getColumnModel().getColumn(place(table, key)).getPreferredWidth();
    }

    private static int place(SheetTable table, String key) {
        for (int k = 0; k < table.getColumnCount(); k++) {
            if (table.sheet().column(table.convertColumnIndexToModel(k)).key().equals(key)) {
                return k;
            }
        }
        throw new AssertionError("no column " + key);
    }

    @Test
    void everyColumnHasAKeyOfItsOwnThatIsTheSameInEveryLanguage() {
        Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
        Map<String, List<String>> english = keys(ListsPane.sheets(stage.desk()));
        Locale.setDefault(Locale.Category.DISPLAY, PseudoLanguage.LOCALE);
        assertEquals(english, keys(ListsPane.sheets(stage.desk())));
        english.forEach((list, keys) -> assertEquals(keys.size(), new HashSet<>(keys).size(), list + ": " + keys));
    }

    @Test
    void columnsChosenInOneLanguageAreThereInAnother() {
        ListsPane before = started(Locale.ENGLISH);
        OnEventThread.run(() -> {
            SheetTable table = before.front();
            table.shown().show("circuit", true);
            table.shown().show("wire.heat", false);
            table.moveColumn(place(table, "wire.colour"), 1);
            table.getColumnModel().getColumn(1).setPreferredWidth(217);
            table.getColumnModel().getColumn(1).setWidth(217);
            stage.preferences.change(
                    now -> now.withColumns("wires", table.shown().text()));
        });
        ListsPane after = started(PseudoLanguage.LOCALE);
        OnEventThread.run(() -> {
            SheetTable table = after.front();
            assertNotEquals("Colour", table.getColumnName(1), "another language");
            assertEquals(1, place(table, "wire.colour"));
            assertEquals(217, width(table, "wire.colour"));
            assertTrue(table.shown().isShown("circuit"));
            assertFalse(table.shown().isShown("wire.heat"));
        });
    }

    @Test
    void whatWasKeptByTitlesBeforeIsTakenUpAndWhatNobodyKnowsIsPassedOver() {
        stage.preferences.change(now -> now.withColumns("Wires", "Wire=50|Colour=217|Was once=90|-Heat"));
        ListsPane lists = started(Locale.ENGLISH);
        OnEventThread.run(() -> {
            SheetTable table = lists.front();
            assertEquals(1, place(table, "wire.colour"));
            assertEquals(217, width(table, "wire.colour"));
            assertFalse(table.shown().isShown("wire.heat"));
        });
    }

    @Test
    void theUsualColumnsComeBack() {
        ListsPane lists = started(Locale.ENGLISH);
        OnEventThread.run(() -> {
            SheetTable table = lists.front();
            String usually = table.shown().text();
            table.shown().show("circuit", true);
            table.shown().show("wire.heat", false);
            table.moveColumn(3, 1);
            table.shown().reset();
            assertEquals(usually.replaceAll("=\\d+", ""), table.shown().text().replaceAll("=\\d+", ""));
        });
    }
}
