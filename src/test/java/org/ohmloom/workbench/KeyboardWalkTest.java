package org.ohmloom.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.ohmloom.Campaign;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.export.PackDialog;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.workbench.window.WindowActions;
import org.ohmloom.workbench.window.WindowPrompts;
import org.ohmloom.workbench.window.WorkbenchWindow;

/**
 * A real window without a mouse: every menu item, view, list and dialog is reached and left again by keys alone, and at every step
 * one can see and hear where the keyboard is. All of it in the long campaign, a sample by a fixed seed otherwise; skipped where
 * there is no display.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KeyboardWalkTest {

    private static final long SEED = 20_261_130;
    private static final int VIEWS = Campaign.FULL ? 99 : 1;
    private static final int LISTS = Campaign.FULL ? 99 : 2;
    private static final int DIALOGS = Campaign.FULL ? 99 : 2;
    private static final int MOST_STEPS = 60;
    private static final int MOST_STOPS = 200;

    /** Adds a row at once where a list takes one kind of row only. */
    private static final Set<String> NOT_DIALOGS = Set.of("add-row");

    /** Dialogs that are only read. */
    private static final Set<String> READ = Set.of("about", "show-log", "show-keys", "show-cautions");

    private final ScriptedPrompts prompts = new ScriptedPrompts();
    private Keyboard keys;
    private int menusOfFiles;
    private WorkbenchWindow window;

    @BeforeAll
    void openTeachingInAWindow() throws Exception {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        keys = new Keyboard();
        PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead());
        window = OnEventThread.get(() -> {
            Look.LIGHT.install();
            Services services = Workbench.services(preferences, prompts);
            WorkbenchWindow made = new WorkbenchWindow(
                    services,
                    desk -> PackDialog.show(window, desk, prompts, preferences),
                    WindowActions.NONE,
                    () -> {});
            made.setSize(1440, 900);
            made.setVisible(true);
            made.view().filing().openExample("teaching");
            return made;
        });
        OnEventThread.await("results", () -> desk().isWhole());
        OnEventThread.run(() -> {
            desk().select(Selection.of(List.of("W1")));
            desk().apply(new SetWireGauge(List.of(new WireId("W1")), Optional.of(Gauge.metric(6))));
        });
        OnEventThread.await("results of the edit", () -> desk().isWhole());
        OnEventThread.await("the window in front", window::isActive);
    }

    @AfterAll
    void closeTheWindow() {
        if (window != null) {
            OnEventThread.run(window::dispose);
        }
    }

    @BeforeEach
    void goToTheLayout() {
        keys.press(KeyEvent.VK_1, KeyEvent.VK_CONTROL);
        OnEventThread.await("the layout", () -> !window.view().layoutPane().isBusy());
    }

    @Test
    void everyMenuItemThatCanBeChosenIsReachedAndTheKeyboardComesBackToWhereItWas() {
        JMenuBar bar = OnEventThread.get(() -> window.view().menus());
        Component before = Keyboard.owner();
        Set<String> reached = new TreeSet<>();
        for (int menu = 0; menu < OnEventThread.get(bar::getMenuCount); menu++) {
            int at = menu;
            keys.press(OnEventThread.get(() -> bar.getMenu(at).getMnemonic()), KeyEvent.VK_ALT);
            walk(reached);
            for (int step = 0; step < 5 && !chosen().isEmpty(); step++) {
                keys.press(KeyEvent.VK_ESCAPE);
            }
            assertEquals(List.of(), chosen(), "Escape leaves the menus");
            assertEquals(before, Keyboard.owner(), "the keyboard comes back");
        }
        Set<String> wanted = OnEventThread.get(() -> IntStream.range(0, bar.getMenuCount())
                .mapToObj(bar::getMenu)
                .flatMap(menu -> items(menu).stream())
                .collect(Collectors.toCollection(TreeSet::new)));
        wanted.removeAll(reached);
        assertEquals(Set.of(), wanted);
        assertTrue(reached.size() > 60, reached.size() + " reached");
    }

    /** Down through the menu that is open, and through each menu in it. */
    private void walk(Set<String> reached) {
        int deep = 0;
        Set<String> here = new LinkedHashSet<>();
        for (int step = 0; step < MOST_STEPS; step++) {
            keys.press(KeyEvent.VK_DOWN);
            List<JMenuItem> path = chosen();
            if (path.isEmpty()) {
                continue;
            }
            if (deep == 0) {
                deep = path.size();
            }
            JMenuItem last = path.get(path.size() - 1);
            if (!here.add(text(last))) {
                return;
            }
            reached.add(text(last));
            if (last instanceof JMenu menu
                    && path.size() == deep
                    && !OnEventThread.get(() -> items(menu)).isEmpty()) {
                keys.press(KeyEvent.VK_RIGHT);
                OnEventThread.await(
                        "the menu " + text(menu), () -> wayToChosen().size() > path.size());
                inner(reached);
                for (int back = 0; back < 3 && chosen().size() > deep; back++) {
                    keys.press(KeyEvent.VK_LEFT);
                }
            }
        }
    }

    private void inner(Set<String> reached) {
        Set<String> here = new LinkedHashSet<>();
        for (int step = 0; step < MOST_STEPS; step++) {
            List<JMenuItem> path = chosen();
            if (path.isEmpty() || !here.add(text(path.get(path.size() - 1)))) {
                return;
            }
            reached.add(text(path.get(path.size() - 1)));
            keys.press(KeyEvent.VK_DOWN);
        }
    }

    private static String text(JMenuItem item) {
        return OnEventThread.get(item::getText);
    }

    private static List<String> items(JMenu menu) {
        List<String> found = new ArrayList<>();
        for (Component each : menu.getMenuComponents()) {
            if (each instanceof JMenuItem item && item.isEnabled()) {
                found.add(item.getText());
                if (item instanceof JMenu inner) {
                    found.addAll(items(inner));
                }
            }
        }
        return found;
    }

    /** The items that lead to the one chosen, without the menu of the bar. */
    private static List<JMenuItem> chosen() {
        return OnEventThread.get(KeyboardWalkTest::wayToChosen);
    }

    private static List<JMenuItem> wayToChosen() {
        return Arrays.stream(MenuSelectionManager.defaultManager().getSelectedPath())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .filter(item -> !(item instanceof JMenu menu && menu.isTopLevelMenu()))
                .toList();
    }

    @Test
    void tabGoesRoundEveryViewAndShowsWhereItIs() {
        CardPages pages = OnEventThread.get(() -> ComponentTree.find(window.view(), "views", CardPages.class));
        int count = OnEventThread.get(() -> pages.pages().size());
        Set<Integer> sample = sample(count, VIEWS);
        Set<String> wrong = new LinkedHashSet<>();
        Set<String> passed = new LinkedHashSet<>();
        for (int step = 0; step < count; step++) {
            JComponent page = OnEventThread.get(pages::front);
            passed.add(page.getName());
            OnEventThread.await("the view " + page.getName(), () -> inView(Keyboard.owner(), page));
            if (sample.contains(step)) {
                wrong.addAll(around(page));
            }
            keys.press(KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_CONTROL);
        }
        assertEquals(count, passed.size(), passed + " by Ctrl+Page Down");
        assertEquals("", String.join("\n", wrong));
    }

    private static boolean inView(Component owner, JComponent page) {
        return owner != null && page.isShowing() && SwingUtilities.isDescendingFrom(owner, page);
    }

    private Set<String> around(JComponent page) {
        Set<String> wrong = new LinkedHashSet<>();
        Set<AbstractButton> pressed = Collections.newSetFromMap(new IdentityHashMap<>());
        FocusWalk walk = new FocusWalk(keys, page.getName(), here -> {
            if (here instanceof AbstractButton button
                    && SwingUtilities.isDescendingFrom(here, page)
                    && OnEventThread.get(button::getText) != null
                    && OnEventThread.get(button::getText).endsWith("…")
                    && pressed.add(button)) {
                wrong.addAll(dialog(page.getName() + " " + button.getText(), () -> keys.press(KeyEvent.VK_SPACE)));
            }
        });
        wrong.addAll(walk.round(window).wrong());
        for (JTabbedPane tabs : tabs(page)) {
            int count = OnEventThread.get(tabs::getTabCount);
            int first = OnEventThread.get(tabs::getSelectedIndex);
            for (int k = 1; k < count; k++) {
                if (!tabTo(tabs)) {
                    wrong.add(page.getName() + ": no way to the tabs " + tabs.getName());
                    break;
                }
                int wanted = (first + k) % count;
                keys.press(KeyEvent.VK_RIGHT);
                if (OnEventThread.get(tabs::getSelectedIndex) != wanted) {
                    wrong.add(page.getName() + ": the right arrow does not choose tab " + wanted + " of "
                            + tabs.getName());
                } else if (Campaign.FULL || k == 1) {
                    String place = page.getName() + " " + OnEventThread.get(() -> tabs.getTitleAt(wanted));
                    wrong.addAll(
                            new FocusWalk(keys, place, here -> {}).round(window).wrong());
                }
            }
        }
        tabTo(page);
        return wrong;
    }

    private static List<JTabbedPane> tabs(JComponent page) {
        return OnEventThread.get(() -> ComponentTree.all(page).stream()
                .filter(each -> each instanceof JTabbedPane && each.isShowing())
                .map(JTabbedPane.class::cast)
                .toList());
    }

    /** Walks by Tab until a component, or something in it, has the keyboard; whether it came there. */
    private boolean tabTo(Component wanted) {
        for (int step = 0; step < MOST_STOPS; step++) {
            Component owner = Keyboard.owner();
            boolean there = wanted instanceof JTabbedPane
                    ? owner == wanted
                    : OnEventThread.get(() -> owner != null && SwingUtilities.isDescendingFrom(owner, wanted));
            if (there) {
                return true;
            }
            if (owner == null || FocusWalk.isLeftByTab(owner)) {
                keys.press(KeyEvent.VK_TAB);
            } else {
                keys.press(KeyEvent.VK_TAB, KeyEvent.VK_CONTROL);
            }
        }
        return false;
    }

    @Test
    void everyListIsReachedByItsNameAndItsRowsAreWalked() {
        CardPages lists = OnEventThread.get(() -> ComponentTree.find(window.view(), "list-pages", CardPages.class));
        JList<?> names = OnEventThread.get(() -> ComponentTree.find(window.view(), "lists", JList.class));
        int count = OnEventThread.get(() -> lists.pages().size());
        Set<Integer> sample = sample(count, LISTS);
        Set<String> wrong = new LinkedHashSet<>();
        for (int k : sample) {
            keys.press(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
            assertTrue(tabTo(names), () -> "no way to the names of the lists, at " + FocusWalk.told(Keyboard.owner()));
            keys.press(KeyEvent.VK_HOME);
            for (int step = 0; step < k; step++) {
                keys.press(KeyEvent.VK_DOWN);
            }
            JComponent page = OnEventThread.get(() -> lists.pages().get(k));
            OnEventThread.await("the list chosen by its name, " + page.getName(), () -> lists.front() == page);
            assertEquals(names, Keyboard.owner(), "choosing leaves the keyboard with the names");
            keys.press(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
            JTable table = OnEventThread.get(() -> window.view().lists().front());
            assertEquals(table, Keyboard.owner(), "the list has the keyboard");
            if (OnEventThread.get(table::getRowCount) > 1) {
                keys.press(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
                keys.press(KeyEvent.VK_DOWN);
                assertEquals(
                        1, OnEventThread.get(() -> table.getSelectionModel().getLeadSelectionIndex()));
            }
            if (Campaign.FULL || k == sample.iterator().next()) {
                wrong.addAll(new FocusWalk(keys, table.getName(), here -> {})
                        .round(window)
                        .wrong());
            }
        }
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void everyDialogIsOpenedByTheSearchForCommandsWalkedRoundAndLeftWithEscape() {
        List<String[]> commands = OnEventThread.get(() -> window.view().book().all().stream()
                .filter(command -> command.isEnabled() && !NOT_DIALOGS.contains(command.id()))
                .filter(command -> command.name().endsWith("…") || READ.contains(command.id()))
                .map(command -> new String[] {command.id(), command.name()})
                .toList());
        assertTrue(commands.size() > 12, commands.size() + " commands");
        Set<String> wrong = new LinkedHashSet<>();
        wrong.addAll(dialog("search", () -> keys.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT)));
        for (int k : sample(commands.size(), DIALOGS)) {
            String[] command = commands.get(k);
            wrong.addAll(dialog(command[0], () -> {
                keys.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
                OnEventThread.await("the search for commands", () -> !dialogs().isEmpty() && Keyboard.owner() != null);
                Dialog search = OnEventThread.get(KeyboardWalkTest::dialogs).get(0);
                keys.type(command[1].replace("…", ""));
                JList<?> found = OnEventThread.get(() -> ComponentTree.all(search).stream()
                        .filter(JList.class::isInstance)
                        .map(JList.class::cast)
                        .findFirst()
                        .orElseThrow());
                for (int step = 0; step < MOST_STEPS && !isChosen(found, command[0]); step++) {
                    keys.press(KeyEvent.VK_DOWN);
                }
                assertTrue(isChosen(found, command[0]), () -> command[0] + " is not found by its name");
                keys.press(KeyEvent.VK_ENTER);
                OnEventThread.await("the search closes for " + command[0], () -> !search.isShowing());
            }));
        }
        assertEquals("", String.join("\n", wrong));
    }

    private static boolean isChosen(JList<?> found, String id) {
        return OnEventThread.get(() -> found.getSelectedValue() instanceof Command command
                && command.id().equals(id)
                && command.isEnabled());
    }

    @Test
    void everyDividerOfTheWindowIsMovedByKeysAndGivesTheKeyboardBack() {
        DividerWalk walk = new DividerWalk(keys);
        for (int part = KeyEvent.VK_1; part <= KeyEvent.VK_5; part++) {
            keys.press(part, KeyEvent.VK_CONTROL);
            walk.from("Ctrl+" + (char) part);
        }
        keys.press(KeyEvent.VK_1, KeyEvent.VK_CONTROL);
        Component before = Keyboard.owner();
        keys.press(KeyEvent.VK_F6, KeyEvent.VK_SHIFT);
        keys.press(KeyEvent.VK_F6, KeyEvent.VK_SHIFT);
        keys.press(KeyEvent.VK_ESCAPE);
        assertEquals(before, Keyboard.owner(), "Esc goes back from the second divider at once");
        assertEquals("", String.join("\n", walk.wrong()));
        assertTrue(
                walk.moved().containsAll(List.of("split-lists", "split-side", "split-findings", "split-list-names")),
                walk.moved().toString());
    }

    @Test
    void theManualIsWalkedRoundAndLeftWithEscape() {
        Component before = Keyboard.owner();
        keys.press(KeyEvent.VK_F1);
        OnEventThread.await(
                "the manual", () -> manual().filter(Window::isActive).isPresent());
        Window manual = OnEventThread.get(KeyboardWalkTest::manual).orElseThrow();
        OnEventThread.await("the keyboard in the manual", () -> inWindow(Keyboard.owner(), manual));
        Set<String> wrong = new LinkedHashSet<>(
                new FocusWalk(keys, "manual", here -> {}).round(manual).wrong());
        DividerWalk divider = new DividerWalk(keys).from("manual");
        wrong.addAll(divider.wrong());
        assertEquals(Set.of("split-page"), divider.moved());
        keys.press(KeyEvent.VK_F6, KeyEvent.VK_SHIFT);
        JSplitPane split = OnEventThread.get(() -> ComponentTree.find(manual, "split-page", JSplitPane.class));
        keys.press(KeyEvent.VK_END);
        int most = OnEventThread.get(split::getDividerLocation);
        keys.press(KeyEvent.VK_HOME);
        assertTrue(OnEventThread.get(split::getDividerLocation) < most, "Home and End go as far as it goes");
        keys.press(KeyEvent.VK_ENTER);
        keys.press(KeyEvent.VK_ESCAPE);
        OnEventThread.await("the manual away", () -> !manual.isShowing());
        OnEventThread.await("the window in front", window::isActive);
        assertEquals("", String.join("\n", wrong));
        assertEquals(before, Keyboard.owner(), "the keyboard comes back");
    }

    private static Optional<Window> manual() {
        return Arrays.stream(Window.getWindows())
                .filter(each -> each.isShowing() && "manual".equals(each.getName()))
                .findFirst();
    }

    @Test
    void theStartScreenIsWalkedRound() {
        WorkbenchWindow start = OnEventThread.get(() -> {
            WorkbenchWindow made = new WorkbenchWindow(
                    Workbench.services(PreferenceStore.inMemory(Preferences.DEFAULT), prompts),
                    desk -> {},
                    WindowActions.NONE,
                    () -> {});
            made.setSize(1280, 800);
            made.setVisible(true);
            return made;
        });
        try {
            OnEventThread.await(
                    "the start screen in front", () -> start.isActive() && inWindow(Keyboard.owner(), start));
            FocusWalk walk = new FocusWalk(keys, "start screen", here -> {}).round(start);
            assertEquals("", String.join("\n", walk.wrong()));
            assertTrue(walk.stops() >= 5, walk.stops() + " stops");
        } finally {
            OnEventThread.run(start::dispose);
            OnEventThread.run(window::toFront);
            OnEventThread.await("the window in front", window::isActive);
        }
    }

    @Test
    void theChoosersOfFilesAreWalkedRoundAndLeftWithEscape() {
        // the chooser the program brings along; one of the system is the system's affair
        System.setProperty("flatlaf.useSystemFileChooser", "false");
        Optional<Path> folder = Optional.of(Path.of("examples").toAbsolutePath());
        WindowPrompts asking = new WindowPrompts(() -> window);
        Set<String> wrong = new LinkedHashSet<>();
        try {
            wrong.addAll(dialog(
                    "file to open", () -> EventQueue.invokeLater(() -> asking.fileToOpen(folder)), this::openItsMenu));
            wrong.addAll(dialog("file to save", () -> EventQueue.invokeLater(() -> asking.fileToSave(folder, "new"))));
            wrong.addAll(dialog("folder", () -> EventQueue.invokeLater(() -> asking.folderForPack(folder))));
        } finally {
            System.clearProperty("flatlaf.useSystemFileChooser");
        }
        assertEquals("", String.join("\n", wrong));
        assertEquals(1, menusOfFiles);
    }

    /** Opens and leaves the menu of a list of files, in which its tools stand too. */
    private void openItsMenu(Component here) {
        if (here instanceof JList<?>) {
            keys.press(KeyEvent.VK_F10, KeyEvent.VK_SHIFT);
            if (OnEventThread.get(KeyboardWalkTest::isPopup)) {
                menusOfFiles++;
                keys.press(KeyEvent.VK_ESCAPE);
            }
        }
    }

    private Set<String> dialog(String name, Runnable open) {
        return dialog(name, open, here -> {});
    }

    /** What is wrong with a dialog that something opens; one that only asks the prompts opens none. */
    private Set<String> dialog(String name, Runnable open, Consumer<Component> atEach) {
        Component before = Keyboard.owner();
        int asked = prompts.asked.size();
        Set<String> wrong = new LinkedHashSet<>();
        open.run();
        OnEventThread.await(
                "dialog of " + name,
                () -> prompts.asked.size() > asked
                        || isPopup()
                        || !dialogs().isEmpty() && dialogs().get(0).isActive());
        if (!OnEventThread.get(KeyboardWalkTest::dialogs).isEmpty()) {
            Dialog dialog = OnEventThread.get(KeyboardWalkTest::dialogs).get(0);
            OnEventThread.await("keyboard in " + name, () -> inWindow(Keyboard.owner(), dialog) && isSet(dialog));
            wrong.addAll(new FocusWalk(keys, "dialog of " + name, atEach)
                    .round(dialog)
                    .wrong());
        }
        keys.press(KeyEvent.VK_ESCAPE);
        if (OnEventThread.get(() -> dialogs().isEmpty() && !isPopup()) || left()) {
            OnEventThread.await(
                    "the keyboard in the window after " + name, () -> window.isActive() && Keyboard.owner() != null);
            if (Keyboard.owner() != before) {
                wrong.add(name + ": the keyboard was at " + FocusWalk.told(before) + " and is at "
                        + FocusWalk.told(Keyboard.owner()) + " after the dialog");
            }
        } else {
            wrong.add(name + ": Escape does not close the dialog");
            OnEventThread.run(() -> dialogs().forEach(Window::dispose));
        }
        return wrong;
    }

    /** Whether the sheets are there that the buttons over a preview show, if it has any. */
    private static boolean isSet(Dialog dialog) {
        return ComponentTree.all(dialog).stream()
                .filter(each -> "print-whole".equals(each.getName()))
                .allMatch(Component::isEnabled);
    }

    private static boolean left() {
        for (int step = 0; step < 50; step++) {
            Keyboard.settle();
            if (OnEventThread.get(() -> dialogs().isEmpty() && !isPopup())) {
                return true;
            }
        }
        return false;
    }

    private static boolean inWindow(Component owner, Window window) {
        return owner != null && SwingUtilities.isDescendingFrom(owner, window);
    }

    private static boolean isPopup() {
        MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
        return path.length > 0;
    }

    private static List<Dialog> dialogs() {
        return Arrays.stream(Window.getWindows())
                .filter(each -> each.isShowing() && each instanceof Dialog)
                .map(Dialog.class::cast)
                .toList();
    }

    /** So many of the numbers below a count, ascending. */
    private static Set<Integer> sample(int count, int many) {
        List<Integer> all = new ArrayList<>(IntStream.range(0, count).boxed().toList());
        Collections.shuffle(all, new Random(SEED));
        return new TreeSet<>(all.subList(0, Math.min(many, count)));
    }

    private Desk desk() {
        return window.view().desk();
    }
}
