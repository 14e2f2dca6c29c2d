package org.ohmloom.edit;

import java.util.List;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Adds elements or puts them in the place of those of their identity.
 *
 * @param label    what that does
 * @param elements the elements; they may refer to one another
 */
public record PutElements(Text label, List<Element> elements) implements Edit {

    public PutElements {
        elements = List.copyOf(elements);
    }

    /** Puts one element. */
    public static PutElements one(Text label, Element element) {
        return new PutElements(label, List.of(element));
    }

    @Override
    public Harness apply(Harness before) {
        return before.withAll(elements);
    }
}
