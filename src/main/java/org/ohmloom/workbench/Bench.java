package org.ohmloom.workbench;

import java.util.function.Consumer;

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
record Bench(
        Desk desk,
        Filing filing,
        PreferenceStore preferences,
        LayoutPane layout,
        ListsPane lists,
        ViewTabs views,
        Consumer<Look> looks) {}
