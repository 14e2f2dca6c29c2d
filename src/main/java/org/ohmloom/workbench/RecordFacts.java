package org.ohmloom.workbench;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Place;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/**
 * All fields of a record of the model as facts: the label from the name of the field, the unit from its ending. So
 * nothing a file can say stays out of sight.
 */
final class RecordFacts {

    private static final Map<String, Dimension> ENDINGS = Map.ofEntries(
            Map.entry("Volts", Dimension.VOLTAGE),
            Map.entry("Amps", Dimension.CURRENT),
            Map.entry("Ohms", Dimension.RESISTANCE),
            Map.entry("Watts", Dimension.POWER),
            Map.entry("Metres", Dimension.LENGTH),
            Map.entry("Mm2", Dimension.AREA),
            Map.entry("Celsius", Dimension.TEMPERATURE),
            Map.entry("Kg", Dimension.MASS),
            Map.entry("AmpHours", Dimension.CHARGE),
            Map.entry("Fraction", Dimension.RATIO),
            Map.entry("Seconds", Dimension.TIME),
            Map.entry("Hertz", Dimension.FREQUENCY));

    private RecordFacts() {}

    /** The fields of a record, without identity and name, and without lists, which are shown as tables. */
    static List<Inspection.Fact> of(Record shown) {
        List<Inspection.Fact> facts = new ArrayList<>();
        for (RecordComponent field : shown.getClass().getRecordComponents()) {
            Object value = value(shown, field);
            if (field.getName().equals("id")
                    || field.getName().equals("name")
                    || value instanceof Collection<?>
                    || value instanceof Map<?, ?>) {
                continue;
            }
            Object inner = value instanceof Optional<?> optional ? optional.orElse(null) : value;
            if (inner instanceof Record nested && text(nested).isEmpty()) {
                facts.addAll(of(nested));
            } else {
                facts.add(fact(field.getName(), inner));
            }
        }
        return facts;
    }

    private static Inspection.Fact fact(String name, Object value) {
        for (Map.Entry<String, Dimension> ending : ENDINGS.entrySet()) {
            if (name.endsWith(ending.getKey())) {
                String label = name.substring(0, name.length() - ending.getKey().length());
                return Inspection.Fact.of(words(label), number(value, ending.getValue()));
            }
        }
        if (name.endsWith("Mm")) {
            String label = name.substring(0, name.length() - 2);
            OptionalDouble number = number(value);
            String text = number.isPresent() ? Formats.millimetres(number.getAsDouble()) : "";
            return Inspection.Fact.of(words(label), text);
        }
        return Inspection.Fact.of(words(name), words(value));
    }

    private static String number(Object value, Dimension dimension) {
        OptionalDouble number = number(value);
        return number.isPresent() ? Formats.quantity(number.getAsDouble(), dimension) : "";
    }

    private static OptionalDouble number(Object value) {
        if (value instanceof Number number) {
            return OptionalDouble.of(number.doubleValue());
        }
        return value instanceof OptionalDouble optional ? optional : OptionalDouble.empty();
    }

    private static String words(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Record nested) {
            return text(nested).orElse(nested.toString());
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        if (value instanceof Enum<?> constant) {
            return TradeWords.lower(constant);
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? String.valueOf(optional.getAsInt()) : "";
        }
        OptionalDouble number = number(value);
        return number.isPresent() ? Formats.number(number.getAsDouble()) : String.valueOf(value);
    }

    /** Records that are one word for people. */
    private static Optional<String> text(Record value) {
        if (value instanceof ElementId id) {
            return Optional.of(id.value());
        }
        if (value instanceof Gauge gauge) {
            return Optional.of(TradeWords.size(gauge));
        }
        if (value instanceof WireEnd end) {
            return Optional.of(end.text());
        }
        if (value instanceof WireColour colour) {
            return Optional.of(colour.text());
        }
        return value instanceof Place place ? Optional.of(TradeWords.place(place)) : Optional.empty();
    }

    private static Object value(Record shown, RecordComponent field) {
        try {
            return field.getAccessor().invoke(shown);
        } catch (IllegalAccessException | InvocationTargetException hidden) {
            throw new IllegalStateException("field " + field.getName() + " cannot be read", hidden);
        }
    }

    /** A field's name as words: "contactPart" as "Contact part". */
    static String words(String name) {
        return TradeWords.capital(
                name.replaceAll("(\\p{Lower})(\\p{Upper})", "$1 $2").toLowerCase(Locale.ROOT));
    }
}
