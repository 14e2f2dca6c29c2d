package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class QuantityTest {
    /** Half a unit of the sixth digit, at worst on 1.00000. */
    private static final double SIX_DIGITS = 5e-6;

    private static final double ROUNDING = 1e-14;

    @Property(shrinking = ShrinkingMode.OFF)
    void whatIsWrittenIsReadBackToSixDigits(
            @ForAll @DoubleRange(min = -1, max = 1) @Scale(9) double mantissa,
            @ForAll @IntRange(min = -30, max = 30) int exponent,
            @ForAll Unit unit) {
        double value = mantissa * Math.pow(10, exponent);
        Quantity read = QuantityParser.parse(Quantity.of(value, unit).text(), unit.dimension());
        assertEquals(unit, read.unit());
        assertEquals(value, read.value(), Math.abs(value) * SIX_DIGITS);
    }

    @Property(shrinking = ShrinkingMode.OFF)
    void theExactTextReadsBackAsTheSameQuantity(
            @ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(9) double value, @ForAll Unit unit) {
        Quantity quantity = Quantity.of(value + 0.0, unit);
        assertEquals(quantity, QuantityParser.parse(quantity.exactText(), unit.dimension()));
    }

    @Property(shrinking = ShrinkingMode.OFF)
    void aValueSurvivesTheWayThroughAnotherUnit(
            @ForAll @DoubleRange(min = 1e-3, max = 1e3) @Scale(9) double value, @ForAll Unit unit, @ForAll Unit other) {
        Quantity quantity = Quantity.of(value, unit);
        if (unit.dimension() == other.dimension()) {
            double back = Quantity.of(quantity.in(other), other).in(unit);
            // an offset of up to 460 degrees costs digits of a small temperature
            double scale = unit.dimension() == Dimension.TEMPERATURE ? 1000 : value;
            assertEquals(value, back, scale * ROUNDING);
        } else {
            assertThrows(IllegalArgumentException.class, () -> quantity.in(other));
        }
    }

    @Test
    void writesSensibleDigits() {
        assertEquals("2.5 mm²", Quantity.of(2.5, Unit.SQUARE_MILLIMETRE).text());
        assertEquals("0.333333 m", Quantity.of(1 / 3.0, Unit.METRE).text());
        assertEquals("1234567 Ω", Quantity.of(1234567, Unit.OHM).text());
        assertEquals("1.2e-9 F", Quantity.of(1.2e-9, Unit.FARAD).text());
        assertEquals("0.2", Quantity.of(0.2, Unit.FRACTION).text());
        assertEquals("0 V", Quantity.of(-0.0, Unit.VOLT).text());
        assertEquals("1e10 Ω", Quantity.of(9_999_999_999.9, Unit.OHM).text());
        assertEquals("0.3333333333333333 m", Quantity.of(1 / 3.0, Unit.METRE).exactText());
    }

    @Test
    void convertsBetweenUnitsOfOneDimension() {
        assertEquals(10, QuantityParser.parse("10 ft", Dimension.LENGTH).in(Unit.FOOT));
        assertEquals(3048, QuantityParser.parse("10 ft", Dimension.LENGTH).in(Unit.MILLIMETRE), 1e-9);
        assertEquals(Quantity.of(3, Unit.METRE), Quantity.ofCanonical(3, Dimension.LENGTH));
    }

    @Test
    void refusesValuesThatAreNotFinite() {
        assertThrows(IllegalArgumentException.class, () -> Quantity.of(Double.NaN, Unit.VOLT));
        assertThrows(IllegalArgumentException.class, () -> Quantity.of(Double.POSITIVE_INFINITY, Unit.VOLT));
        assertThrows(IllegalArgumentException.class, () -> Quantity.of(Double.MAX_VALUE, Unit.KILOVOLT));
    }
}
