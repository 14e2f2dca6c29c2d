package org.ohmloom.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.NearestText;
import org.ohmloom.units.Texts;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Says that a required key is missing, and which unknown key of the object may have been meant for it. */
final class MissingKey {
    private MissingKey() {}

    static Text problem(String key, List<String> known, ObjectNode object) {
        List<String> unknown = new ArrayList<>();
        object.fieldNames().forEachRemaining(unknown::add);
        unknown.removeAll(known);
        Optional<String> meant = NearestText.to(key, unknown).filter(near -> alike(key, near));
        return meant.map(near ->
                        Refusals.text("the key '%s' is missing; did you mean it by %s?", key, Texts.quoted(near)))
                .orElseGet(() -> Refusals.text("the key '%s' is missing", key));
    }

    /** Whether the two share at least half their letters at the beginning or at the end. */
    private static boolean alike(String key, String other) {
        int shorter = Math.min(key.length(), other.length());
        int head = 0;
        while (head < shorter && key.charAt(head) == other.charAt(head)) {
            head++;
        }
        int tail = 0;
        while (tail < shorter - head
                && key.charAt(key.length() - 1 - tail) == other.charAt(other.length() - 1 - tail)) {
            tail++;
        }
        return 2 * (head + tail) >= Math.max(key.length(), other.length());
    }
}
