package org.ohmloom.ground.sensor;

import static org.ohmloom.units.Require.notBlank;

import java.util.Collection;
import java.util.List;
import org.ohmloom.words.Text;

/**
 * Something of the return paths that was not judged, and why.
 *
 * @param study    the study that did not judge it
 * @param reason   why not
 * @param words    what was not judged, and what would have to be entered, up to the subjects
 * @param subjects ids of the elements it is about, which end the sentence; none where it is about the harness as a whole
 */
public record Unjudged(Study study, Reason reason, Text words, List<String> subjects) {

    private static final int MOST_NAMED = 8;

    /** The studies of the return paths. */
    public enum Study {
        /** Loops of the return network. */
        LOOPS,
        /** Offsets and who makes them. */
        OFFSETS,
        /** Errors of sensors. */
        SENSORS,
        /** Coupling along bundles. */
        COUPLING,
        /** Returns opened in turn. */
        LOST_RETURNS
    }

    /** Why something was not judged. */
    public enum Reason {
        /** Something is not entered. */
        NOT_ENTERED,
        /** The harness does not have what it takes. */
        NOT_JOINED,
        /** It would take too long. */
        TOO_MUCH_WORK
    }

    public Unjudged {
        notBlank(words.english(), "what was not judged");
        subjects = List.copyOf(subjects);
    }

    /** About elements in their order. */
    public static Unjudged of(Study study, Reason reason, Text words, Collection<?> subjects) {
        return new Unjudged(
                study, reason, words, subjects.stream().map(Object::toString).toList());
    }

    /** The whole sentence; of many subjects the first {@value #MOST_NAMED} are named. */
    public Text told() {
        Text full = Text.of(".");
        if (subjects.isEmpty()) {
            return Text.joined("", List.of(words, full));
        }
        int more = subjects.size() - MOST_NAMED;
        Text named = Text.of(String.join(", ", subjects.subList(0, Math.min(MOST_NAMED, subjects.size()))));
        Text all = more > 0 ? ReadingTexts.text("unjudged.more", named, more) : named;
        return Text.joined("", List.of(words, Text.of(" "), all, full));
    }

    /** The whole sentence in English. */
    public String sentence() {
        return told().english();
    }
}
