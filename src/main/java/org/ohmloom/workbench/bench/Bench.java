package org.ohmloom.workbench.bench;

import java.util.function.Consumer;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.lists.ListsPane;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;

/**
 * What commands work with.
 *
 * @param desk        document, results, selection
 * @param filing      opening and saving
 * @param preferences what the person has settled
 * @param layout      the layout
 * @param lists       the lists
 * @param views       layout and studies behind their tabs
 * @param looks       puts a look on the open window
 */
public record Bench(
        Desk desk,
        Filing filing,
        PreferenceStore preferences,
        LayoutPane layout,
        ListsPane lists,
        ViewTabs views,
        Consumer<Look> looks) {}
