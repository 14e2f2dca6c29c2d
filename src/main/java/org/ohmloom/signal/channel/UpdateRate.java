package org.ohmloom.signal.channel;

import static org.ohmloom.units.Require.positive;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * How often a channel's value is sent.
 *
 * <p>What changes with a time constant tau has its corner at 1 / (2 pi tau); ten values for each turn of that frequency show its shape:
 * 10 / (2 pi tau), rounded up to 1, 2, 5, 10, 20 and so on (common practice, no source). What still swings faster than half the rate
 * is told as something slower (Nyquist).
 *
 * @param timeConstantSeconds time constant of the fastest credible change, s, if known
 * @param timeConstantSource  where it is from
 * @param suggestedHertz      the rate suggested, Hz; empty without a time constant
 * @param hertz               the rate: the one entered, else the one suggested, Hz; empty without both
 * @param fastestHertz        highest frequency that reaches the converter, Hz: of the sensor and of the input's filter the lower one
 * @param remarks             what is wrong with it, where its time constant, bandwidth or rate is entered; each the end of a sentence that
 *                            begins with the sensor
 */
public record UpdateRate(
        OptionalDouble timeConstantSeconds,
        String timeConstantSource,
        OptionalDouble suggestedHertz,
        OptionalDouble hertz,
        OptionalDouble fastestHertz,
        List<Remark> remarks) {

    /** Values for each turn of the corner frequency. */
    public static final double VALUES_PER_TURN = 10;

    private static final List<Integer> STEPS = List.of(1, 2, 5, 10);

    /** Rounding up passes over so much of a step, as a share: not by rounding of products alone. */
    private static final double NOISE_RATIO = 1e-9;

    /** What can be wrong with a rate. */
    public enum Kind {
        /** Fewer values are sent than the change needs. */
        TOO_SLOW,
        /** The sensor itself does not follow the change. */
        SENSOR_TOO_SLOW,
        /** What swings faster than half the rate is not filtered out. */
        ALIASED
    }

    /**
     * Something wrong with a rate.
     *
     * @param kind  what
     * @param words with its numbers
     */
    public record Remark(Kind kind, Text words) {}

    public UpdateRate {
        remarks = List.copyOf(remarks);
    }

    /**
     * The rate for a time constant: 10 / (2 pi tau), rounded up to 1, 2, 5, 10, ... Hz.
     *
     * @param timeConstantSeconds time constant of the fastest credible change, s, more than 0
     */
    public static double suggested(double timeConstantSeconds) {
        positive(timeConstantSeconds, "time constant");
        return usual(VALUES_PER_TURN / (2 * Math.PI * timeConstantSeconds));
    }

    /** The least of 1, 2, 5, 10, ... Hz that is more than a frequency, Hz. */
    public static double above(double hertz) {
        double usual = usual(hertz);
        return usual > hertz * (1 + NOISE_RATIO) ? usual : usual(hertz * (1 + 3 * NOISE_RATIO));
    }

    private static double usual(double least) {
        double decade = Math.pow(10, Math.max(0, Math.floor(Math.log10(least))));
        for (int step : STEPS) {
            if (least <= step * decade * (1 + NOISE_RATIO)) {
                return step * decade;
            }
        }
        return 10 * decade;
    }

    /** The rate of a channel. */
    public static UpdateRate of(SensorChannel channel, SignalTables tables) {
        return of(channel.sensor(), channel.pin(), tables);
    }

    /** The rate of a sensor that a pin reads. */
    public static UpdateRate of(Sensor read, Pin pin, SignalTables tables) {
        Optional<Measurement.Use> use = read.measurement().flatMap(Measurement::use);
        OptionalDouble entered = use.map(Measurement.Use::timeConstantSeconds).orElse(OptionalDouble.empty());
        String sensing = read.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        Optional<CitedValue> listed = tables.changeTime(sensing).map(each -> each.timeConstantSeconds());
        OptionalDouble tau = entered.isPresent()
                ? entered
                : listed.map(each -> OptionalDouble.of(each.value())).orElse(OptionalDouble.empty());
        String source = entered.isPresent()
                ? "entered"
                : listed.map(each -> each.citation().text()).orElse("not known");
        OptionalDouble suggested =
                tau.isPresent() ? OptionalDouble.of(suggested(tau.getAsDouble())) : OptionalDouble.empty();
        OptionalDouble chosen = use.map(Measurement.Use::updateHertz).orElse(OptionalDouble.empty());
        OptionalDouble hertz = chosen.isPresent() ? chosen : suggested;
        OptionalDouble sensor = use.map(Measurement.Use::bandwidthHertz).orElse(OptionalDouble.empty());
        OptionalDouble filter = pin.input().orElse(InputStage.UNKNOWN).filterHertz();
        OptionalDouble fastest = sensor.isPresent() && filter.isPresent()
                ? OptionalDouble.of(Math.min(sensor.getAsDouble(), filter.getAsDouble()))
                : sensor.isPresent() ? sensor : filter;
        return new UpdateRate(
                tau,
                source,
                suggested,
                hertz,
                fastest,
                entered.isPresent() || chosen.isPresent() || sensor.isPresent()
                        ? remarks(tau, suggested, hertz, sensor, fastest)
                        : List.of());
    }

    /** Whether something of that kind is wrong with it. */
    public boolean has(Kind kind) {
        return remarks.stream().anyMatch(each -> each.kind() == kind);
    }

    /** Whether what swings faster than half the rate reaches the converter (Nyquist); false where either is not known. */
    public boolean isAliased() {
        return isAliased(hertz, fastestHertz);
    }

    private static boolean isAliased(OptionalDouble hertz, OptionalDouble fastest) {
        return hertz.isPresent() && fastest.isPresent() && hertz.getAsDouble() <= 2 * fastest.getAsDouble();
    }

    private static List<Remark> remarks(
            OptionalDouble tau,
            OptionalDouble suggested,
            OptionalDouble hertz,
            OptionalDouble sensor,
            OptionalDouble fastest) {
        List<Remark> remarks = new ArrayList<>();
        if (tau.isPresent()) {
            double corner = 1 / (2 * Math.PI * tau.getAsDouble());
            if (hertz.getAsDouble() < suggested.getAsDouble()) {
                remarks.add(new Remark(
                        Kind.TOO_SLOW,
                        SignalTexts.text(
                                "rate.too-slow",
                                Formats.hertz(hertz.getAsDouble()),
                                Formats.seconds(tau.getAsDouble()),
                                Formats.hertz(suggested.getAsDouble()))));
            }
            if (sensor.isPresent() && sensor.getAsDouble() < corner) {
                remarks.add(new Remark(
                        Kind.SENSOR_TOO_SLOW,
                        SignalTexts.text(
                                "rate.sensor-too-slow",
                                Formats.hertz(sensor.getAsDouble()),
                                Formats.seconds(tau.getAsDouble()),
                                Formats.hertz(corner))));
            }
        }
        if (isAliased(hertz, fastest)) {
            remarks.add(new Remark(
                    Kind.ALIASED,
                    SignalTexts.text(
                            "rate.aliased", Formats.hertz(hertz.getAsDouble()), Formats.hertz(fastest.getAsDouble()))));
        }
        return remarks;
    }
}
