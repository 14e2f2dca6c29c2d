package org.ohmloom.workbench.inspect;

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
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Draw;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Place;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.FieldUnits;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.words.CalibrationText;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/**
 * All fields of a record of the model as facts: the label from the name of the field, the unit from its ending. So
 * nothing a file can say stays out of sight.
 */
final class RecordFacts {

    private static final Words HELP = Words.of("field-help");

    private final ShownUnits units;

    /** Facts written in these units. */
    RecordFacts(ShownUnits units) {
        this.units = units;
    }

    /** The fields of a record, without identity and name, and without lists, which are shown as tables. */
    List<Inspection.Fact> of(Record shown) {
        List<Inspection.Fact> facts = new ArrayList<>();
        for (RecordComponent field : shown.getClass().getRecordComponents()) {
            Object value = value(shown, field);
            Object inner = value instanceof Optional<?> optional ? optional.orElse(null) : value;
            if (field.getName().equals("id")
                    || field.getName().equals("name")
                    || inner instanceof Collection<?>
                    || inner instanceof Map<?, ?>) {
                continue;
            }
            if (inner instanceof Record nested && text(nested).isEmpty()) {
                kind(nested)
                        .ifPresent(kind -> facts.add(
                                Inspection.Fact.of(words(field.getName()), kind).about(about(shown, field))));
                facts.addAll(of(nested));
            } else {
                facts.add(fact(field.getName(), inner).about(about(shown, field)));
            }
        }
        return facts;
    }

    /** What a field means, its unit, its range and what it is where nothing is entered. */
    private static String about(Record of, RecordComponent field) {
        return HELP.find("help." + kebab(of.getClass().getSimpleName()) + "." + kebab(field.getName()))
                .orElse("");
    }

    private static String kebab(String name) {
        return name.replaceAll("(\\p{Lower}|\\d)(\\p{Upper})", "$1-$2").toLowerCase(Locale.ROOT);
    }

    private Inspection.Fact fact(String name, Object value) {
        OptionalDouble number = number(value);
        Optional<String> quantity =
                number.isPresent() ? FieldUnits.text(name, number.getAsDouble(), units) : Optional.empty();
        return Inspection.Fact.of(words(FieldUnits.label(name)), quantity.orElseGet(() -> words(value)));
    }

    /** Which of several kinds a part of a thing is, in words; empty for what comes in one kind only. */
    private Optional<String> kind(Record part) {
        if (part instanceof Calibration calibration) {
            String text = CalibrationText.of(calibration);
            return Optional.of(TradeWords.kind(calibration) + ", " + units.text(text));
        }
        return part instanceof Draw draw ? Optional.of(TradeWords.kind(draw)) : Optional.empty();
    }

    private static OptionalDouble number(Object value) {
        if (value instanceof Number number) {
            return OptionalDouble.of(number.doubleValue());
        }
        return value instanceof OptionalDouble optional ? optional : OptionalDouble.empty();
    }

    private String words(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Record nested) {
            return text(nested).orElse("");
        }
        if (value instanceof Boolean flag) {
            return TypedNumbers.yesOrNo(flag);
        }
        if (value instanceof Enum<?> constant) {
            return TradeWords.named(constant);
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? String.valueOf(optional.getAsInt()) : "";
        }
        OptionalDouble number = number(value);
        return number.isPresent()
                ? units.number(number.getAsDouble())
                : value instanceof OptionalDouble ? "" : String.valueOf(value);
    }

    /** Records that are one word for people. */
    private Optional<String> text(Record value) {
        if (value instanceof ElementId id) {
            return Optional.of(id.value());
        }
        if (value instanceof Gauge gauge) {
            return Optional.of(units.size(gauge));
        }
        if (value instanceof WireEnd end) {
            return Optional.of(end.text());
        }
        if (value instanceof WireColour colour) {
            return Optional.of(colour.text());
        }
        return value instanceof Place place ? Optional.of(units.text(TradeWords.place(place))) : Optional.empty();
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
        String plain = name.replaceAll("(\\p{Lower})(\\p{Upper})", "$1 $2").toLowerCase(Locale.ROOT);
        return Words.of("fields").find("field." + plain.replace(' ', '-')).orElseGet(() -> TradeWords.capital(plain));
    }
}
