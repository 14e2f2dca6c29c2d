package org.ohmloom.graph;

import static org.ohmloom.units.Require.notBlank;

import org.ohmloom.model.ElementId;

/**
 * Something the network takes for granted because the harness does not say it.
 *
 * @param element the element it is about
 * @param text    what was taken, one sentence with its value and unit
 * @param source  where that comes from
 */
public record Assumption(ElementId element, String text, String source) {

    /** The source of a figure that rests on the habit of the trade alone. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    public Assumption {
        notBlank(text, "text of an assumption");
        notBlank(source, "source of an assumption");
    }
}
