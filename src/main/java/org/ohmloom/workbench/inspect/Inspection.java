package org.ohmloom.workbench.inspect;

import java.util.List;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.widget.Tone;

/**
 * What the inspector shows of one thing. Knows nothing of the screen.
 *
 * @param title    what it is called
 * @param subtitle what it is
 * @param sections what there is to know, most important first
 */
public record Inspection(String title, String subtitle, List<Section> sections) {

    public Inspection {
        sections = List.copyOf(sections);
    }

    /** A part of an inspection. */
    sealed interface Section permits Facts, Grid, Reasons, Prose, Drawing {
        /** Its heading. */
        String title();
    }

    /**
     * Labels with values.
     *
     * @param title heading
     * @param facts the facts
     */
    record Facts(String title, List<Fact> facts) implements Section {
        Facts {
            facts = List.copyOf(facts);
        }
    }

    /**
     * One fact.
     *
     * @param label what it is
     * @param value its value with unit
     * @param tone  how it stands out
     */
    record Fact(String label, String value, Tone tone) {
        static Fact of(String label, String value) {
            return value.isEmpty() ? new Fact(label, "–", Tone.SOFT) : new Fact(label, value, Tone.PLAIN);
        }
    }

    /**
     * A small table; its first column holds texts, the others numbers.
     *
     * @param title heading
     * @param heads heads of the columns, with units
     * @param rows  cells by row
     */
    record Grid(String title, List<String> heads, List<List<String>> rows) implements Section {
        Grid {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Why a size was chosen.
     *
     * @param title   heading
     * @param reasons one for each requirement
     */
    record Reasons(String title, List<Reason> reasons) implements Section {
        Reasons {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * One requirement.
     *
     * @param title   what is required, and which size serves
     * @param text    the calculation
     * @param source  the table row it rests on
     * @param governs whether it decides
     */
    record Reason(String title, String text, String source, boolean governs) {}

    /**
     * A few sentences.
     *
     * @param title heading
     * @param text  the sentences
     * @param tone  how they stand out
     */
    record Prose(String title, String text, Tone tone) implements Section {}

    /**
     * A picture.
     *
     * @param title   heading
     * @param picture what is drawn, in the room there is
     */
    record Drawing(String title, Picture picture) implements Section {}
}
