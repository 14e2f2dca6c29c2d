package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Device;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * How a state finds a source, as a person writes it, in any order: {@code on} or {@code off}, the charge of a battery as
 * {@code 80 %}, its temperature as {@code -10 °C}, the speed of an alternator as {@code 3000 rpm}, the most it gives as {@code 60 A}.
 */
public final class SourceText {

    private SourceText() {}

    /** A setting as it can be typed again. */
    public static String of(SourceSetting setting) {
        List<String> words = new ArrayList<>(List.of(setting.on() ? "on" : "off"));
        add(words, setting.chargeFraction(), Unit.PERCENT);
        add(words, setting.celsius(), Unit.DEGREE_CELSIUS);
        setting.speedRpm().ifPresent(rpm -> words.add(ExactText.of(rpm, Unit.FRACTION) + " rpm"));
        add(words, setting.limitAmps(), Unit.AMP);
        return String.join("; ", words);
    }

    private static void add(List<String> words, OptionalDouble value, Unit unit) {
        value.ifPresent(canonical -> words.add(ExactText.of(canonical, unit) + " " + unit.symbol()));
    }

    /**
     * The setting a text means; empty for an empty text.
     *
     * @param device the source
     * @throws IllegalArgumentException when a word means nothing; the message says what would be right
     */
    public static Optional<SourceSetting> read(String typed, Device device) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        boolean on = true;
        OptionalDouble charge = OptionalDouble.empty();
        OptionalDouble celsius = OptionalDouble.empty();
        OptionalDouble rpm = OptionalDouble.empty();
        OptionalDouble amps = OptionalDouble.empty();
        for (String each : typed.strip().split("\\s*(;|,\\s)\\s*")) {
            String word = each.strip();
            String lower = word.toLowerCase(Locale.ROOT);
            if (lower.equals("on") || lower.equals("off")) {
                on = lower.equals("on");
            } else if (lower.endsWith("%") && device instanceof Battery) {
                charge = OptionalDouble.of(
                        QuantityParser.parse(word, Unit.PERCENT).canonical());
            } else if (lower.endsWith("rpm") && device instanceof Alternator) {
                String number = word.substring(0, word.length() - 3).strip();
                rpm = OptionalDouble.of(
                        QuantityParser.parse(number, Unit.FRACTION).canonical());
            } else if (lower.endsWith("c") || lower.endsWith("f")) {
                celsius = OptionalDouble.of(
                        QuantityParser.parse(word, Unit.DEGREE_CELSIUS).canonical());
            } else if (lower.matches(".*\\d\\s*m?a") && !(device instanceof Battery)) {
                amps = OptionalDouble.of(QuantityParser.parse(word, Unit.AMP).canonical());
            } else {
                throw new UnfitException("'%s' says nothing of this source; write %s", word, example(device));
            }
        }
        return Optional.of(new SourceSetting(on, charge, celsius, rpm, amps));
    }

    private static Text example(Device device) {
        if (device instanceof Battery) {
            return Refusals.text("on or off, its charge and temperature, as on; 80 %; -10 °C");
        }
        return Refusals.text(
                device instanceof Alternator
                        ? "on or off, its speed, temperature and limit, as on; 3000 rpm; 90 °C; 60 A"
                        : "on or off and its limit, as on; 20 A");
    }
}
