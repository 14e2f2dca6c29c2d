package org.ohmloom.workbench.sheet;

import java.util.List;
import java.util.function.Function;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;

/**
 * Something that can be added to a list.
 *
 * @param words what it is, as a menu shows it: "Splice"
 * @param make  makes the edit that adds one
 */
public record Adding(String words, Function<Harness, Made> make) {

    /**
     * What is added.
     *
     * @param edit the edit that adds it
     * @param ids  ids of what is new, the leading one first
     */
    public record Made(Edit edit, List<String> ids) {
        public Made {
            ids = List.copyOf(ids);
        }
    }
}
