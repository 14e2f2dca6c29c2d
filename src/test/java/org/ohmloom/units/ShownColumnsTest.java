package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.units.ShownUnits.Decimals;
import org.ohmloom.units.ShownUnits.Lengths;
import org.ohmloom.units.ShownUnits.Sizes;
import org.ohmloom.units.ShownUnits.Temperatures;

/** Columns and fields that state their unit once. 1 ft = 0.3048 m exactly (NIST SP 811, 2008, B.8); t/degF = 9/5 t/degC + 32. */
class ShownColumnsTest {

    private static final ShownUnits FEET =
            new ShownUnits(Sizes.METRIC, Lengths.FEET, Temperatures.CELSIUS, Decimals.POINT);
    private static final ShownUnits FAHRENHEIT =
            new ShownUnits(Sizes.METRIC, Lengths.METRIC, Temperatures.FAHRENHEIT, Decimals.POINT);
    private static final ShownUnits GAUGES =
            new ShownUnits(Sizes.AWG, Lengths.METRIC, Temperatures.CELSIUS, Decimals.POINT);

    @Test
    void onlyLengthsAndTemperaturesHaveAnotherUnit() {
        assertEquals(Optional.of(Unit.METRE), ShownUnits.convertible("m"));
        assertEquals(Optional.of(Unit.MILLIMETRE), ShownUnits.convertible("mm"));
        assertEquals(Optional.of(Unit.DEGREE_CELSIUS), ShownUnits.convertible("°C"));
        assertEquals(Optional.empty(), ShownUnits.convertible("A"));
        assertEquals(Optional.empty(), ShownUnits.convertible(""));
    }

    @Test
    void aCellUnderAHeadWithTheUnitHasTheNumberAlone() {
        assertEquals("4.92", FEET.digits(1.5, Unit.METRE), "1.5 / 0.3048 = 4.9213");
        assertEquals("1.5", FAHRENHEIT.digits(1.5, Unit.METRE));
        assertEquals("104", FAHRENHEIT.digits(40, Unit.DEGREE_CELSIUS), "40 x 9 / 5 + 32");
        assertEquals("unknown", FEET.digits(Double.NaN, Unit.METRE), "a word without a unit stays whole");
    }

    @Test
    void whatIsTypedAgainHasEveryDigit() {
        assertEquals("1.23456789", ShownUnits.USUAL.exact(1.23456789, Unit.METRE));
        assertEquals("3", FEET.exact(0.9144, Unit.METRE), "3 x 0.3048");
        assertEquals("0.6 °C", FAHRENHEIT.exact(0.6, Unit.DEGREE_CELSIUS), "no double of the other scale leads back");
    }

    @Test
    void theLastBitOfADivisionIsMadeGood() {
        // 91.281 m divided into feet is 299.478346456693 as a double, which leads back to its neighbour; the double
        // below leads to
        // 91.281. For 88.094 m it is the double above.
        assertEquals("299.4783464566929 ft", FEET.start("91.281 m", Unit.METRE));
        assertEquals("289.0223097112861 ft", FEET.start("88.094 m", Unit.METRE));
        assertEquals(91.281, Unit.FOOT.toCanonical(299.4783464566929));
        assertEquals(88.094, Unit.FOOT.toCanonical(289.0223097112861));
    }

    @Test
    void aTextThatIsNoQuantityIsLeftToItsReader() {
        assertEquals("about 3", FEET.start("about 3", Unit.METRE));
    }

    @Test
    void eachChoiceOfUnitsIsFollowedAlone() {
        String text = "350 mm at 40 °C, 2.5 mm²";
        assertEquals("13.8 in at 40 °C, 2.5 mm²", FEET.label(text), "350 / 25.4 = 13.78");
        assertEquals("350 mm at 104 °F, 2.5 mm²", FAHRENHEIT.label(text));
        assertEquals("350 mm at 40 °C, ≈13 AWG", GAUGES.label(text), "13 AWG has 2.62, 14 AWG 2.08 mm2");
        assertEquals("2.5 mm²", ShownUnits.USUAL.text("2.5 mm2"));
        assertEquals("≈30 AWG", GAUGES.label("0.05 mm²"), "the smallest size; 30 AWG has 0.0509 mm2");
        assertEquals("no number", FEET.text("no number"));
    }

    @Test
    void aRoundedLengthIsReplacedByWhatTheExactOneIsInTheOtherUnit() {
        // 1271.4 / 25.4 = 50.055, but 1271 / 25.4 = 50.039.
        assertEquals("50.1 in off", FEET.text("1271 mm off", List.of(Quantity.of(1.2714, Unit.METRE))));
        assertEquals("50 in off", FEET.text("1271 mm off"));
        // 67.34 x 1.8 + 32 = 153.21; 1.04 x 1.8 + 32 = 33.87, while 1 x 1.8 + 32 = 33.8.
        assertEquals("33.9 °F", FAHRENHEIT.text("1 °C", List.of(Quantity.of(1.04, Unit.DEGREE_CELSIUS))));
    }
}
