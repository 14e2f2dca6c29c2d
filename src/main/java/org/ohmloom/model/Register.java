package org.ohmloom.model;

import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.words.UnfitException;

/**
 * An unmodifiable collection of one kind of element in the order of their identities.
 * <p>Changing one element makes a new register that shares every other element. Equal when the elements are equal.
 *
 * @param <I> type of the identities
 * @param <E> type of the elements
 */
public final class Register<I extends ElementId, E extends Element> {

    private final SortedMap<I, E> byId;

    private Register(SortedMap<I, E> byId) {
        this.byId = Collections.unmodifiableSortedMap(byId);
    }

    /** A register without elements. */
    public static <I extends ElementId, E extends Element> Register<I, E> empty() {
        return new Register<>(new TreeMap<>());
    }

    /**
     * A register of the given elements.
     *
     * @throws IllegalArgumentException when two have one identity
     */
    public static <I extends ElementId, E extends Element> Register<I, E> of(Collection<? extends E> elements) {
        SortedMap<I, E> map = new TreeMap<>();
        for (E element : elements) {
            if (map.put(Register.<I, E>idOf(element), element) != null) {
                throw new UnfitException("two elements have the id '%s'", element.id());
            }
        }
        return new Register<>(map);
    }

    /** The elements in the order of their identities. */
    public Collection<E> all() {
        return byId.values();
    }

    /** The identities in order. */
    public Set<I> ids() {
        return byId.keySet();
    }

    /** The element of that identity, if there is one. */
    public Optional<E> find(I id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The element of that identity.
     *
     * @throws IllegalArgumentException when there is none
     */
    public E get(I id) {
        return find(id).orElseThrow(() -> new UnfitException("no element has the id '%s'", id));
    }

    /** Whether an element has that identity. */
    public boolean has(I id) {
        return byId.containsKey(id);
    }

    /** Count of elements. */
    public int size() {
        return byId.size();
    }

    /** Whether there is no element. */
    public boolean isEmpty() {
        return byId.isEmpty();
    }

    /** This register with the elements added, or put in the place of those of their identity. */
    Register<I, E> withAll(Collection<? extends E> elements) {
        SortedMap<I, E> map = new TreeMap<>(byId);
        boolean changed = false;
        for (E element : elements) {
            changed |= !element.equals(map.put(idOf(element), element));
        }
        return changed ? new Register<>(map) : this;
    }

    /** This register without the elements of those identities; identities of other kinds are passed over. */
    Register<I, E> without(Collection<? extends ElementId> ids) {
        if (ids.stream().noneMatch(byId::containsKey)) {
            return this;
        }
        SortedMap<I, E> map = new TreeMap<>(byId);
        map.keySet().removeIf(ids::contains);
        return new Register<>(map);
    }

    @SuppressWarnings("unchecked") // a register is only made with its elements' own type of identity
    private static <I extends ElementId, E extends Element> I idOf(E element) {
        return (I) element.id();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Register<?, ?> that && byId.equals(that.byId);
    }

    @Override
    public int hashCode() {
        return byId.hashCode();
    }

    @Override
    public String toString() {
        return byId.values().toString();
    }
}
