package org.ohmloom;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Tells whether a name ends with the unit of the number it names: {@code lengthMetres}, {@code areaMm2},
 * {@code resistanceOhmsPerKilometre}, {@code temperatureCoefficientPerKelvin}.
 */
final class UnitSuffix {
    /** Words that name a unit, or say that there is none, at the end of a name. */
    private static final Set<String> UNITS =
            Set.of(("volts millivolts amps milliamps microamps ohms milliohms microohms microhms kiloohms kilohms "
                            + "siemens watts milliwatts kilowatts henries millihenries microhenries farads microfarads "
                            + "nanofarads picofarads tesla teslas coulombs joules hours metres millimetres "
                            + "micrometres kilometres mm mm2 mm3 m2 m3 kilograms kg grams newtons pascals bars celsius kelvin "
                            + "kelvins seconds milliseconds microseconds minutes days hertz kilohertz bits bytes baud rpm "
                            + "decibels degrees radians ratio fraction percent factor exponent count points")
                    .split(" "));

    /** Words that may follow "Per". */
    private static final Set<String> PER =
            Set.of(("volt amp ohm watt metre millimetre kilometre mm mm2 m2 m3 kilogram kelvin celsius second minute "
                            + "hour hertz bit revolution degree radian")
                    .split(" "));

    private UnitSuffix() {}

    /** Whether the last words of a camel-case name are a unit. */
    static boolean endsIn(String name) {
        List<String> words = Arrays.stream(name.split("(?=[A-Z])"))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .toList();
        int last = words.size() - 1;
        int per = words.lastIndexOf("per");
        if (per > 0) {
            String below = String.join("", words.subList(per + 1, words.size()));
            return PER.contains(below);
        }
        return UNITS.contains(words.get(last));
    }
}
