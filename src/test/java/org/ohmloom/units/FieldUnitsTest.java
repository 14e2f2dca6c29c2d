package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.units.ShownUnits.Decimals;
import org.ohmloom.units.ShownUnits.Lengths;
import org.ohmloom.units.ShownUnits.Sizes;
import org.ohmloom.units.ShownUnits.Temperatures;

/** What a field is called and measured in, told by the ending of its name. */
@BesideOthers
class FieldUnitsTest {

    private static final ShownUnits AMERICAN =
            new ShownUnits(Sizes.AWG, Lengths.FEET, Temperatures.FAHRENHEIT, Decimals.POINT);

    @Test
    void theLongestEndingCounts() {
        assertEquals(Optional.of("2 Ah"), FieldUnits.text("capacityAmpHours", 2), "ampere-hours, not hours");
        assertEquals(Optional.of("0.02 V/K"), FieldUnits.text("slopeVoltsPerKelvin", 0.02), "not volts, not kelvin");
        assertEquals(Optional.of("3 h"), FieldUnits.text("runHours", 3));
        assertEquals("slope", FieldUnits.label("slopeVoltsPerKelvin"));
    }

    @Test
    void aQuantityComesInAUnitThatSuitsItsSize() {
        assertEquals(Optional.of("12 V"), FieldUnits.text("nominalVolts", 12));
        assertEquals(Optional.of("4 mΩ"), FieldUnits.text("jointOhms", 0.004));
        assertEquals(Optional.of("1.5 m"), FieldUnits.text("lengthMetres", 1.5));
        assertEquals(Optional.of("4.92 ft"), FieldUnits.text("lengthMetres", 1.5, AMERICAN), "1.5 / 0.3048 = 4.9213");
    }

    @Test
    void millimetresFollowTheUnitsShown() {
        assertEquals(Optional.of("25 mm"), FieldUnits.text("spacingMm", 25));
        assertEquals(Optional.of("1 in"), FieldUnits.text("spacingMm", 25.4, AMERICAN));
        assertEquals(Optional.of("900 rpm"), FieldUnits.text("idleRpm", 900, AMERICAN), "whatever the units");
    }

    @Test
    void aNameThatIsAUnitAloneIsCalledByWhatItMeasures() {
        assertEquals("voltage", FieldUnits.label("Volts"));
        assertEquals("voltage", FieldUnits.label("volts"));
        assertEquals("resistance", FieldUnits.label("ohms"));
        assertEquals("rpm", FieldUnits.label("rpm"), "nothing better to say");
        assertEquals(Optional.of("5 V"), FieldUnits.text("volts", 5));
    }

    @Test
    void aNameWithoutSuchAnEndingHasNoUnit() {
        assertEquals(Optional.empty(), FieldUnits.text("count", 4));
        assertEquals("count", FieldUnits.label("count"));
    }
}
