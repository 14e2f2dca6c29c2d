package org.ohmloom.review;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.ohmloom.words.Text;

/**
 * A list of ids in a sentence that must stay short: as many as fit, by commas, {@code W1, W2 and 7 more}; at least the first.
 *
 * @param names          the ids
 * @param mostCharacters how long the list may be
 */
record Listing(List<String> names, int mostCharacters) implements Text {

    static Text of(Collection<?> things, int mostCharacters) {
        return new Listing(things.stream().map(Object::toString).toList(), mostCharacters);
    }

    @Override
    public String in(Locale language) {
        String whole = String.join(", ", names);
        if (whole.length() <= mostCharacters) {
            return whole;
        }
        String shortened = "";
        for (int shown = 1; shown < names.size(); shown++) {
            String candidate = RuleInfo.TEXTS.get(
                    language, "any.list", String.join(", ", names.subList(0, shown)), names.size() - shown);
            if (shown > 1 && candidate.length() > mostCharacters) {
                break;
            }
            shortened = candidate;
        }
        return shortened.isEmpty() ? whole : shortened;
    }

    @Override
    public String toString() {
        return english();
    }
}
