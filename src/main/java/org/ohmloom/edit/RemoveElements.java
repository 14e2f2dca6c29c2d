package org.ohmloom.edit;

import java.util.List;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Takes elements out of the harness that nothing else refers to, such as load groups and sequences.
 *
 * @param label    what that does
 * @param elements the elements
 */
public record RemoveElements(Text label, List<ElementId> elements) implements Edit {

    public RemoveElements {
        elements = List.copyOf(elements);
    }

    @Override
    public Harness apply(Harness before) {
        return before.withoutAll(elements);
    }
}
