package org.ohmloom.workbench.canvas;

import java.util.ArrayList;
import java.util.List;

/** What a click selects. */
public final class Clicking {

    private Clicking() {}

    /**
     * What is selected after a click.
     *
     * @param before what was selected
     * @param here   what lies there, topmost first
     * @param adding whether it is added to what was selected, or taken from it
     */
    public static List<String> after(List<String> before, List<String> here, boolean adding) {
        if (adding) {
            return here.isEmpty() ? before : toggled(before, here.get(0));
        }
        return next(before, here);
    }

    /** The topmost, or the one below what is selected already. */
    static List<String> next(List<String> before, List<String> here) {
        if (here.isEmpty()) {
            return List.of();
        }
        int at = before.size() == 1 ? here.indexOf(before.get(0)) : -1;
        return List.of(here.get((at + 1) % here.size()));
    }

    private static List<String> toggled(List<String> before, String id) {
        List<String> changed = new ArrayList<>(before);
        if (!changed.remove(id)) {
            changed.add(0, id);
        }
        return changed;
    }
}
