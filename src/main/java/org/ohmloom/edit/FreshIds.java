package org.ohmloom.edit;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;

/** Hands out identities no element of a harness has. */
public final class FreshIds {

    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)");

    private final Set<String> taken = new HashSet<>();

    /** Identities free in a harness. */
    public FreshIds(Harness harness) {
        harness.elements().forEach(element -> taken.add(element.id().value()));
    }

    /** The first free of {@code W1}, {@code W2}, … after the highest that is taken; not handed out again. */
    public String next(String letters) {
        long highest = 0;
        for (String each : taken) {
            Matcher numbered = NUMBERED.matcher(each);
            if (numbered.matches()
                    && numbered.group(1).equals(letters)
                    && numbered.group(2).length() < 10) {
                highest = Math.max(highest, Long.parseLong(numbered.group(2)));
            }
        }
        String id = letters + (highest + 1);
        taken.add(id);
        return id;
    }

    /** What most identities of some elements begin with before their number; otherwise what is usual. */
    static String letters(Stream<? extends ElementId> ids, String usual) {
        Map<String, Integer> counts = new HashMap<>();
        ids.forEach(id -> {
            Matcher numbered = NUMBERED.matcher(id.value());
            if (numbered.matches() && !numbered.group(1).isEmpty()) {
                counts.merge(numbered.group(1), 1, Integer::sum);
            }
        });
        return counts.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(Map.Entry.<String, Integer>comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse(usual);
    }

    /** The identity itself when it is free, otherwise the next with its letters; not handed out again. */
    public String like(String id) {
        if (taken.add(id)) {
            return id;
        }
        Matcher numbered = NUMBERED.matcher(id);
        String letters = numbered.matches() ? numbered.group(1) : id;
        return next(letters.isEmpty() ? id + "-" : letters);
    }

    /** The next of a kind: numbered on from what most of its identities begin with, or with the usual letters. */
    public String next(Collection<? extends ElementId> ofItsKind, String usual) {
        return next(letters(ofItsKind.stream(), usual));
    }
}
