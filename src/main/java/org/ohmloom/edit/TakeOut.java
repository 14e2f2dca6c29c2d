package org.ohmloom.edit;

import java.util.List;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Takes elements out of the harness with what cannot be without them. What referred to them is freed: the ends of wires become
 * loose, connectors no longer plug into anything.
 *
 * @param elements the elements; those not in the harness do not matter
 */
public record TakeOut(List<ElementId> elements) implements Edit {

    public TakeOut {
        elements = List.copyOf(elements);
    }

    @Override
    public Text label() {
        return Labels.text("take-out", Labels.subjects(elements, "things"));
    }

    @Override
    public Harness apply(Harness before) {
        return elements.stream().noneMatch(id -> before.element(id.value()).isPresent())
                ? before
                : Erasure.of(before, elements);
    }
}
