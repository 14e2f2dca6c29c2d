package org.ohmloom.units;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Reads and writes the size labels of conductors. */
final class GaugeText {
    private static final Text NEEDED =
            Refusals.text("a conductor size such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed");
    private static final Pattern AWG_BEFORE = Pattern.compile("AWG ?#?(?<size>.*)");
    private static final Pattern AWG_AFTER = Pattern.compile("#?(?<size>.*?) ?AWG");
    private static final Pattern AUGHTS = Pattern.compile("([1-4]) ?/ ?0");
    private static final Pattern ZEROS = Pattern.compile("0{1,4}");
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,2}");

    private GaugeText() {}

    static Gauge read(String typed) {
        String text = Texts.plain(typed).toUpperCase(Locale.ROOT);
        Matcher before = AWG_BEFORE.matcher(text);
        if (before.matches()) {
            return awg(before.group("size"), typed);
        }
        Matcher after = AWG_AFTER.matcher(text);
        if (after.matches()) {
            return awg(after.group("size"), typed);
        }
        if (AUGHTS.matcher(text).matches()) {
            return awg(text, typed);
        }
        return metric(typed);
    }

    static String write(Gauge gauge) {
        if (gauge.system() == GaugeSystem.METRIC) {
            return NumberText.exact(gauge.number()) + " mm2";
        }
        int number = (int) gauge.number();
        return (number > 0 ? String.valueOf(number) : (1 - number) + "/0") + " AWG";
    }

    private static Gauge awg(String size, String typed) {
        Matcher aughts = AUGHTS.matcher(size);
        if (aughts.matches()) {
            return Gauge.awg(1 - Integer.parseInt(aughts.group(1)));
        }
        if (ZEROS.matcher(size).matches()) {
            return Gauge.awg(1 - size.length());
        }
        if (!WHOLE.matcher(size).matches() || Integer.parseInt(size) > Gauge.THINNEST_AWG) {
            throw new QuantityFormatException(
                    "%s is not an AWG size; those go from 4/0 to 1/0 and from 1 to 40", Texts.quoted(typed));
        }
        return Gauge.awg(Integer.parseInt(size));
    }

    private static Gauge metric(String typed) {
        NumberText number = NumberText.read(typed, NEEDED);
        if (number.rest().isEmpty()) {
            throw new QuantityFormatException("%s does not say AWG or mm2; %s", Texts.quoted(typed), NEEDED);
        }
        if (Units.find(number.rest(), Dimension.AREA).orElse(Unit.CIRCULAR_MIL) != Unit.SQUARE_MILLIMETRE) {
            throw new QuantityFormatException("%s is not in AWG or mm2; %s", Texts.quoted(typed), NEEDED);
        }
        if (number.value() < Gauge.SMALLEST_MM2 || number.value() > Gauge.LARGEST_MM2) {
            throw new QuantityFormatException(
                    "%s is not a size between %s and %s mm2; %s",
                    Texts.quoted(typed),
                    NumberText.exact(Gauge.SMALLEST_MM2),
                    NumberText.exact(Gauge.LARGEST_MM2),
                    NEEDED);
        }
        return Gauge.metric(number.value());
    }
}
