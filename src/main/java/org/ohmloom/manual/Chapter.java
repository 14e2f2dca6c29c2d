package org.ohmloom.manual;

import java.util.List;

/**
 * A page in the contents, with the pages below it.
 *
 * @param page  the page
 * @param below the pages it lists, in its order
 */
public record Chapter(Page page, List<Page> below) {

    public Chapter {
        below = List.copyOf(below);
    }
}
