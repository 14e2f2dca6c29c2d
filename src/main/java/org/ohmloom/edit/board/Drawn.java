package org.ohmloom.edit.board;

import java.util.List;
import org.ohmloom.edit.Edit;

/**
 * What drawing something comes to: one edit, and what it makes.
 *
 * @param edit the edit
 * @param ids  ids of what is new, the leading one first
 */
public record Drawn(Edit edit, List<String> ids) {

    public Drawn {
        ids = List.copyOf(ids);
    }
}
