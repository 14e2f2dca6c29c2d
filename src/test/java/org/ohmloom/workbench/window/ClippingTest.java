package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.ohmloom.Campaign;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.PseudoLanguage;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Appearance;
import org.ohmloom.workbench.settings.Personal;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.widget.CardPages;

/**
 * In a real window of 1280 by 800 units, nothing that is written in any view, list or dialog is cut: at 100, 150 and 200 %, in
 * English and in the made-up language that is 40 % longer. Skipped where there is no display.
 */
class ClippingTest {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;

    /** Commands that open a dialog. */
    private static final List<String> DIALOGS = List.of(
            "settings",
            "new-guided",
            "find-replace",
            "rename-pattern",
            "change-list",
            "find-command",
            "show-keys",
            "show-cautions",
            "about",
            "show-log",
            "export-pack",
            "print");

    /** Commands that open one for a finding. */
    private static final List<String> OF_FINDINGS =
            List.of("preview-fix", "fix-kind", "try-remedies", "accept-finding");

    private final Locale usual = Locale.getDefault(Locale.Category.DISPLAY);
    private WorkbenchWindow window;

    @AfterEach
    void asItWas() {
        if (window != null) {
            OnEventThread.run(window::dispose);
        }
        Locale.setDefault(Locale.Category.DISPLAY, usual);
        OnEventThread.run(() -> Appearance.install(PreferenceStore.inMemory(Preferences.DEFAULT)));
    }

    @Test
    void nothingIsCutInAnyViewListOrDialog() {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        boolean full = Campaign.FULL;
        List<Integer> zooms = full ? List.of(100, 150, 200) : List.of(100);
        // the made-up language is the longer one
        List<Locale> languages = full ? List.of(Locale.ENGLISH, PseudoLanguage.LOCALE) : List.of(PseudoLanguage.LOCALE);
        Set<String> cut = new TreeSet<>();
        Set<String> seen = new HashSet<>();
        for (int zoom : zooms) {
            for (Locale language : languages) {
                look(zoom, language).forEach(each -> {
                    String what = zoom + " % " + language + " " + each.substring(each.indexOf(" | ") + 3);
                    if (seen.add(what.replaceFirst("at [0-9,]+ with ", ""))) {
                        cut.add(zoom + " % " + language + " " + each);
                    }
                });
            }
        }
        assertEquals(List.of(), List.copyOf(cut), cut.size() + " cut:\n" + String.join("\n", cut));
    }

    private List<String> look(int zoom, Locale language) {
        Locale.setDefault(Locale.Category.DISPLAY, language);
        PreferenceStore preferences = PreferenceStore.inMemory(
                Preferences.DEFAULT.withCautionsRead().withPersonal(Personal.DEFAULT.withZoomPercent(zoom)));
        List<String> cut = new ArrayList<>();
        window = OnEventThread.get(() -> {
            Appearance.install(preferences);
            WorkbenchWindow made = Workbench.window(preferences, () -> {});
            made.setSize(WIDTH * zoom / 100, HEIGHT * zoom / 100);
            made.setVisible(true);
            made.view().filing().openExample("teaching");
            return made;
        });
        OnEventThread.await("results", () -> window.view().desk().isWhole());
        DialogsOverWindow.settle();
        cut.addAll(DialogsOverWindow.cut("window", window));
        for (CardPages pages : OnEventThread.get(() -> all(window, CardPages.class))) {
            for (JComponent page : OnEventThread.get(pages::pages)) {
                OnEventThread.run(() -> pages.bring(page));
                DialogsOverWindow.settle();
                cut.addAll(DialogsOverWindow.cut(pages.getName() + " " + page.getName(), window));
            }
        }
        for (JTabbedPane tabs : OnEventThread.get(() -> all(window, JTabbedPane.class))) {
            int count = OnEventThread.get(tabs::getTabCount);
            for (int k = 0; k < count; k++) {
                int tab = k;
                OnEventThread.run(() -> tabs.setSelectedIndex(tab));
                DialogsOverWindow.settle();
                cut.addAll(DialogsOverWindow.cut(
                        tabs.getName() + " " + OnEventThread.get(() -> tabs.getTitleAt(tab)), window));
            }
        }
        OnEventThread.run(() -> {
            window.view().desk().select(Selection.of(List.of("W1")));
            window.view().desk().apply(new SetWireGauge(List.of(new WireId("W1")), Optional.of(Gauge.metric(6))));
        });
        DialogsOverWindow dialogs = new DialogsOverWindow(window);
        DIALOGS.forEach(dialogs::ofCommand);
        dialogs.ofCommand("open-manual");
        dialogs.opened("paste", this::pasteTwoNames);
        OnEventThread.run(
                () -> window.view().desk().document().orElseThrow().session().goTo(0));
        OnEventThread.run(() -> window.view().filing().openExample("faults"));
        OnEventThread.await("faults", () -> isThere("faults"));
        for (String id : OF_FINDINGS) {
            choose(id);
            dialogs.ofCommand(id);
        }
        cut.addAll(dialogs.cut());
        OnEventThread.run(window::dispose);
        return cut;
    }

    private boolean isThere(String name) {
        Desk desk = window.view().desk();
        return desk.isWhole()
                && desk.document().filter(open -> open.name().equals(name)).isPresent();
    }

    /** Pastes a block from a spreadsheet into the list of wires: two sizes, one of which is none. */
    private void pasteTwoNames() {
        window.view().book().get("focus-lists").run();
        SheetTable table = window.view().lists().front();
        table.changeSelection(0, table.getColumnModel().getColumnIndex(table.getColumnName(3)), false, false);
        table.getTransferHandler()
                .importData(new TransferHandler.TransferSupport(table, new StringSelection("10\nseven\n6")));
    }

    /** Selects the first finding that a command can do something about. */
    private void choose(String command) {
        OnEventThread.run(() -> {
            Desk desk = window.view().desk();
            for (Results.Standing standing : desk.findings()) {
                desk.select(Selection.of(standing.finding()));
                if (window.view().book().get(command).isEnabled()) {
                    return;
                }
            }
            throw new AssertionError("no finding for " + command);
        });
    }

    private static <T extends Component> List<T> all(Container container, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Component each : container.getComponents()) {
            if (kind.isInstance(each)) {
                found.add(kind.cast(each));
            }
            if (each instanceof Container inner) {
                found.addAll(all(inner, kind));
            }
        }
        return found;
    }
}
