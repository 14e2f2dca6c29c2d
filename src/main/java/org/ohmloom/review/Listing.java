package org.ohmloom.review;

import java.util.Collection;
import java.util.List;

/** Lists ids in a sentence that must stay short. */
final class Listing {

    private Listing() {}

    /** As many as fit, by commas: {@code W1, W2 and 7 more}; at least the first. */
    static String of(Collection<?> things, int mostCharacters) {
        List<String> names = things.stream().map(Object::toString).toList();
        String whole = String.join(", ", names);
        if (whole.length() <= mostCharacters) {
            return whole;
        }
        String shortened = "";
        for (int shown = 1; shown < names.size(); shown++) {
            String candidate = String.join(", ", names.subList(0, shown)) + " and " + (names.size() - shown) + " more";
            if (shown > 1 && candidate.length() > mostCharacters) {
                break;
            }
            shortened = candidate;
        }
        return shortened.isEmpty() ? whole : shortened;
    }
}
