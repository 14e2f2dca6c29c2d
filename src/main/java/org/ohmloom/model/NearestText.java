package org.ohmloom.model;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Finds the existing text a person most likely meant. */
public final class NearestText {

    private NearestText() {}

    /**
     * The candidate reached by the fewest inserted, deleted or changed letters, case ignored; ties go to natural order.
     * Levenshtein, Soviet Physics Doklady 10(8), 1966. O(letters of the text x letters of all candidates).
     */
    public static Optional<String> to(String text, Collection<String> candidates) {
        String wanted = text.toLowerCase(Locale.ROOT);
        return candidates.stream()
                .min(Comparator.comparingInt((String candidate) -> distance(wanted, candidate.toLowerCase(Locale.ROOT)))
                        .thenComparing(NaturalOrder.INSTANCE));
    }

    /** What is asked behind a refusal: {@code ; did you mean 'X1'?}, nothing where there is no candidate. */
    public static Text question(String text, Collection<String> candidates) {
        return to(text, candidates).map(NearestText::question).orElse(Text.NONE);
    }

    /** The same of the nearest candidate. */
    public static Text question(String nearest) {
        return Refusals.text("; did you mean '%s'?", nearest);
    }

    /** The same where there must be a candidate: that there is none is said too. */
    public static Text questionOrNone(String text, Collection<String> candidates) {
        return to(text, candidates).map(NearestText::question).orElseGet(() -> Refusals.text("; there is none yet"));
    }

    private static int distance(String left, String right) {
        int[] row = new int[right.length() + 1];
        for (int j = 0; j <= right.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= left.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= right.length(); j++) {
                int changed = diagonal + (left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[right.length()];
    }
}
