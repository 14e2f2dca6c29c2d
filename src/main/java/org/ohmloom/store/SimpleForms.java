package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.units.Texts;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;
import org.ohmloom.words.Worded;

/** The forms of single values. */
final class SimpleForms {

    /** A number. */
    static final Form NUMBER = new Form() {
        @Override
        public Object read(JsonNode node, Spot spot) {
            return Found.number(node, spot);
        }

        @Override
        public JsonNode write(Object value, Spot spot) {
            return JsonNumbers.node((Double) value);
        }
    };

    /** A number that may be absent. */
    static final Form OPTIONAL_NUMBER = new Form() {
        @Override
        public Object read(JsonNode node, Spot spot) {
            return OptionalDouble.of(Found.number(node, spot));
        }

        @Override
        public JsonNode write(Object value, Spot spot) {
            return JsonNumbers.node(((OptionalDouble) value).orElseThrow());
        }

        @Override
        public Optional<Object> whenAbsent() {
            return Optional.of(OptionalDouble.empty());
        }
    };

    /** A whole number. */
    static final Form WHOLE = new Form() {
        @Override
        public Object read(JsonNode node, Spot spot) {
            double value = Found.number(node, spot);
            if (value != (int) value) {
                throw Found.needed("a whole number", node, spot);
            }
            return (int) value;
        }

        @Override
        public JsonNode write(Object value, Spot spot) {
            return IntNode.valueOf((Integer) value);
        }
    };

    /** True, or absent for false. */
    static final Form FLAG = new Form() {
        @Override
        public Object read(JsonNode node, Spot spot) {
            return Found.flag(node, spot);
        }

        @Override
        public JsonNode write(Object value, Spot spot) {
            return BooleanNode.valueOf((Boolean) value);
        }

        @Override
        public Optional<Object> whenAbsent() {
            return Optional.of(false);
        }
    };

    /** A text. */
    static final Form TEXT = new Form() {
        @Override
        public Object read(JsonNode node, Spot spot) {
            return Found.text(node, spot);
        }

        @Override
        public JsonNode write(Object value, Spot spot) {
            return TextNode.valueOf((String) value);
        }
    };

    private SimpleForms() {}

    /** A value written as a text of its own; reading it may refuse with an IllegalArgumentException. */
    static <T> TextualForm textual(Class<T> type, Function<String, T> fromText, Function<T, String> toText) {
        return new TextualForm(fromText::apply, value -> toText.apply(type.cast(value)));
    }

    /** The constants of an enumeration as keys of an object. */
    static TextualForm wordKey(Class<?> type) {
        Map<String, Object> byWord = new LinkedHashMap<>();
        List.of(type.getEnumConstants()).forEach(value -> byWord.put(word((Enum<?>) value), value));
        return new TextualForm(
                text -> {
                    Object found = byWord.get(text);
                    if (found == null) {
                        throw new UnfitException(
                                "%s is not a %s; use %s",
                                Texts.quoted(text), Refusals.text(spaced(type)), String.join(", ", byWord.keySet()));
                    }
                    return found;
                },
                value -> word((Enum<?>) value));
    }

    /** A constant of an enumeration, written as {@link #word(Enum)}. */
    static Form constant(Class<?> type) {
        Map<String, Object> byWord = new LinkedHashMap<>();
        List.of(type.getEnumConstants()).forEach(value -> byWord.put(word((Enum<?>) value), value));
        Text what = Refusals.text(spaced(type));
        return new Form() {
            @Override
            public Object read(JsonNode node, Spot spot) {
                return byWord.get(Found.word(node, byWord.keySet(), what, spot));
            }

            @Override
            public JsonNode write(Object value, Spot spot) {
                return TextNode.valueOf(word((Enum<?>) value));
            }
        };
    }

    /** {@code SWITCHED_OUTPUT} as {@code switched-output}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code SolidStateOutput} as {@code solid-state-output}. */
    static String word(Class<?> type) {
        return spaced(type).replace(' ', '-');
    }

    /** {@code SignalClass} as {@code signal class}; a type named only Kind or Use takes the name of its owner too. */
    static String spaced(Class<?> type) {
        String own = String.join(" ", Arrays.asList(type.getSimpleName().split("(?<=[a-z])(?=[A-Z])")))
                .toLowerCase(Locale.ROOT);
        Class<?> owner = type.getEnclosingClass();
        return type.isEnum() && owner != null ? own + " of " + spaced(owner) : own;
    }

    /** A value with a text of its own, also usable as a key. */
    record TextualForm(Function<String, Object> fromText, Function<Object, String> toText) implements Form {
        @Override
        public Object read(JsonNode node, Spot spot) {
            return read(Found.text(node, spot), spot);
        }

        Object read(String text, Spot spot) {
            try {
                return fromText.apply(text);
            } catch (IllegalArgumentException refused) {
                throw refused.getMessage() == null
                        ? new RefusedException(spot, "%s cannot be read", Texts.quoted(text))
                        : new RefusedException(spot, Worded.of(refused));
            }
        }

        @Override
        public JsonNode write(Object value, Spot spot) {
            return TextNode.valueOf(toText.apply(value));
        }
    }
}
