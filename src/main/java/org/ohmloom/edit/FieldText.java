package org.ohmloom.edit;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.UnfitException;

/**
 * What stands in a field as text, and back. Numbers take a unit and either decimal sign, choices their words, identities what the
 * harness has; a field that may be empty takes an empty text.
 *
 * @param shown  unit numbers are shown in and a bare number is in; empty for a bare number
 * @param stored unit they are stored in
 */
record FieldText(Optional<Unit> shown, Unit stored) {

    private static final int MOST_CHOICES = 12;

    /** The texts of a field of that name; lengths in mm are the only numbers not stored in the canonical unit. */
    static FieldText of(Optional<Unit> shown, String name) {
        Unit canonical = name.endsWith("Mm") ? Unit.MILLIMETRE : Unit.FRACTION;
        return new FieldText(shown, canonical);
    }

    private double fromStored(double value) {
        return shown.map(unit -> unit.fromCanonical(stored.toCanonical(value))).orElse(value);
    }

    private double toStored(double canonical) {
        return stored.fromCanonical(canonical);
    }

    OptionalDouble number(Object value) {
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? OptionalDouble.of(fromStored(optional.getAsDouble())) : optional;
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(this::number).orElse(OptionalDouble.empty());
        }
        if (value instanceof Integer whole) {
            return OptionalDouble.of(whole);
        }
        return value instanceof Double number ? OptionalDouble.of(fromStored(number)) : OptionalDouble.empty();
    }

    /** A value as it can be typed again. */
    String written(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(this::written).orElse("");
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? written(optional.getAsDouble()) : "";
        }
        if (value instanceof Double number) {
            return shown.map(unit -> ExactText.of(stored.toCanonical(number), unit) + " " + unit.symbol())
                    .orElseGet(() -> ExactText.of(number, Unit.FRACTION));
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Enum<?> choice) {
            return words(choice);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(this::written).collect(Collectors.joining(", "));
        }
        if (value instanceof Gauge gauge) {
            return gauge.text();
        }
        if (value instanceof WireColour colour) {
            return colour.text();
        }
        if (value instanceof WireEnd end) {
            return end.text();
        }
        return value instanceof Place place ? EndText.of(place) : String.valueOf(value);
    }

    /** The words of a choice: {@code data bus}. */
    static String words(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The value a text means.
     *
     * @throws IllegalArgumentException when it means none; the message says what would be right
     */
    Object read(Type type, String typed, Harness harness) {
        String text = typed.strip();
        if (type instanceof ParameterizedType holder) {
            Type inner = holder.getActualTypeArguments()[0];
            if (holder.getRawType() == Optional.class) {
                return text.isEmpty() ? Optional.empty() : Optional.of(read(inner, text, harness));
            }
            if (holder.getRawType() == List.class) {
                List<Object> all = new ArrayList<>();
                Arrays.stream(text.split("[,;]"))
                        .map(String::strip)
                        .filter(each -> !each.isEmpty())
                        .forEach(each -> all.add(read(inner, each, harness)));
                return List.copyOf(all);
            }
        }
        if (type == OptionalDouble.class) {
            return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(quantity(text));
        }
        if (type == WireEnd.class) {
            return EndText.end(harness, text);
        }
        if (text.isEmpty() && type != boolean.class) {
            throw new UnfitException("this cannot be left empty");
        }
        return single((Class<?>) type, text, harness);
    }

    private Object single(Class<?> type, String text, Harness harness) {
        if (type == String.class) {
            return text;
        }
        if (type == double.class) {
            return quantity(text);
        }
        if (type == int.class || type == Integer.class) {
            return whole(text);
        }
        if (type == boolean.class || type == Boolean.class) {
            return yes(text);
        }
        if (type.isEnum()) {
            return choice(type, text);
        }
        if (ElementId.class.isAssignableFrom(type)) {
            return EndText.named(harness, type, text);
        }
        if (type == Gauge.class) {
            return Gauge.parse(text.matches("[0-9]*[.,]?[0-9]+") ? text + " mm2" : text);
        }
        if (type == WireColour.class) {
            return WireColour.parse(text.replaceAll("[\\s/-]+", "").toUpperCase(Locale.ROOT));
        }
        if (type == Place.class) {
            return EndText.place(harness, text);
        }
        throw new IllegalStateException(type + " cannot be typed");
    }

    private double quantity(String text) {
        Unit assumed = shown.orElse(Unit.FRACTION);
        return toStored(QuantityParser.parse(text, assumed).canonical());
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException unfit) {
            throw new UnfitException(Refusals.text("'%s' is no whole number", text), unfit);
        }
    }

    private static boolean yes(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "on", "1" -> true;
            case "no", "n", "off", "0", "" -> false;
            default -> throw new UnfitException("'%s' is neither yes nor no", text);
        };
    }

    private static Enum<?> choice(Class<?> type, String text) {
        String wanted = text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
        List<Enum<?>> all = new ArrayList<>();
        for (Object each : type.getEnumConstants()) {
            all.add((Enum<?>) each);
        }
        List<Enum<?>> meant =
                all.stream().filter(each -> words(each).startsWith(wanted)).toList();
        return all.stream()
                .filter(each -> words(each).equals(wanted))
                .findFirst()
                .or(() -> meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty())
                .orElseThrow(() -> new UnfitException(
                        "'%s' is none of the choices: %s%s",
                        text,
                        all.stream().limit(MOST_CHOICES).map(FieldText::words).collect(Collectors.joining(", ")),
                        all.size() > MOST_CHOICES ? ", …" : ""));
    }
}
