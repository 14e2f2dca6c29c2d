package org.ohmloom.ground.sensor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * The error of one sensor in one operating state. Of a switch or a pulse sensor it is the voltage of the level that comes nearest
 * to its threshold, and the allowed error is the distance of the undisturbed level from it.
 *
 * @param sensor       the sensor
 * @param unit         the control unit that reads it
 * @param pin          the pin it is read at
 * @param state        the operating state
 * @param quantityUnit unit of what it measures, as {@code bar}; {@code V} for a level
 * @param reading      the true value the errors are told for: where they are largest
 * @param known        errors of this state, which add with their signs
 * @param tolerances   independent tolerances, which add as root of the sum of squares
 * @param ripple       amplitude after the input's filter, in the quantity's unit; empty when the filter is not known
 * @param allowed      most error, in the quantity's unit
 * @param allowedFrom  where that limit comes from
 * @param span         highest less lowest value used, in the quantity's unit; 0 for a level
 * @param unusable     why the unit cannot use the signal at all, if it cannot
 */
public record SensorBudget(
        ComponentId sensor,
        ComponentId unit,
        String pin,
        StateId state,
        String quantityUnit,
        double reading,
        List<ErrorPart> known,
        List<ErrorPart> tolerances,
        OptionalDouble ripple,
        double allowed,
        Text allowedFrom,
        double span,
        Optional<Text> unusable) {

    /** Name of the part that other equipment makes on the sensor's return. */
    public static final String RETURN_OFFSET = "return offset";

    public SensorBudget {
        known = List.copyOf(known);
        tolerances = List.copyOf(tolerances);
    }

    /** A budget of a signal that can be used, its span not told. */
    public SensorBudget(
            ComponentId sensor,
            ComponentId unit,
            String pin,
            StateId state,
            String quantityUnit,
            double reading,
            List<ErrorPart> known,
            List<ErrorPart> tolerances,
            OptionalDouble ripple,
            double allowed,
            Text allowedFrom) {
        this(
                sensor,
                unit,
                pin,
                state,
                quantityUnit,
                reading,
                known,
                tolerances,
                ripple,
                allowed,
                allowedFrom,
                0,
                Optional.empty());
    }

    /**
     * One line of the budget.
     *
     * @param named  what makes it, as {@code return offset}
     * @param error  its error with sign, in the quantity's unit
     * @param worked the formula with its numbers
     * @param source document, edition, clause of the formula
     */
    public record ErrorPart(Text named, double error, Text worked, String source) {

        /** What makes it, in English. */
        public String name() {
            return named.english();
        }

        /** The formula with its numbers, in English. */
        public String formula() {
            return worked.english();
        }
    }

    /** Sum of the known errors, in the quantity's unit. */
    public double knownError() {
        return known.stream().mapToDouble(ErrorPart::error).sum();
    }

    /** Root of the sum of squares of the tolerances. */
    public double toleranceError() {
        return Math.sqrt(tolerances.stream()
                .mapToDouble(part -> part.error() * part.error())
                .sum());
    }

    /** The largest error to reckon with: known, tolerances and ripple together. */
    public double worstError() {
        return Math.abs(knownError()) + toleranceError() + ripple.orElse(0);
    }

    /** Whether it is more than allowed. */
    public boolean isOver() {
        return unusable.isPresent() || worstError() > allowed;
    }

    /** The largest of its parts. */
    public Optional<ErrorPart> largest() {
        return Stream.concat(known.stream(), tolerances.stream())
                .max(Comparator.comparingDouble(part -> Math.abs(part.error())));
    }
}
