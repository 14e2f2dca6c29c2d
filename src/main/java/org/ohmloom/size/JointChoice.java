package org.ohmloom.size;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * The sizes chosen together, what they cost and how little they could cost. All sums are over the wires to be made, those
 * in the vehicle left out.
 *
 * @param outcome         whose sizes are taken
 * @param told            how it came about, for people
 * @param isPrice         whether the price was made least; otherwise the mass of copper
 * @param enteredKg       copper with the sizes entered and, for wires without one, the size each needs by itself, kg
 * @param beforeKg        the same with wires that are too thin at the size each needs by itself, kg: the wire-by-wire answer
 * @param afterKg         copper with the choice, kg
 * @param before          what was made least before, kg or money
 * @param after           the same with the choice
 * @param lowerBound      no choice for the open wires costs less, kg or money, at the currents and temperatures of the
 *                        choice
 * @param continuousBound the same with sizes between the listed ones allowed
 * @param allOpenBoundKg  no choice of all sizes that are not locked costs less; empty when it is the same question
 * @param sizes           the size of every wire whose size was open
 * @param budgets         how each load spends its drop budget with the choice, in the state where least is left
 * @param unmet           budgets no choice of the open sizes keeps
 * @param steps           the rounds it took, one line each
 */
public record JointChoice(
        Outcome outcome,
        Text told,
        boolean isPrice,
        double enteredKg,
        double beforeKg,
        double afterKg,
        double before,
        double after,
        double lowerBound,
        double continuousBound,
        OptionalDouble allOpenBoundKg,
        SortedMap<WireId, Gauge> sizes,
        List<LoadBudget> budgets,
        List<String> unmet,
        List<Text> steps) {

    /** Whose sizes are taken. */
    public enum Outcome {
        /** No size is open: every wire has one that serves, or may not be changed. */
        NOTHING_OPEN,
        /** Those chosen together. */
        JOINT,
        /** Those each wire needs by itself: nothing chosen together costs less and was verified. */
        WIRE_BY_WIRE
    }

    /** Of a harness whose sizes nobody asked to choose together. */
    public static final JointChoice NOT_ASKED = new JointChoice(
            Outcome.NOTHING_OPEN,
            SizeTexts.text("joint.not-asked"),
            false,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            OptionalDouble.empty(),
            new TreeMap<>(),
            List.of(),
            List.of(),
            List.of());

    public JointChoice {
        sizes = Collections.unmodifiableSortedMap(new TreeMap<>(sizes));
        budgets = List.copyOf(budgets);
        unmet = List.copyOf(unmet);
        steps = List.copyOf(steps);
    }

    /** How it came about, in English. */
    public String sentence() {
        return told.english();
    }

    /** The most the choice can be above the least there is, as a share of its cost. */
    public double gapRatio() {
        return after > 0 ? Math.max(0, after - lowerBound) / after : 0;
    }

    /** Whether no choice costs less, but for rounding. */
    public boolean isProvenLeast() {
        return gapRatio() <= 1e-8;
    }
}
