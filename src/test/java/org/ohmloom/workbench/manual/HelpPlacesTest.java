package org.ohmloom.workbench.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.Test;
import org.ohmloom.manual.Manual;
import org.ohmloom.review.Rules;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.lists.ListsPane;
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

    /** The page of every tab; the tabs of a view that only groups lists have theirs by the view. */
    private static void tabs(Container container, List<String> pages) {
        if (container instanceof JTabbedPane tabs
                && List.of("views", "lists", "returns-lists").contains(tabs.getName())) {
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
