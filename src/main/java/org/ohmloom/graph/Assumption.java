package org.ohmloom.graph;

import static org.ohmloom.units.Require.notBlank;

import org.ohmloom.model.ElementId;
import org.ohmloom.words.Text;

/**
 * Something the network takes for granted because the harness does not say it.
 *
 * @param element the element it is about
 * @param told    what was taken, one sentence with its value and unit, without a full stop
 * @param source  where that comes from
 */
public record Assumption(ElementId element, Text told, String source) {

    /** The source of a figure that rests on the habit of the trade alone. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    public Assumption {
        notBlank(source, "source of an assumption");
    }

    /** What was taken, in English, as a sentence. */
    public String text() {
        return told.english() + ".";
    }
}
