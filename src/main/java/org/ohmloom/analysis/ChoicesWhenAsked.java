package org.ohmloom.analysis;

import java.util.AbstractMap;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;

/**
 * What each wire needs by itself, chosen when somebody first asks: the first numbers are shown before anybody does. The same as if
 * it had been chosen at once. Safe on any thread.
 */
final class ChoicesWhenAsked extends AbstractMap<WireId, ConductorChoice>
        implements SortedMap<WireId, ConductorChoice> {

    private final Supplier<SortedMap<WireId, ConductorChoice>> source;
    private Optional<SortedMap<WireId, ConductorChoice>> chosen = Optional.empty();

    ChoicesWhenAsked(Supplier<SortedMap<WireId, ConductorChoice>> source) {
        this.source = source;
    }

    private synchronized SortedMap<WireId, ConductorChoice> chosen() {
        if (chosen.isEmpty()) {
            chosen = Optional.of(source.get());
        }
        return chosen.get();
    }

    @Override
    public @Nullable ConductorChoice get(@Nullable Object wire) {
        return chosen().get(wire);
    }

    @Override
    public boolean containsKey(@Nullable Object wire) {
        return chosen().containsKey(wire);
    }

    @Override
    public Set<Entry<WireId, ConductorChoice>> entrySet() {
        return chosen().entrySet();
    }

    @Override
    public @Nullable Comparator<? super WireId> comparator() {
        return chosen().comparator();
    }

    @Override
    public SortedMap<WireId, ConductorChoice> subMap(WireId from, WireId to) {
        return chosen().subMap(from, to);
    }

    @Override
    public SortedMap<WireId, ConductorChoice> headMap(WireId to) {
        return chosen().headMap(to);
    }

    @Override
    public SortedMap<WireId, ConductorChoice> tailMap(WireId from) {
        return chosen().tailMap(from);
    }

    @Override
    public WireId firstKey() {
        return chosen().firstKey();
    }

    @Override
    public WireId lastKey() {
        return chosen().lastKey();
    }
}
