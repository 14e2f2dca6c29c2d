package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Changes elements one by one, each as it is by then: edits of other fields made in the same step before this one stay.
 *
 * @param label    what that does
 * @param elements the elements; those no longer in the harness are passed over
 * @param change   makes the changed element; keeps its identity
 */
public record ChangeElements(Text label, List<ElementId> elements, UnaryOperator<Element> change) implements Edit {

    public ChangeElements {
        elements = List.copyOf(elements);
    }

    /**
     * Changes elements of one kind.
     *
     * @param ids    their identities; elements of another kind are passed over
     * @param kind   the kind
     * @param change makes the changed element; keeps its identity
     */
    public static <E extends Element> ChangeElements of(
            Text label, List<? extends ElementId> ids, Class<E> kind, UnaryOperator<E> change) {
        return new ChangeElements(
                label,
                List.copyOf(ids),
                element -> kind.isInstance(element) ? (Element) change.apply(kind.cast(element)) : element);
    }

    /**
     * Changes one element; tried on it as it is now, so that what does not fit is refused before anything changes.
     *
     * @throws IllegalArgumentException when the element refuses the change
     */
    @SuppressWarnings("unchecked") // an element is of its own class
    public static <E extends Element> ChangeElements tried(Text label, E element, UnaryOperator<E> change) {
        Objects.requireNonNull(change.apply(element), "changed element");
        return of(label, List.of(element.id()), (Class<E>) element.getClass(), change);
    }

    @Override
    public Harness apply(Harness before) {
        List<Element> changed = new ArrayList<>();
        for (ElementId id : elements) {
            before.element(id.value()).map(change).ifPresent(changed::add);
        }
        return before.withAll(changed);
    }
}
