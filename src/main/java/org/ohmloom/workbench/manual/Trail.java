package org.ohmloom.workbench.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pages gone through: back and forward. */
final class Trail {

    private final List<String> pages = new ArrayList<>();
    private int at = -1;

    /** Goes on to a page; what lay ahead is forgotten. The page one is on already changes nothing. */
    void go(String page) {
        if (at >= 0 && pages.get(at).equals(page)) {
            return;
        }
        pages.subList(at + 1, pages.size()).clear();
        pages.add(page);
        at = pages.size() - 1;
    }

    boolean hasBack() {
        return at > 0;
    }

    boolean hasForward() {
        return at < pages.size() - 1;
    }

    /** Steps back or forward; empty where there is nothing. */
    Optional<String> step(int by) {
        int to = at + by;
        if (to < 0 || to >= pages.size()) {
            return Optional.empty();
        }
        at = to;
        return Optional.of(pages.get(at));
    }
}
