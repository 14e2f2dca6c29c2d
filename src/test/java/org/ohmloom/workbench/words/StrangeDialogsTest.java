package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.Action;
import javax.swing.JDialog;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.ohmloom.review.Finding;
import org.ohmloom.store.HarnessText;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.export.PackDialog;
import org.ohmloom.workbench.findings.FindingsModel;
import org.ohmloom.workbench.window.WindowActions;
import org.ohmloom.workbench.window.WorkbenchWindow;

/** In the made-up language no English is left in the dialogs that commands open; skipped where there is no display. */
@ExtendWith(InStrangeLanguage.class)
class StrangeDialogsTest {

    /** Pages of the manual are read in English where a language has none; two show names of keys; a row comes at once. */
    private static final Set<String> LEFT_OUT =
            Set.of("help-here", "help-contents", "add-row", "settings", "show-keys");

    /** Names of keys, places of a numbering pattern, the folder a pack goes to. */
    private static final String AS_THEY_ARE = " ctrl shift letters " + System.getProperty("user.home");

    private Stage stage;
    private WorkbenchWindow window;

    @BeforeEach
    void openFaultsInAWindow() {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        stage = new Stage();
        window = OnEventThread.get(() -> {
            WorkbenchWindow made = new WorkbenchWindow(
                    stage.services(),
                    desk -> PackDialog.show(window, desk, stage.prompts, stage.preferences),
                    WindowActions.NONE,
                    () -> {});
            made.setSize(1440, 900);
            made.setVisible(true);
            made.view().filing().openExample("faults");
            return made;
        });
        OnEventThread.await("results", () -> window.view().desk().isWhole());
    }

    @AfterEach
    void closeIt() {
        if (window != null) {
            OnEventThread.run(window::dispose);
        }
    }

    @Test
    void everyDialogOfACommandIsStrange() throws IOException {
        Set<String> left = new TreeSet<>();
        Set<String> seen = new TreeSet<>();
        for (Command command : OnEventThread.get(() -> window.view().book().all())) {
            OnEventThread.run(() -> window.view().desk().select(Selection.of(List.of("W11"))));
            read(command, left, seen);
        }
        assertTrue(seen.size() > 5, seen::toString);
        assertEquals(Set.of(), left, String.join("\n", left));
    }

    @Test
    void whatAFixDoesAndWhyAFindingIsAcceptedIsStrange() throws IOException {
        Set<String> left = new TreeSet<>();
        Set<String> seen = new TreeSet<>();
        Set<String> rules = new TreeSet<>();
        JList<FindingsModel.Row> list = window.view().findings().findings();
        for (int at = 0; at < OnEventThread.get(() -> list.getModel().getSize()); at++) {
            int row = at;
            String rule = OnEventThread.get(() -> list.getModel()
                    .getElementAt(row)
                    .finding()
                    .map(Finding::rule)
                    .orElse(""));
            if (!rule.isEmpty() && rules.add(rule)) {
                OnEventThread.run(() -> list.setSelectedIndex(row));
                for (String id : List.of("preview-fix", "accept-finding")) {
                    read(window.view().book().get(id), left, seen);
                }
            }
        }
        assertEquals(Set.of("accept-finding", "preview-fix"), seen);
        assertEquals(Set.of(), left, String.join("\n", left));
    }

    /** Reads what a command opens and closes it again; a command that is not ready or opens nothing is left out. */
    private void read(Command command, Set<String> left, Set<String> seen) throws IOException {
        boolean asks = String.valueOf(command.getValue(Action.NAME)).contains("…");
        if (LEFT_OUT.contains(command.id()) || !asks || !OnEventThread.get(command::isEnabled)) {
            return;
        }
        PlainWords plain =
                new PlainWords(HarnessText.write(window.view().desk().harness().orElseThrow())
                        + StrangeViewsTest.cited()
                        + AS_THEY_ARE);
        Set<Window> before = Set.of(Window.getWindows());
        int askedBefore = stage.prompts.asked.size();
        EventQueue.invokeLater(() -> command.actionPerformed(null));
        OnEventThread.await(
                "what " + command.id() + " opens",
                () -> !opened(before).isEmpty() || stage.prompts.asked.size() > askedBefore);
        for (Window each : OnEventThread.get(() -> opened(before))) {
            OnEventThread.run(() -> {
                Set<String> lines = new TreeSet<>(ShownTexts.in(each));
                if (each instanceof JDialog dialog) {
                    lines.add(dialog.getTitle());
                }
                for (String line : lines) {
                    Set<String> words = plain.in(line);
                    if (!words.isEmpty()) {
                        left.add(command.id() + ": " + words + " in " + line);
                    }
                }
                each.dispose();
            });
            seen.add(command.id());
        }
    }

    private static List<Window> opened(Set<Window> before) {
        List<Window> opened = new ArrayList<>(Arrays.asList(Window.getWindows()));
        opened.removeIf(each -> before.contains(each) || !each.isShowing());
        return opened;
    }
}
