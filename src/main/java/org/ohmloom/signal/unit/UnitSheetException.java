package org.ohmloom.signal.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.WordedException;

/** Thrown when a text describes no control unit; its message is one line that names the place and what would be right. */
public final class UnitSheetException extends WordedException {

    private static final long serialVersionUID = 1L;

    private final transient Place place;
    private final transient Text problem;

    /**
     * A place in a sheet.
     *
     * @param sheet  its name; empty where there is none
     * @param line   number of the line; empty where the sheet as a whole is meant
     * @param within column or pin in that line; empty for the line as a whole
     */
    record Place(String sheet, Optional<Long> line, Optional<Text> within) {

        Place(String sheet) {
            this(sheet, Optional.empty(), Optional.empty());
        }

        Place(String sheet, long line) {
            this(sheet, Optional.of(line), Optional.empty());
        }

        Place(String sheet, long line, Text within) {
            this(sheet, Optional.of(line), Optional.of(within));
        }

        private Text words(Function<Long, Text> naming) {
            List<Text> parts = new ArrayList<>(List.of(Text.of(sheet)));
            line.ifPresent(each -> parts.add(naming.apply(each)));
            within.ifPresent(parts::add);
            return Text.joined(", ", parts);
        }
    }

    UnitSheetException(Place place, Text problem) {
        super(words(place, problem, line -> Refusals.text("line %s", line)), null);
        this.place = place;
        this.problem = problem;
    }

    private static Text words(Place place, Text problem, Function<Long, Text> naming) {
        return place.sheet().isEmpty() ? problem : Text.joined(": ", List.of(place.words(naming), problem));
    }

    /** What it says where lines are called otherwise than by their numbers in the text. */
    public Text words(Function<Long, Text> naming) {
        return words(place, problem, naming);
    }
}
