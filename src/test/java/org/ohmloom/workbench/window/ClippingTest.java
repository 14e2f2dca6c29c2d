package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.ohmloom.Campaign;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Appearance;
import org.ohmloom.workbench.settings.Personal;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.words.PseudoLanguage;

/**
 * In a real window of 1280 by 800 units, nothing that is written in any view, list or dialog is cut: at 100, 150 and 200 %, in
 * English and in the made-up language that is 40 % longer. Skipped where there is no display.
 */
class ClippingTest {

    private static final int ROUNDS_OF_LAYOUT = 4;

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
            "show-log");

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
        List<Locale> languages = List.of(Locale.ENGLISH, PseudoLanguage.LOCALE);
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
        settle();
        cut.addAll(cut("window", window));
        for (CardPages pages : OnEventThread.get(() -> all(window, CardPages.class))) {
            for (JComponent page : OnEventThread.get(pages::pages)) {
                OnEventThread.run(() -> pages.bring(page));
                settle();
                cut.addAll(cut(pages.getName() + " " + page.getName(), window));
            }
        }
        for (JTabbedPane tabs : OnEventThread.get(() -> all(window, JTabbedPane.class))) {
            int count = OnEventThread.get(tabs::getTabCount);
            for (int k = 0; k < count; k++) {
                int tab = k;
                OnEventThread.run(() -> tabs.setSelectedIndex(tab));
                settle();
                cut.addAll(cut(tabs.getName() + " " + OnEventThread.get(() -> tabs.getTitleAt(tab)), window));
            }
        }
        OnEventThread.run(() -> {
            window.view().desk().select(Selection.of(List.of("W1")));
            window.view().desk().apply(new SetWireGauge(List.of(new WireId("W1")), Optional.of(Gauge.metric(6))));
        });
        for (String id : DIALOGS) {
            cut.addAll(dialog(id));
        }
        OnEventThread.run(window::dispose);
        return cut;
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

    private static List<String> cut(String where, Window of) {
        // texts take their lines when they have their width, and what is around them makes room then
        for (int round = 0; round < ROUNDS_OF_LAYOUT; round++) {
            OnEventThread.run(of::validate);
        }
        return OnEventThread.get(() -> Clipping.in(of)).stream()
                .map(each -> where + " | " + each)
                .toList();
    }

    /** What is cut in the dialog of a command. */
    private List<String> dialog(String id) {
        Command command = OnEventThread.get(() -> window.view().book().get(id));
        if (!OnEventThread.get(command::isEnabled)) {
            return List.of("dialog | the command " + id + " is not ready");
        }
        AtomicReference<Dialog> opened = new AtomicReference<>();
        EventQueue.invokeLater(command::run);
        OnEventThread.await("dialog of " + id, () -> {
            for (Window each : Window.getWindows()) {
                if (each.isShowing() && each instanceof JDialog dialog && each.getOwner() == window) {
                    opened.set(dialog);
                    return true;
                }
            }
            return false;
        });
        settle();
        List<String> cut = cut("dialog " + id, opened.get());
        OnEventThread.run(() -> opened.get().dispose());
        settle();
        return cut;
    }

    /** Lets everything that is under way on the event thread come to its end. */
    private static void settle() {
        for (int k = 0; k < 3; k++) {
            OnEventThread.run(() -> {});
        }
    }
}
