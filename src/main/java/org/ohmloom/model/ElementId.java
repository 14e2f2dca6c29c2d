package org.ohmloom.model;

import static org.ohmloom.units.Require.that;

import java.util.regex.Pattern;
import org.ohmloom.units.Texts;

/**
 * Identity of one element of a harness. Unique across all kinds of element in one harness, so that a finding, a
 * selection or a file can name any of them by its text alone.
 */
public sealed interface ElementId extends Comparable<ElementId>
        permits AssemblyId,
                BreakoutId,
                BusId,
                CableId,
                ChassisBodyId,
                ComponentId,
                ConnectorId,
                ContactId,
                GroundPointId,
                LoadGroupId,
                NoteId,
                PartId,
                ReadingId,
                SegmentId,
                SequenceId,
                SpliceId,
                StateId,
                StrapId,
                WaiverId,
                WireId,
                ZoneId {

    /** Letters, digits, hyphen and underscore; starts with a letter or a digit. */
    Pattern FORM = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}_-]*");

    /** The text of this identity. */
    String value();

    /**
     * Refuses a text that cannot identify an element.
     *
     * @throws IllegalArgumentException when the text is not letters, digits, hyphens and underscores
     */
    static void check(String value) {
        that(
                FORM.matcher(value).matches(),
                "id %s must be letters, digits, '-' and '_' and start with a letter or digit",
                Texts.quoted(value));
    }

    /** Natural order: {@code W2} comes before {@code W10}. */
    @Override
    default int compareTo(ElementId other) {
        return NaturalOrder.INSTANCE.compare(value(), other.value());
    }
}
