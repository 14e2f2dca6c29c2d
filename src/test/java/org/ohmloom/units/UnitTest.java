package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    private static final double ROUNDING = 1e-14;

    @ParameterizedTest
    @EnumSource
    void eachDimensionHasExactlyOneCanonicalUnit(Dimension dimension) {
        long canonical = Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension && unit.isCanonical())
                .count();
        assertEquals(1, canonical);
        assertEquals(dimension, dimension.canonicalUnit().dimension());
    }

    @ParameterizedTest
    @EnumSource
    void conversionGoesBothWays(Unit unit) {
        assertEquals(37.5, unit.fromCanonical(unit.toCanonical(37.5)), 37.5 * ROUNDING * 10);
    }

    @ParameterizedTest
    @EnumSource
    void everySpellingFindsItsUnit(Unit unit) {
        spellings(unit)
                .forEach(spelling -> assertEquals(
                        unit,
                        Units.find(spelling, unit.dimension()).orElseThrow(),
                        () -> "spelled '" + spelling + "'"));
    }

    @Test
    void noSpellingNamesTwoUnitsOfOneDimension() {
        Map<String, Unit> seen = new HashMap<>();
        for (Unit unit : Unit.values()) {
            spellings(unit).forEach(spelling -> {
                Unit earlier = seen.put(unit.dimension() + " " + spelling, unit);
                assertNotEquals(unit.toString(), earlier == null ? "" : unit.toString(), "spelled twice: " + spelling);
            });
        }
    }

    @Test
    void canonicalUnitsAreThoseOfTheDesign() {
        assertEquals(Unit.SQUARE_MILLIMETRE, Dimension.AREA.canonicalUnit());
        assertEquals(Unit.DEGREE_CELSIUS, Dimension.TEMPERATURE.canonicalUnit());
        assertEquals(Unit.KILOGRAM, Dimension.MASS.canonicalUnit());
        assertEquals(Unit.AMP_HOUR, Dimension.CHARGE.canonicalUnit());
    }

    @Test
    void definedUnitsAreExact() {
        assertEquals(0.0254, Unit.INCH.toCanonical(1));
        assertEquals(0.3048, Unit.FOOT.toCanonical(1));
        assertEquals(0.45359237, Unit.POUND.toCanonical(1));
        assertEquals(0.07, Unit.PERCENT.toCanonical(7));
        assertEquals(100, Unit.DEGREE_FAHRENHEIT.toCanonical(212));
    }

    private static Stream<String> spellings(Unit unit) {
        return Stream.concat(
                        Stream.of(unit.symbol()),
                        Arrays.stream(unit.otherSpellings().split(" ", -1)))
                .filter(spelling -> !spelling.isEmpty());
    }
}
