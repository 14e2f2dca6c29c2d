package org.ohmloom.workbench.study;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.ElementSheet;

/**
 * One kind of result that has a view of its own: a list, a chart of the row looked at, and how its numbers came about.
 *
 * @param <R> type of the rows
 */
public interface Study<R> extends ElementSheet<R> {

    /** Stable kebab-case text. */
    String key();

    /** What it answers, in a sentence. */
    String about();

    /** Called before it is shown, for what is only computed when somebody looks. */
    default void prepare(Desk desk) {}

    /** The studies its rows come from. */
    default Set<StudyPart> needs() {
        return Set.of();
    }

    /** The numbers it shows now, maybe those of an earlier harness; empty without a document. */
    default Optional<Readout> reading(Desk desk) {
        return Readout.of(desk).map(now -> now.having(needs()));
    }

    /** Whether its numbers are not those of the harness as it is. */
    default boolean isOld(Desk desk) {
        return !desk.isCurrent() || !desk.results().has(needs());
    }

    /** What a person has to enter to get rows, said where there are none. */
    String nothing(Readout readout);

    /** The element whose row tells about another one that has no row itself, such as the fuse of a wire. */
    default Optional<ElementId> lead(Readout readout, String selected) {
        return Optional.empty();
    }

    /** Elements that lie on the way of a row, such as the members of a loop; shown with it on the layout. */
    default List<ElementId> path(Readout readout, R row) {
        return List.of();
    }

    /** Share of the room that the list gets at first; the chart gets the rest. */
    default double listShare() {
        return 0.5;
    }

    /** Whether its charts show what is selected. */
    default boolean marksSelection() {
        return false;
    }

    /**
     * The chart of a row, if there is one.
     *
     * @param selected what is selected, if anything; it may be what led to the row
     */
    Optional<Picture> picture(Readout readout, R row, Optional<String> selected);

    /** How the numbers of a row came about, one sentence or formula each. */
    List<String> steps(Readout readout, R row);
}
