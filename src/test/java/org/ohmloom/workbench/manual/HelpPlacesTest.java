package org.ohmloom.workbench.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.Test;
import org.ohmloom.manual.Manual;
import org.ohmloom.manual.Page;
import org.ohmloom.review.Rules;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.lists.ListsPane;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.workbench.widget.HelpPage;

/** F1 finds a page for everything: views, lists and rules are counted against the program's own. */
class HelpPlacesTest {

    private final Manual manual = Manual.bundled();
    private final Stage stage = new Stage();

    @Test
    void everyTabOfTheWindowHasAPageOfItsOwn() {
        List<String> pages = OnEventThread.get(() -> {
            List<String> found = new ArrayList<>();
            tabs(stage.view, found);
            return found;
        });
        assertEquals(
                List.of(),
                pages.stream().filter(page -> manual.find(page).isEmpty()).toList());
        assertEquals(pages.size(), pages.stream().distinct().count());
        assertTrue(pages.size() > 35, "tabs: " + pages.size());
    }

    @Test
    void everyListHasAPage() {
        assertEquals(
                List.of(),
                ListsPane.sheets(stage.desk()).keySet().stream()
                        .filter(key -> manual.find("lists/" + key).isEmpty())
                        .toList());
    }

    @Test
    void everyRuleHasAPage() {
        assertEquals(
                List.of(),
                Rules.ALL.stream()
                        .map(rule -> rule.info().id())
                        .filter(id -> manual.find("rules/" + id).isEmpty())
                        .toList());
    }

    @Test
    void whatHasNoPageTakesThatOfTheNearestRoundIt() {
        OnEventThread.run(() -> {
            assertEquals("lists/wires", ManualDesk.here(stage.view.lists().front()));
            assertEquals("views/layout", ManualDesk.here(stage.view.layoutPane().canvas()));
            assertEquals(Manual.HOME, ManualDesk.here(null));
        });
    }

    @Test
    void everyPageAComponentNamesIsThereAndEveryDialogPageIsNamedBySomething() throws IOException {
        Set<String> named = new TreeSet<>();
        Matcher names = Pattern.compile("\"((?:views|lists|dialogs)/[a-z-]+)\"").matcher(sources());
        while (names.find()) {
            named.add(names.group(1));
        }
        assertEquals(
                List.of(),
                named.stream().filter(page -> manual.find(page).isEmpty()).toList());
        assertEquals(
                List.of(),
                manual.pages().stream()
                        .filter(page ->
                                page.folder().equals("dialogs") && !page.id().endsWith(Manual.HOME))
                        .map(Page::id)
                        .filter(page -> !named.contains(page))
                        .toList());
    }

    @Test
    void aFindingLeadsToItsRuleAndAReasonToItsTable() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.desk().findings().stream().findFirst().ifPresent(standing -> stage.desk()
                    .select(Selection.of(standing.finding())));
            stage.desk().selection().finding().ifPresent(finding -> {
                assertEquals(
                        "rules/" + finding.rule(),
                        ManualDesk.here(stage.view.findings().findings()));
                assertEquals(
                        "rules/" + finding.rule(),
                        ManualDesk.here(stage.view.inspector().content()));
            });
            assertTrue(stage.desk().selection().finding().isPresent());
            stage.desk().select(Selection.of(List.of("W2")));
            List<String> pages = new ArrayList<>();
            reasons(stage.view.inspector().content(), pages);
            assertTrue(pages.contains("tables/iso-6722-1-conductors"), pages.toString());
            assertTrue(pages.contains("tables/fuse-time-current"), pages.toString());
        });
    }

    /** The pages of the texts of the inspector that take the keyboard. */
    private static void reasons(Container container, List<String> pages) {
        for (Component child : container.getComponents()) {
            if (child instanceof JPanel panel
                    && panel.isFocusable()
                    && panel.getAccessibleContext().getAccessibleName() != null) {
                pages.add(ManualDesk.here(panel));
            } else if (child instanceof Container inner) {
                reasons(inner, pages);
            }
        }
    }

    private static String sources() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/ohmloom/workbench"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file));
            }
        }
        return all.toString();
    }

    /** The page of every tab; the tabs of a view that only groups lists have theirs by the view. */
    private static void tabs(Container container, List<String> pages) {
        if (container instanceof CardPages cards
                && List.of("views", "list-pages").contains(cards.getName())) {
            cards.pages().forEach(page -> pages.add(HelpPage.of(page).orElse("no page for " + page.getName())));
        }
        if (container instanceof JTabbedPane tabs && "returns-lists".equals(tabs.getName())) {
            for (Component tab : tabs.getComponents()) {
                if (tabs.indexOfComponent(tab) >= 0) {
                    Optional<String> page = HelpPage.of(tab);
                    pages.add(page.orElse("no page for " + tabs.getTitleAt(tabs.indexOfComponent(tab))));
                }
            }
        }
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                tabs(inner, pages);
            }
        }
    }
}
