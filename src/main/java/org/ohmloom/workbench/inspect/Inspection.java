package org.ohmloom.workbench.inspect;

import java.util.List;
import org.ohmloom.units.ShownUnits;
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

    /** This inspection with the quantities in computed texts in the units a person reads; what was entered stays as it is. */
    Inspection in(ShownUnits units) {
        return new Inspection(
                title,
                units.label(subtitle),
                sections.stream().map(section -> section.in(units)).toList());
    }

    /** A part of an inspection. */
    sealed interface Section permits Facts, Grid, Reasons, Prose, Drawing {
        /** Its heading. */
        String title();

        /** This part in other units. */
        default Section in(ShownUnits units) {
            return this;
        }
    }

    /**
     * Labels with values.
     *
     * @param title   heading
     * @param facts   the facts
     * @param entered whether they are what a person entered, written in the units shown already
     */
    record Facts(String title, List<Fact> facts, boolean entered) implements Section {
        Facts {
            facts = List.copyOf(facts);
        }

        /** Facts the program found. */
        Facts(String title, List<Fact> facts) {
            this(title, facts, false);
        }

        /** What a person entered. */
        static Facts entered(String title, List<Fact> facts) {
            return new Facts(title, facts, true);
        }

        @Override
        public Section in(ShownUnits units) {
            return entered
                    ? this
                    : new Facts(
                            title,
                            facts.stream()
                                    .map(fact -> new Fact(
                                            units.text(fact.label()),
                                            units.text(fact.value()),
                                            fact.tone(),
                                            fact.about()))
                                    .toList());
        }
    }

    /**
     * One fact.
     *
     * @param label what it is
     * @param value its value with unit
     * @param tone  how it stands out
     * @param about what the pointer tells of it; empty for nothing
     */
    record Fact(String label, String value, Tone tone, String about) {
        Fact(String label, String value, Tone tone) {
            this(label, value, tone, "");
        }

        static Fact of(String label, String value) {
            return value.isEmpty() ? new Fact(label, "–", Tone.SOFT) : new Fact(label, value, Tone.PLAIN);
        }

        /** The same with what the pointer tells of it. */
        Fact about(String told) {
            return new Fact(label, value, tone, told);
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

        @Override
        public Section in(ShownUnits units) {
            return new Grid(
                    title,
                    heads,
                    rows.stream()
                            .map(row ->
                                    row.stream().map(cell -> cell(cell, units)).toList())
                            .toList());
        }

        /** Names stay, whatever digits are in them. */
        private static String cell(String cell, ShownUnits units) {
            return cell.matches("[-<>]*[0-9]+\\.[0-9]+")
                    ? units.signed(cell)
                    : cell.matches("[-<>]*[0-9.]+ \\S+") ? units.label(cell) : cell;
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

        @Override
        public Section in(ShownUnits units) {
            return new Reasons(
                    units.label(title),
                    reasons.stream()
                            .map(reason -> new Reason(
                                    units.text(reason.title()),
                                    units.text(reason.text()),
                                    reason.source(),
                                    reason.governs()))
                            .toList());
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
