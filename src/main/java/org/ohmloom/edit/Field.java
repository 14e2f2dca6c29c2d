package org.ohmloom.edit;

import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Unit;
import org.ohmloom.words.UnfitException;

/**
 * One field of elements that a person can read and type: the component of their record, or of a record in it, that a path
 * names. {@code device.forwardVolts} is a field of components whose device has a forward voltage, and of no others.
 *
 * @param path names of record components with dots between them
 * @param unit unit its numbers are shown and typed in; empty for texts and bare numbers
 */
public record Field(String path, Optional<Unit> unit) {

    /** A field of texts, choices, identities or bare numbers. */
    public static Field of(String path) {
        return new Field(path, Optional.empty());
    }

    /** A field of numbers in a unit. */
    public static Field of(String path, Unit unit) {
        return new Field(path, Optional.of(unit));
    }

    /** Where a path ends: the record it ends in, and the component there. */
    private record Leaf(Record holder, int place) {
        Object value() {
            return RecordShape.of(holder).read(holder, place);
        }

        Type type() {
            return RecordShape.of(holder).fullType(place);
        }
    }

    private List<String> steps() {
        return List.of(path.split("\\."));
    }

    private Optional<Leaf> leaf(Object root) {
        List<String> steps = steps();
        Object at = root;
        for (int k = 0; k < steps.size(); k++) {
            if (at instanceof Optional<?> optional) {
                at = optional.orElse(null);
            }
            if (!(at instanceof Record holder)) {
                return Optional.empty();
            }
            int place = RecordShape.of(holder).place(steps.get(k));
            if (place < 0) {
                return Optional.empty();
            }
            if (k == steps.size() - 1) {
                return Optional.of(new Leaf(holder, place));
            }
            at = RecordShape.of(holder).read(holder, place);
        }
        return Optional.empty();
    }

    /** Whether an element has this field. */
    public boolean suits(Element element) {
        return leaf(element).isPresent();
    }

    /** What stands in it, with every digit and as it can be typed again; empty where nothing does. */
    public String text(Element element) {
        return textIn(element);
    }

    /** The same of any record. */
    String textIn(Object root) {
        return leaf(root)
                .map(leaf -> FieldText.of(unit, name()).written(leaf.value()))
                .orElse("");
    }

    /** The number in it, in the unit of this field. */
    public OptionalDouble number(Element element) {
        return leaf(element)
                .map(leaf -> FieldText.of(unit, name()).number(leaf.value()))
                .orElse(OptionalDouble.empty());
    }

    private String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /**
     * The edit that puts what was typed into this field of elements.
     *
     * @param harness  the harness, to find what is named
     * @param what     what the field is, in words: "name"
     * @param elements the elements; each has this field
     * @throws IllegalArgumentException when the text is not what is needed; the message says what would be right
     */
    public Edit set(Harness harness, String what, List<? extends Element> elements, String typed) {
        List<ElementId> ids = elements.stream().map(Element::id).toList();
        elements.forEach(element -> with(element, parsed(harness, element, typed)));
        return new ChangeElements(
                Labels.text("set-of", what, Labels.subjects(ids, "things")),
                ids,
                element -> suits(element) ? with(element, parsed(harness, element, typed)) : element);
    }

    private Object parsed(Harness harness, Element element, String typed) {
        return parsed(harness, element, String.valueOf(element.id()), typed);
    }

    /** The value a text means in a record that people call something. */
    Object parsed(Harness harness, Object root, String called, String typed) {
        Leaf leaf = leaf(root).orElseThrow(() -> new UnfitException("%s has nothing of the kind", called));
        return FieldText.of(unit, name()).read(leaf.type(), typed, harness);
    }

    private Element with(Element element, Object value) {
        return (Element) withIn((Record) element, value);
    }

    /** Any record with another value in this field. */
    Object withIn(Record root, Object value) {
        return with(root, steps(), value);
    }

    private static Object with(Record holder, List<String> steps, Object value) {
        RecordShape shape = RecordShape.of(holder);
        int changed = shape.place(steps.get(0));
        Object now =
                steps.size() == 1 ? value : within(shape.read(holder, changed), steps.subList(1, steps.size()), value);
        return shape.with(holder, changed, now);
    }

    private static Object within(Object held, List<String> steps, Object value) {
        return held instanceof Optional<?> optional
                ? optional.map(inner -> with((Record) inner, steps, value))
                : with((Record) held, steps, value);
    }
}
