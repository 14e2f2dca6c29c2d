package org.ohmloom.signal.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.tables.WireTables;

/** How often values are sent: by the formula with visible arithmetic; the two check ranges are common practice without a source. */
@BesideOthers
class UpdateRateTest {
    private static final WireTables TABLES = WireTables.bundled();

    /** 10 / (2 pi tau): 1.59 at 1 s, 15.9 at 0.1 s, 79.6 at 20 ms, 0.05 at 30 s; 10 exactly at 1 / (2 pi) s. */
    @ParameterizedTest
    @CsvSource({"30,1", "2,1", "1,2", "0.5,5", "0.3,10", "0.159154943091895336,10", "0.1,20", "0.02,100", "0.0008,2000"
    })
    void theRateIsRoundedUpToOneTwoFiveTen(double timeConstantSeconds, double hertz) {
        assertEquals(hertz, UpdateRate.suggested(timeConstantSeconds), 1e-9 * hertz);
    }

    /** Common practice, no source: 1 to 5 Hz. */
    @Test
    void aFluidsTemperatureIsSentOneToFiveTimesInASecond() {
        double hertz = of(Sensor.Kind.THERMISTOR, Optional.empty(), 0).hertz().orElseThrow();
        assertTrue(hertz >= 1 && hertz <= 5, hertz + " Hz");
        for (double tau : new double[] {0.4, 1, 5}) {
            assertTrue(UpdateRate.suggested(tau) >= 1 && UpdateRate.suggested(tau) <= 5);
        }
    }

    /** Common practice, no source: 50 to 100 Hz. */
    @Test
    void aPressureThatCanFallSuddenlyIsSentFiftyToAHundredTimesInASecond() {
        double hertz = of(Sensor.Kind.RATIOMETRIC, Optional.empty(), 0).hertz().orElseThrow();
        assertTrue(hertz >= 50 && hertz <= 100, hertz + " Hz");
    }

    @Test
    void aSensorOfUnknownSortWithoutATimeConstantHasNoRate() {
        assertTrue(of(Sensor.Kind.OTHER, Optional.empty(), 0).hertz().isEmpty());
    }

    /** 20 Hz in the signal needs more than 40 values in a second (a data logging course's own example of Nyquist's rule). */
    @Test
    void whatSwingsFasterThanHalfTheRateIsTold() {
        assertEquals(Set.of(UpdateRate.Kind.ALIASED), kinds(of(Sensor.Kind.OTHER, use(none(), 20, 40), 0)));
        assertEquals(Set.of(), kinds(of(Sensor.Kind.OTHER, use(none(), 20, 41), 0)));
        // A filter of 15 Hz lets 20 Hz be no concern at 40 values in a second.
        assertEquals(Set.of(), kinds(of(Sensor.Kind.OTHER, use(none(), 20, 40), 15)));
    }

    /** tau = 20 ms has its corner at 7.96 Hz and wants 100 Hz. */
    @Test
    void aSlowSensorAndASlowRateAreTold() {
        assertEquals(
                Set.of(UpdateRate.Kind.SENSOR_TOO_SLOW, UpdateRate.Kind.TOO_SLOW),
                kinds(of(Sensor.Kind.OTHER, use(OptionalDouble.of(0.02), 5, 50), 0)));
        assertEquals(Set.of(), kinds(of(Sensor.Kind.OTHER, use(OptionalDouble.of(0.02), 10, 100), 0)));
    }

    private static Set<UpdateRate.Kind> kinds(UpdateRate rate) {
        return rate.remarks().stream().map(UpdateRate.Remark::kind).collect(Collectors.toSet());
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private static Optional<Measurement.Use> use(OptionalDouble tau, double bandwidthHertz, double updateHertz) {
        return Optional.of(new Measurement.Use(
                none(), none(), tau, OptionalDouble.of(bandwidthHertz), OptionalDouble.of(updateHertz)));
    }

    private static UpdateRate of(Sensor.Kind kind, Optional<Measurement.Use> use, double filterHertz) {
        Measurement measurement = Measurement.of(
                        "Quantity", "bar", 0, 10, new Calibration.VoltageLine(0.5, 4.5, none()))
                .used(use);
        Sensor sensor = new Sensor(kind, 0, none(), Optional.of(measurement));
        InputStage stage =
                InputStage.UNKNOWN.withFilterHertz(filterHertz > 0 ? OptionalDouble.of(filterHertz) : none());
        Pin pin = Pin.of("A1", PinRole.ANALOGUE_INPUT).reading(Optional.of(stage));
        ControlUnit unit = new ControlUnit(List.of(pin), 0, none(), none());
        return UpdateRate.of(
                new SensorChannel(
                        "Channel",
                        Component.of("B1", "Sensor", sensor),
                        sensor,
                        Component.of("U1", "Unit", unit),
                        unit,
                        pin,
                        Optional.empty(),
                        true,
                        true),
                TABLES.signals());
    }
}
