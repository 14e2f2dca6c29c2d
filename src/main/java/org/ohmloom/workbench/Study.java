package org.ohmloom.workbench;

import java.util.List;
import java.util.Optional;

/**
 * One kind of result that has a view of its own: a list, a chart of the row looked at, and how its numbers came about.
 *
 * @param <R> type of the rows
 */
interface Study<R> extends Sheet<R> {

    /** Stable kebab-case text. */
    String key();

    /** What it answers, in a sentence. */
    String about();

    /** What a person has to enter to get rows, said where there are none. */
    String nothing(Readout readout);

    /** The chart of a row, if there is one. */
    Optional<Picture> picture(Readout readout, R row);

    /** How the numbers of a row came about, one sentence or formula each. */
    List<String> steps(Readout readout, R row);
}
