package org.ohmloom.workbench;

import java.awt.Point;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.ohmloom.store.RecoveryFolder;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.desk.SilentPrompts;
import org.ohmloom.workbench.export.PackDialog;
import org.ohmloom.workbench.recovery.Autosave;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.window.WindowActions;
import org.ohmloom.workbench.window.WindowPrompts;
import org.ohmloom.workbench.window.WorkbenchWindow;

/** The windows of the running program; the program ends with the last. Belongs to the event thread. */
final class OpenWindows {

    private static final int ASIDE_PIXELS = 28;

    private final Services services;
    private final Optional<Kept> kept;
    private final Runnable allClosed;
    private final Map<WorkbenchWindow, Optional<Autosave>> open = new LinkedHashMap<>();
    private int made;

    /**
     * Where what is edited is kept aside.
     *
     * @param folder the folder
     * @param writer runs the writing, one after the other
     */
    record Kept(RecoveryFolder folder, Executor writer) {}

    /**
     * No window yet.
     *
     * @param kept      where what is edited is kept aside; empty for nowhere
     * @param allClosed called once the last window is gone
     */
    OpenWindows(PreferenceStore preferences, Optional<Kept> kept, Runnable allClosed) {
        this.services = Workbench.services(preferences, new SilentPrompts());
        this.kept = kept;
        this.allClosed = allClosed;
    }

    /** A window more, not shown yet. */
    WorkbenchWindow make() {
        WorkbenchWindow[] window = new WorkbenchWindow[1];
        Prompts prompts = new WindowPrompts(() -> window[0]);
        WindowActions around = new WindowActions(
                () -> showAnother(window[0]),
                file -> showAnother(window[0]).view().filing().open(file),
                document -> share(window[0], document),
                () -> window[0].askToClose(gone -> {}),
                this::quit);
        window[0] = new WorkbenchWindow(
                services.asking(prompts),
                desk -> PackDialog.show(window[0], desk, prompts, services.preferences()),
                around,
                () -> closed(window[0]));
        made++;
        open.put(
                window[0],
                kept.map(place -> new Autosave(
                        window[0].view().desk(),
                        services.saves(),
                        place.folder(),
                        place.writer(),
                        Clock.systemUTC(),
                        made)));
        return window[0];
    }

    /** The windows there are, in the order they were opened. */
    List<WorkbenchWindow> all() {
        return List.copyOf(open.keySet());
    }

    private WorkbenchWindow showAnother(WorkbenchWindow beside) {
        WorkbenchWindow window = make();
        Point corner = beside.getLocation();
        window.setBounds(corner.x + ASIDE_PIXELS, corner.y + ASIDE_PIXELS, beside.getWidth(), beside.getHeight());
        window.view().placeDividers(beside.view().dividerPlaces());
        window.setVisible(true);
        return window;
    }

    private void share(WorkbenchWindow from, Document document) {
        showAnother(from).view().filing().share(document);
    }

    /** Closes every window after its questions, one after the other; stops at the first a person wants to keep. */
    private void quit() {
        quit(new ArrayDeque<>(open.keySet()));
    }

    private void quit(Deque<WorkbenchWindow> left) {
        if (!left.isEmpty()) {
            WorkbenchWindow window = left.remove();
            if (!open.containsKey(window)) {
                // It was closed while another one waited for a save.
                quit(left);
                return;
            }
            window.toFront();
            window.askToClose(gone -> {
                if (gone) {
                    quit(left);
                }
            });
        }
    }

    private void closed(WorkbenchWindow window) {
        Optional<Autosave> autosave = open.remove(window);
        autosave.ifPresent(Autosave::close);
        if (open.isEmpty()) {
            allClosed.run();
        }
    }
}
