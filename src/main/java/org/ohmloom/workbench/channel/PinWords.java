package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.model.Sensor;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Pins and what they are for, in words. */
final class PinWords {

    private PinWords() {}

    /** A role, as "analogue input". */
    static String role(PinRole role) {
        return TradeWords.named(role);
    }

    /** Everything a pin can be. */
    static String roles(Pin pin) {
        return pin.capabilities().stream().sorted().map(PinWords::role).collect(Collectors.joining(", "));
    }

    /** The limits of a pin as it is set up: "0 to 5 V", "up to 3 A", "5 V, up to 100 mA". */
    static String limits(Pin pin) {
        List<String> parts = new ArrayList<>();
        Words words = Words.of("channels");
        if (pin.referenceVolts().isPresent()) {
            parts.add(Formats.volts(pin.referenceVolts().getAsDouble()));
        }
        if (pin.limitAmps().isPresent()) {
            parts.add(words.get("up-to", Formats.amps(pin.limitAmps().getAsDouble())));
        }
        pin.range().ifPresent(range -> parts.addAll(range(range, words)));
        PinUse now = PinUse.now(pin);
        if (now.pullUpOhms().isPresent()) {
            parts.add(words.get("pull-up", Formats.ohms(now.pullUpOhms().getAsDouble())));
        }
        return String.join(", ", parts);
    }

    private static List<String> range(InputRange range, Words words) {
        List<String> parts = new ArrayList<>();
        if (range.highestVolts().isPresent()) {
            parts.add(words.get(
                    "from-to",
                    Formats.number(range.lowestVolts().orElse(0)),
                    Formats.volts(range.highestVolts().getAsDouble())));
        }
        if (range.highestHertz().isPresent()) {
            parts.add(words.get("up-to", Formats.hertz(range.highestHertz().getAsDouble())));
        }
        return parts;
    }

    /** What a sensor meets in use, "0 to 10 bar"; empty where that is not entered. */
    static String use(Sensor sensor) {
        return sensor.measurement()
                .map(measurement -> Words.of("channels")
                        .get(
                                "from-to",
                                Formats.number(edge(measurement, true)),
                                Formats.number(edge(measurement, false)) + " " + measurement.unit()))
                .orElse("");
    }

    private static double edge(Measurement measurement, boolean low) {
        OptionalDouble entered = measurement
                .use()
                .map(low ? Measurement.Use::lowest : Measurement.Use::highest)
                .orElse(OptionalDouble.empty());
        return entered.orElse(low ? measurement.lowest() : measurement.highest());
    }
}
