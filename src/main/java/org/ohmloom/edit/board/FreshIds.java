package org.ohmloom.edit.board;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ohmloom.edit.Renaming;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;

/**
 * Identities and names that a harness does not use yet, in the way it numbers already: after {@code X1} and {@code X7} a
 * connector is {@code X8}. None is given twice.
 */
final class FreshIds {

    private final Set<String> taken = new HashSet<>();
    private final Map<Class<?>, Set<String>> names = new HashMap<>();

    FreshIds(Harness harness) {
        harness.elements().forEach(element -> {
            taken.add(element.id().value());
            Renaming.name(element).ifPresent(name -> ofKind(element.getClass()).add(name));
        });
    }

    /** The next identity of a kind: numbered on from those it has, or with the usual letters. */
    String next(Collection<? extends ElementId> ofItsKind, String usual) {
        Map<String, Long> counts = ofItsKind.stream()
                .map(ElementId::value)
                .filter(id -> stem(id).length() < id.length())
                .collect(Collectors.groupingBy(FreshIds::stem, TreeMap::new, Collectors.counting()));
        String stem = counts.entrySet().stream()
                .filter(each -> !each.getKey().isEmpty())
                .max(Comparator.comparingLong(Map.Entry::getValue))
                .map(Map.Entry::getKey)
                .orElse(usual);
        return next(stem);
    }

    /** The letters with the number after the highest used with them. */
    String next(String stem) {
        long highest = 0;
        for (String id : taken) {
            if (id.startsWith(stem)) {
                highest = Math.max(highest, number(id.substring(stem.length())));
            }
        }
        String id = stem + (highest + 1);
        taken.add(id);
        return id;
    }

    /** The identity itself when it is free, otherwise the next with its letters. */
    String like(String id) {
        if (taken.add(id)) {
            return id;
        }
        String stem = stem(id);
        return next(stem.isEmpty() ? id + "-" : stem);
    }

    /** The name itself when nothing of its kind has it, otherwise with the next number. */
    String name(Class<?> kind, String wanted) {
        Set<String> used = ofKind(kind);
        String bare = wanted.replaceFirst(" \\d{1,9}$", "");
        String name = wanted;
        for (int number = 2; !used.add(name); number++) {
            name = bare + " " + number;
        }
        return name;
    }

    private Set<String> ofKind(Class<?> kind) {
        return names.computeIfAbsent(kind, each -> new HashSet<>());
    }

    private static String stem(String id) {
        return id.replaceFirst("\\d{1,9}$", "");
    }

    private static long number(String text) {
        return text.matches("\\d{1,9}") ? Long.parseLong(text) : 0;
    }
}
