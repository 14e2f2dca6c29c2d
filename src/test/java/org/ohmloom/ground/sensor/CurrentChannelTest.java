package org.ohmloom.ground.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.words.Text;

/** A transmitter of 4 to 20 mA for -50 to 150 degC that needs 10 V, at a shunt of 250 ohm: 8 mA for every 100 K from 4 mA. */
class CurrentChannelTest {
    private static final double EXACT = 1e-9;
    private static final Calibration.CurrentLine LINE =
            new Calibration.CurrentLine(0.004, 0.020, OptionalDouble.of(10));
    private static final CurrentChannel CHANNEL =
            new CurrentChannel(Measurement.of("Coolant", "°C", -50, 150, LINE), LINE, 250);

    private static Conditions fed(double supplyVolts, double leadOhms, double inputSiemens) {
        return new Conditions(5, supplyVolts, 0, 0, leadOhms, 0, inputSiemens, false, 20, true);
    }

    @Test
    void endsAndMiddleAreRead() {
        assertEquals(List.of(-50.0, 50.0, 150.0), CHANNEL.values());
        for (double value : CHANNEL.values()) {
            assertEquals(value, CHANNEL.reading(value, fed(24, 10, 0)), EXACT);
        }
        assertEquals("°C", CHANNEL.unit());
    }

    @Test
    void theVoltageAtThePinIsCurrentTimesShunt() {
        // 50 degC: 12 mA x 250 ohm = 3 V; 200 K over 16 mA x 250 ohm = 4 V: 50 K for each volt
        InputCircuit circuit = CHANNEL.circuit(50, fed(24, 10, 0));
        assertEquals(3, circuit.openVolts(), EXACT);
        assertEquals(250, circuit.ohms(), EXACT);
        assertEquals(50, CHANNEL.perVoltAtPin(50, fed(24, 10, 0)), EXACT);
    }

    @Test
    void anInputBesideTheShuntTakesAPartOfTheCurrent() {
        // 25 kohm beside 250 ohm: 12 mA x 100 / 101 = 11.881 mA, read as -50 + 7.881 / 16 x 200
        assertEquals(-50 + (12.0 * 100 / 101 - 4) / 16 * 200, CHANNEL.reading(50, fed(24, 10, 1.0 / 25_000)), EXACT);
        assertEquals(
                "250 Ω shunt beside 25 kΩ input: 248 Ω",
                CHANNEL.formula(Disturbance.LOAD, 50, fed(24, 10, 0), fed(24, 10, 1.0 / 25_000))
                        .english());
    }

    @Test
    void shortOfVoltageItGivesWhatWireAndShuntLetThrough() {
        // (14 - 10) V over 50 + 250 ohm: 13.33 mA, enough for 50 degC (12 mA) and not for 150 degC (20 mA)
        Conditions weak = fed(14, 50, 0);
        assertEquals(50, CHANNEL.reading(50, weak), EXACT);
        assertEquals(Optional.empty(), CHANNEL.unusable(50, weak));
        assertEquals(-50 + (4.0 / 0.3 - 4) / 16 * 200, CHANNEL.reading(150, weak), EXACT);
        assertEquals(
                Optional.of("the transmitter is short of voltage: 14 V for it, wire and shunt"),
                CHANNEL.unusable(150, weak).map(Text::english));
        // below 10 V nothing: 0 mA lie 4 mA, 50 K, below the lowest value
        assertEquals(-100, CHANNEL.reading(150, fed(9, 50, 0)), EXACT);
    }

    @Test
    void aSupplyNobodyKnowsLeavesTheCurrentAlone() {
        assertEquals(150, CHANNEL.reading(150, fed(Double.NaN, 50, 0)), EXACT);
        assertEquals(Optional.empty(), CHANNEL.unusable(150, fed(Double.NaN, 50, 0)));
    }
}
