package org.ohmloom.units;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Puts the quantities in a text written by {@link Formats} and {@link Gauge#text()} into the units a person reads. Only a number
 * with a unit behind it is touched; of numbers without one, those beside an x or = of a formula get the decimal sign.
 *
 * @param shown        the units
 * @param areasAreSizes whether mm² names conductor sizes too; mm2, as {@link Gauge#text()} writes it, always does
 */
record ShownSentence(ShownUnits shown, boolean areasAreSizes) {
    private static final String NUMBER = "-?[0-9]+(?:\\.[0-9]+)?";
    private static final String NOT_WITHIN = "(?<![\\p{L}0-9.,/_#])(?<![\\p{L}0-9]-)";
    private static final String BOTH = "(" + NUMBER + ")( to |(?<=between [0-9.-]{1,9}) and )";
    private static final Pattern QUANTITY =
            Pattern.compile(NOT_WITHIN + "(?:" + BOTH + ")?(" + NUMBER + ") (mm2|mm²|mm|m|°C|AWG)(?![\\p{L}0-9²³/·])");
    private static final Pattern GAUGE =
            Pattern.compile("(?<![\\p{L}0-9.,/_#≈-])([1-4]/0|[0-9]{1,2}) AWG(?![\\p{L}0-9])");
    private static final Pattern DECIMAL = Pattern.compile(NOT_WITHIN
            + "(-?[0-9]+)\\.([0-9]+)(?=( to | and )-?[0-9.,]+ ?" + "(?:" + symbols() + ")(?![\\p{L}0-9])| ?(?:"
            + symbols() + ")(?![\\p{L}0-9])| [x=×] )|(?<=[x=×<>] )(-?[0-9]+)\\.([0-9]+)(?![.0-9])");

    String of(String sentence, Collection<Quantity> exactly) {
        String text = sentence;
        for (Quantity each : exactly) {
            Dimension dimension = each.dimension();
            if (dimension == Dimension.LENGTH || dimension == Dimension.TEMPERATURE) {
                text = whole(
                        text,
                        Formats.quantity(each.canonical(), dimension),
                        shown.quantity(each.canonical(), dimension));
                if (dimension == Dimension.LENGTH) {
                    double millimetres = Unit.MILLIMETRE.fromCanonical(each.canonical());
                    text = whole(text, Formats.millimetres(millimetres), shown.millimetres(millimetres));
                }
            }
        }
        return of(text);
    }

    private static String whole(String text, String from, String to) {
        return from.equals(to)
                ? text
                : text.replaceAll("(?<![0-9.,])" + Pattern.quote(from) + "(?![\\p{L}0-9²³/·])", to);
    }

    String of(String sentence) {
        if (!sentence.chars().anyMatch(Character::isDigit)) {
            return sentence;
        }
        String gauged = shown.sizes() == ShownUnits.Sizes.METRIC
                ? GAUGE.matcher(sentence).replaceAll(found -> shown.size(Gauge.parse(found.group())))
                : sentence;
        String converted =
                convertsNothingIn(gauged) ? gauged : QUANTITY.matcher(gauged).replaceAll(this::quantity);
        return shown.decimals() == ShownUnits.Decimals.COMMA ? decimals(converted) : converted;
    }

    /** Whether every quantity would be put back as it stands: so it is for most people, and a list asks for thousands of texts. */
    private boolean convertsNothingIn(String text) {
        return shown.lengths() == ShownUnits.Lengths.METRIC
                && shown.temperatures() == ShownUnits.Temperatures.CELSIUS
                && shown.sizes() != ShownUnits.Sizes.AWG
                && !text.contains("mm2");
    }

    private static String decimals(String text) {
        return DECIMAL.matcher(text)
                .replaceAll(found -> found.group(1) != null
                        ? found.group(1) + "," + found.group(2)
                        : found.group(4) + "," + found.group(5));
    }

    private String quantity(MatchResult found) {
        String symbol = found.group(4);
        String between = found.group(2);
        String last = one(found.group(3), symbol);
        if (between == null) {
            return last;
        }
        String first = one(found.group(1), symbol);
        int unit = first.indexOf(' ');
        boolean same = unit >= 0 && last.endsWith(first.substring(unit));
        return (same ? first.substring(0, unit) : first) + between + last;
    }

    private String one(String digits, String symbol) {
        double value = Double.parseDouble(digits);
        return switch (symbol) {
            case "m" -> shown.lengths() == ShownUnits.Lengths.METRIC ? digits + " m" : shown.metres(value);
            case "mm" -> shown.lengths() == ShownUnits.Lengths.METRIC ? digits + " mm" : shown.millimetres(value);
            case "°C" -> shown.temperatures() == ShownUnits.Temperatures.CELSIUS
                    ? digits + " °C"
                    : shown.celsius(value);
            case "AWG" -> digits + " AWG";
            default -> area(value, digits, symbol);
        };
    }

    private String area(double value, String digits, String symbol) {
        boolean size = areasAreSizes || symbol.equals("mm2");
        boolean gauge = value >= Gauge.SMALLEST_MM2 && value <= Gauge.LARGEST_MM2;
        return size && gauge && shown.sizes() == ShownUnits.Sizes.AWG
                ? shown.size(Gauge.metric(value))
                : digits + " mm²";
    }

    private static String symbols() {
        return Arrays.stream(Unit.values())
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .sorted(Comparator.comparing((String symbol) -> -symbol.length()))
                .map(Pattern::quote)
                .collect(Collectors.joining("|", "", "|rpm|cm²|µT|K|V/K|W/K|mm2"));
    }
}
