package org.ohmloom.units;

import java.util.Arrays;
import java.util.List;

/**
 * One unit on the ladder of units in which values of a dimension are shown.
 *
 * @param unit the unit shown
 * @param from the least magnitude, in that unit, that is shown in it; smaller ones go to the next step down
 */
record DisplayStep(Unit unit, double from) {
    private static final double MINUTES_FROM = 10;
    private static final double HOURS_FROM = 2;

    /** The units in which a dimension is shown, largest first. Units of other systems are read but not shown. */
    static List<DisplayStep> ladder(Dimension dimension) {
        return switch (dimension) {
            case VOLTAGE -> steps(Unit.KILOVOLT, Unit.VOLT, Unit.MILLIVOLT, Unit.MICROVOLT);
            case CURRENT -> steps(Unit.KILOAMP, Unit.AMP, Unit.MILLIAMP, Unit.MICROAMP);
            case RESISTANCE -> steps(Unit.MEGAOHM, Unit.KILOOHM, Unit.OHM, Unit.MILLIOHM, Unit.MICROOHM);
            case RESISTANCE_PER_LENGTH -> steps(Unit.OHM_PER_METRE, Unit.MILLIOHM_PER_METRE);
            case POWER -> steps(Unit.KILOWATT, Unit.WATT, Unit.MILLIWATT);
            case ENERGY -> steps(Unit.KILOJOULE, Unit.JOULE, Unit.MILLIJOULE);
            case LENGTH -> steps(Unit.METRE, Unit.MILLIMETRE);
            case AREA -> steps(Unit.SQUARE_MILLIMETRE);
            case MASS -> steps(Unit.KILOGRAM, Unit.GRAM);
            case MASS_PER_LENGTH -> steps(Unit.KILOGRAM_PER_METRE, Unit.GRAM_PER_METRE);
            case FORCE -> steps(Unit.NEWTON);
            case TEMPERATURE -> steps(Unit.DEGREE_CELSIUS);
            case TIME -> List.of(
                    new DisplayStep(Unit.HOUR, HOURS_FROM),
                    new DisplayStep(Unit.MINUTE, MINUTES_FROM),
                    new DisplayStep(Unit.SECOND, 1),
                    new DisplayStep(Unit.MILLISECOND, 1),
                    new DisplayStep(Unit.MICROSECOND, 0));
            case FREQUENCY -> steps(Unit.MEGAHERTZ, Unit.KILOHERTZ, Unit.HERTZ);
            case INDUCTANCE -> steps(Unit.HENRY, Unit.MILLIHENRY, Unit.MICROHENRY);
            case CAPACITANCE -> steps(Unit.FARAD, Unit.MICROFARAD, Unit.NANOFARAD, Unit.PICOFARAD);
            case CHARGE -> steps(Unit.AMP_HOUR, Unit.MILLIAMP_HOUR);
            case DATA_RATE -> steps(Unit.MEGABIT_PER_SECOND, Unit.KILOBIT_PER_SECOND, Unit.BIT_PER_SECOND);
            case JOULE_INTEGRAL -> steps(Unit.AMP_SQUARED_SECOND);
            case RATIO -> steps(Unit.PERCENT);
        };
    }

    private static List<DisplayStep> steps(Unit... largestFirst) {
        Unit smallest = largestFirst[largestFirst.length - 1];
        return Arrays.stream(largestFirst)
                .map(unit -> new DisplayStep(unit, unit == smallest ? 0 : 1))
                .toList();
    }
}
