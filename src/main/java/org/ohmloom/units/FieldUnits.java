package org.ohmloom.units;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The unit of a field of a record, told by the ending of its name, the longest ending first. */
public final class FieldUnits {

    /**
     * An ending with what it means.
     *
     * @param text      the ending: {@code Volts}
     * @param dimension what it measures, with a unit that suits the size of the number; empty for one that is written as it is
     * @param symbol    the unit as it is written: {@code V/K}
     */
    private record Ending(String text, Optional<Dimension> dimension, String symbol) {

        static Ending of(String text, Dimension dimension) {
            return new Ending(text, Optional.of(dimension), "");
        }

        static Ending of(String text, String symbol) {
            return new Ending(text, Optional.empty(), symbol);
        }

        String text(double value, ShownUnits units) {
            return dimension
                    .map(each -> units.quantity(value, each))
                    .orElseGet(
                            () -> symbol.equals("mm") ? units.millimetres(value) : units.number(value) + " " + symbol);
        }
    }

    private static final List<Ending> ENDINGS = List.of(
                    Ending.of("Volts", Dimension.VOLTAGE),
                    Ending.of("Amps", Dimension.CURRENT),
                    Ending.of("Ohms", Dimension.RESISTANCE),
                    Ending.of("Watts", Dimension.POWER),
                    Ending.of("Joules", Dimension.ENERGY),
                    Ending.of("Metres", Dimension.LENGTH),
                    Ending.of("Mm2", Dimension.AREA),
                    Ending.of("Celsius", Dimension.TEMPERATURE),
                    Ending.of("Newtons", Dimension.FORCE),
                    Ending.of("Kg", Dimension.MASS),
                    Ending.of("AmpHours", Dimension.CHARGE),
                    Ending.of("Fraction", Dimension.RATIO),
                    Ending.of("Seconds", Dimension.TIME),
                    Ending.of("Hertz", Dimension.FREQUENCY),
                    Ending.of("Henries", Dimension.INDUCTANCE),
                    Ending.of("Farads", Dimension.CAPACITANCE),
                    Ending.of("Mm", "mm"),
                    Ending.of("Hours", "h"),
                    Ending.of("Rpm", "rpm"),
                    Ending.of("Kelvin", "K"),
                    Ending.of("Tesla", "T"),
                    Ending.of("VoltsPerKelvin", "V/K"),
                    Ending.of("WattsPerKelvin", "W/K"),
                    Ending.of("PerKelvin", "1/K"),
                    Ending.of("PerMetre", "per m"),
                    Ending.of("HertzPerUnit", "Hz per unit"),
                    Ending.of("BitsPerSecond", "bit/s"),
                    Ending.of("PulsesPerRevolution", "pulses per turn"))
            .stream()
            .sorted(Comparator.comparing((Ending ending) -> -ending.text().length()))
            .toList();

    private FieldUnits() {}

    private static Optional<Ending> ending(String name) {
        return ENDINGS.stream()
                .filter(each -> name.endsWith(each.text()) || name.equalsIgnoreCase(each.text()))
                .findFirst();
    }

    /** The name without the ending that tells its unit; where nothing else is left, what is measured: "resistance" of ohms. */
    public static String label(String name) {
        return ending(name)
                .map(each -> name.length() > each.text().length()
                        ? name.substring(0, name.length() - each.text().length())
                        : each.dimension().map(Dimension::noun).orElse(name))
                .orElse(name);
    }

    /** A number with its unit; empty for a field whose name has no such ending. */
    public static Optional<String> text(String name, double value) {
        return text(name, value, ShownUnits.USUAL);
    }

    /** A number with its unit, in the units a person reads; empty for a field whose name has no such ending. */
    public static Optional<String> text(String name, double value, ShownUnits units) {
        return ending(name).map(each -> each.text(value, units));
    }
}
