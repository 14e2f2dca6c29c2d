package org.ohmloom.edit;

import java.util.List;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Several edits as one step.
 *
 * @param label what they do together
 * @param edits applied in order
 */
public record Compound(Text label, List<Edit> edits) implements Edit {

    public Compound {
        edits = List.copyOf(edits);
    }

    @Override
    public Harness apply(Harness before) {
        Harness harness = before;
        for (Edit edit : edits) {
            harness = edit.apply(harness);
        }
        return harness;
    }
}
