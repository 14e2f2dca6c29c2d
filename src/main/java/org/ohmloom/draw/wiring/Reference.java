package org.ohmloom.draw.wiring;

import java.util.List;

/**
 * A way shown shortened: where it comes from or goes to, and where it is whole.
 *
 * @param lines  what is written
 * @param onLeft whether it stands left of what it leads to
 */
record Reference(List<Remark> lines, boolean onLeft) {

    Reference {
        lines = List.copyOf(lines);
    }
}
