package org.ohmloom.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.model.Device;
import org.ohmloom.model.Setting;
import org.ohmloom.model.Switch;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * How a state sets a load, a switch or an output, as a person writes it: {@code on}, {@code off}, {@code 40 %}, {@code start}, or
 * the position of a switch, {@code low} or {@code low 40 %}. A bare number from 1 is a duty in percent.
 */
public final class SettingText {

    private SettingText() {}

    /** A setting as it can be typed again. */
    public static String of(Setting setting) {
        if (!setting.on()) {
            return "off";
        }
        String duty = setting.dutyFraction() == 1 ? "" : ExactText.of(setting.dutyFraction(), Unit.PERCENT) + " %";
        String how = setting.starting() ? "start" : setting.position().orElse(duty.isEmpty() ? "on" : "");
        return (how + " " + duty).strip();
    }

    /**
     * The setting a text means; empty for an empty text.
     *
     * @param device what is set
     * @throws IllegalArgumentException when it means none; the message says what would be right
     */
    public static Optional<Setting> read(String typed, Device device) {
        String text = typed.strip();
        String word = text.toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        List<String> positions = device instanceof Switch several ? several.positions() : List.of();
        for (String position : positions) {
            if (word.equals(position.toLowerCase(Locale.ROOT))) {
                return Optional.of(Setting.at(position));
            }
            if (word.startsWith(position.toLowerCase(Locale.ROOT) + " ")) {
                double duty = duty(text.substring(position.length()).strip());
                return Optional.of(new Setting(true, duty, Optional.of(position), false));
            }
        }
        return Optional.of(
                switch (word) {
                    case "on", "yes" -> Setting.ON;
                    case "off", "no", "0", "0 %", "0%" -> Setting.OFF;
                    case "start", "starting" -> Setting.start();
                    default -> Setting.duty(duty(text, positions));
                });
    }

    private static double duty(String text) {
        return duty(text, List.of());
    }

    private static double duty(String text, List<String> positions) {
        Text wanted = positions.isEmpty()
                ? Refusals.text("write on, off, start or a duty such as 40 %")
                : Refusals.text(
                        "write on, off, start or a duty such as 40 %%, or a position: %s",
                        String.join(", ", positions));
        double fraction;
        try {
            fraction = text.endsWith("%")
                    ? QuantityParser.parse(text, Dimension.RATIO).canonical()
                    : QuantityParser.parse(text, Unit.PERCENT).canonical();
        } catch (IllegalArgumentException unfit) {
            throw new UnfitException(Refusals.text("'%s' is no setting; %s", text, wanted), unfit);
        }
        if (!text.endsWith("%") && fraction > 0 && fraction < 0.01) {
            throw new UnfitException(
                    "'%s' may mean a share or a percentage; write %s %% or a number from 1", text, text);
        }
        if (fraction <= 0 || fraction > 1) {
            throw new UnfitException("a duty is more than 0 %% and at most 100 %%, not '%s'", text);
        }
        return fraction;
    }
}
