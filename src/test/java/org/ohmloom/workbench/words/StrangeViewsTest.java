package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.store.HarnessText;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.widget.CardPages;

/**
 * In the made-up language no English is left in the views whose numbers come with sentences from the floors below: neither in
 * cells and tips nor in how the numbers of a row came about. Words of the tables' rows count as quoted, as citations name them.
 */
@ExtendWith(InStrangeLanguage.class)
class StrangeViewsTest {

    /** Names of keys, and what identifies crimps and checks of cables in the harness file. */
    private static final String AS_THEY_ARE = " ctrl shift terminal stud screw cores twist ";

    /** Rows of a list that are chosen in turn. */
    private static final int MOST_ROWS = 12;

    private Stage stage;

    @BeforeEach
    void strange() {
        stage = new Stage();
    }

    @ParameterizedTest
    @ValueSource(strings = {"rescue-pickup", "faults"})
    void everyViewIsStrange(String example) throws IOException {
        stage.openExample(example);
        PlainWords plain = new PlainWords(
                HarnessText.write(stage.desk().harness().orElseThrow()) + cited() + sources() + AS_THEY_ARE);
        Set<String> left = new TreeSet<>();
        CardPages views = OnEventThread.get(() -> ComponentTree.find(stage.view, "views", CardPages.class));
        for (JComponent view : OnEventThread.get(views::pages)) {
            OnEventThread.run(() -> views.bring(view));
            List<JTabbedPane> inside = all(view, JTabbedPane.class);
            for (JTabbedPane tabs : inside) {
                for (int k = 0; k < tabs.getTabCount(); k++) {
                    int at = k;
                    OnEventThread.run(() -> tabs.setSelectedIndex(at));
                    read((JComponent) tabs.getComponentAt(at), plain, left);
                }
            }
            if (inside.isEmpty()) {
                read(view, plain, left);
            }
        }
        assertEquals(Set.of(), left, String.join("\n", left));
    }

    private static void read(JComponent view, PlainWords plain, Set<String> left) {
        OnEventThread.run(() -> {
            note(view, plain, left);
            for (JTable table : ComponentTree.all(view).stream()
                    .filter(JTable.class::isInstance)
                    .map(JTable.class::cast)
                    .toList()) {
                for (int row = 0; row < Math.min(MOST_ROWS, table.getRowCount()); row++) {
                    table.setRowSelectionInterval(row, row);
                    note(view, plain, left);
                }
            }
        });
    }

    private static void note(JComponent view, PlainWords plain, Set<String> left) {
        for (String line : ShownTexts.in(view)) {
            Set<String> words = plain.in(line);
            if (!words.isEmpty()) {
                left.add(view.getName() + ": " + words + " in " + line);
            }
        }
    }

    private static <T extends Component> List<T> all(Container root, Class<T> kind) {
        return OnEventThread.get(() -> ComponentTree.all(root).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList());
    }

    /** Where the parts of a sensor's error come from. */
    private String sources() {
        StringBuilder all = new StringBuilder();
        stage.desk().analysis().orElseThrow().evidence().returns().sensors().stream()
                .flatMap(budget -> budget.known().stream())
                .forEach(part -> all.append(' ').append(part.source()));
        return all.toString();
    }

    /** All that a citation may name. */
    static String cited() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> tables = Files.list(Path.of("wire-tables"))) {
            for (Path table :
                    tables.filter(each -> each.toString().endsWith(".csv")).toList()) {
                all.append(Files.readString(table));
            }
        }
        return all.toString();
    }
}
