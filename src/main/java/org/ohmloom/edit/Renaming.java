package org.ohmloom.edit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;

/** Gives elements other identities and names, and whatever refers to them the same. */
public final class Renaming {

    private final Map<String, String> ids;
    private final Map<String, String> names;

    /**
     * A renaming.
     *
     * @param ids   new identity by the old one; those not named stay
     * @param names new name by the old identity
     */
    public Renaming(Map<String, String> ids, Map<String, String> names) {
        this.ids = Map.copyOf(ids);
        this.names = Map.copyOf(names);
    }

    /** The element under its new identity and name. */
    public Element of(Element element) {
        Element renamed = (Element) new OtherIdentities().rewritten(element).orElseThrow();
        String name = names.get(element.id().value());
        return name == null ? renamed : named(renamed, name);
    }

    /** The name of an element; empty for those that have none. */
    public static Optional<String> name(Element element) {
        int place = RecordShape.of((Record) element).place("name");
        return place < 0 || !(RecordShape.of((Record) element).read((Record) element, place) instanceof String text)
                ? Optional.empty()
                : Optional.of(text);
    }

    /** Identities an element mentions, its own among them. */
    public static Set<ElementId> mentioned(Element element) {
        Set<ElementId> found = new LinkedHashSet<>();
        collect(element, found);
        return found;
    }

    private static Element named(Element element, String name) {
        RecordShape shape = RecordShape.of((Record) element);
        int place = shape.place("name");
        return place < 0 ? element : (Element) shape.with((Record) element, place, name);
    }

    private static void collect(Object value, Set<ElementId> found) {
        if (value instanceof ElementId id) {
            found.add(id);
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(each -> collect(each, found));
        } else if (value instanceof List<?> list) {
            list.forEach(each -> collect(each, found));
        } else if (value instanceof SortedMap<?, ?> map) {
            map.forEach((key, each) -> {
                collect(key, found);
                collect(each, found);
            });
        } else if (value instanceof Record held) {
            RecordShape shape = RecordShape.of(held);
            for (int k = 0; k < shape.size(); k++) {
                collect(shape.read(held, k), found);
            }
        }
    }

    /** The same elements under other identities. */
    private final class OtherIdentities extends Rewriting {
        @Override
        Optional<Object> identity(ElementId id) {
            String other = ids.get(id.value());
            return Optional.of(other == null ? id : RecordShape.of((Record) id).made(other));
        }
    }
}
