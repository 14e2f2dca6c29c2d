package org.ohmloom.edit.board;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.ohmloom.edit.Renaming;
import org.ohmloom.model.Harness;

/** Hands out names nothing of the same kind in a harness has. */
final class FreshNames {

    private final Map<Class<?>, Set<String>> taken = new HashMap<>();

    FreshNames(Harness harness) {
        harness.elements().forEach(element -> Renaming.name(element)
                .ifPresent(name -> ofKind(element.getClass()).add(name)));
    }

    /** The name itself when nothing of its kind has it, otherwise with the next number; not handed out again. */
    String like(Class<?> kind, String wanted) {
        Set<String> used = ofKind(kind);
        String bare = wanted.replaceFirst(" \\d{1,9}$", "");
        String name = wanted;
        for (int number = 2; !used.add(name); number++) {
            name = bare + " " + number;
        }
        return name;
    }

    private Set<String> ofKind(Class<?> kind) {
        return taken.computeIfAbsent(kind, each -> new HashSet<>());
    }
}
