package org.ohmloom.ground.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ResistanceCurve;

/** Sensor errors worked by hand or in a textbook, against those out of the solved network. */
@BesideOthers
class SensorWorkedExamplesTest {

    /** The network is solved to ten digits; parts of a line are exact. */
    private static final double EXACT = 1e-8;

    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final OptionalDouble BUFFERED = OptionalDouble.of(0);

    private static final Measurement RATIOMETRIC =
            Measurement.of("Oil pressure", "bar", 0, 10, new Calibration.RatiometricLine(0.1, 0.9, BUFFERED));
    private static final Measurement ABSOLUTE =
            Measurement.of("Oil pressure", "bar", 0, 10, new Calibration.VoltageLine(0.5, 4.5, BUFFERED));
    private static final Pin SCALED = SensorSketch.analogue(InputStage.Scale.RATIOMETRIC, NONE);
    private static final Pin FIXED = SensorSketch.analogue(InputStage.Scale.FIXED, NONE);

    private static double part(SensorBudget budget, Disturbance disturbance) {
        return budget.known().stream()
                .filter(part -> part.named().equals(disturbance.words()))
                .mapToDouble(SensorBudget.ErrorPart::error)
                .sum();
    }

    /** SE-1: 0-10 bar, 10 to 90 % of 5 V: 2.5 V is 10 x (2.5 - 0.5) / 4 = 5 bar (maker's guide to ratiometric sensors). */
    @Test
    void half_the_supply_of_a_ratiometric_sensor_is_the_middle_of_its_span() {
        LineChannel channel = new LineChannel(RATIOMETRIC, true, 5, Optional.empty());
        Conditions ideal = new Conditions(5, 5, 0, 0, 0, 0, 0, false, 25, true);
        assertEquals(2.5, channel.circuit(5, ideal).pinVolts(), EXACT);
        assertEquals(5, channel.reading(5, ideal), EXACT);
    }

    /** SE-2: 0-100 psi gauge, 0.5 to 4.5 V: 2.5 V is 100 x 2 / 4 = 50 psi (a forum of an electronics distributor, thread 4500). */
    @Test
    void two_and_a_half_volts_of_a_half_to_four_and_a_half_volt_sensor_are_the_middle_of_its_span() {
        Measurement psi = Measurement.of("Pressure", "psi", 0, 100, new Calibration.VoltageLine(0.5, 4.5, BUFFERED));
        LineChannel channel = new LineChannel(psi, false, Double.NaN, Optional.empty());
        Conditions ideal = new Conditions(Double.NaN, Double.NaN, 0, 0, 0, 0, 0, false, 25, true);
        assertEquals(2.5, channel.circuit(50, ideal).pinVolts(), EXACT);
        assertEquals(50, channel.reading(50, ideal), EXACT);
    }

    /** GE-5 with GF-13: a fan of 20 A shares 2 m of 2.5 mm2 (7.6 mohm/m): 20 x 2 x 0.0076 = 304 mV; on a 4 V span 7.6 % of it. */
    @Test
    void twenty_amperes_on_two_metres_of_shared_return_are_seven_point_six_percent_of_a_four_volt_span() {
        SensorBudget budget =
                SensorSketch.of(ABSOLUTE, FIXED, 0, 0.05, 2 * 0.0076).fan(20).budget();
        // the stub of the unit's sensor return carries 20 A x 0; the unit's other wires make no difference
        assertEquals(0.304 / 4 * 10, part(budget, Disturbance.OTHER_RETURN), 1e-4);
        assertEquals(0.076, budget.knownError() / budget.span(), 1e-5);
        assertEquals(0.1, budget.allowed(), EXACT);
        assertTrue(budget.isOver());
    }

    /** GE-7 with GF-13: 50 mV on a 0-10 bar sensor of 0.5 to 4.5 V: 0.05 / 4 x 10 = 0.125 bar, 1.25 % of full scale. */
    @Test
    void fifty_millivolts_of_ground_offset_are_an_eighth_of_a_bar() {
        // 5 A over 10 mohm
        SensorBudget budget =
                SensorSketch.of(ABSOLUTE, FIXED, 0, 0.05, 0.010).fan(5).budget();
        assertEquals(0.125, budget.knownError(), 1e-4);
        assertEquals(0.0125, budget.knownError() / budget.span(), 1e-5);
        assertEquals(
                List.of("return offset"),
                budget.known().stream().map(SensorBudget.ErrorPart::name).toList());
    }

    /**
     * GF-14: a ratiometric sensor takes 10 mA over 0.5 ohm of its own return: error Is Rg (1 - ratio) / (0.8 Vref) x span, largest
     * where the ratio is smallest: 0.005 x 0.9 / 4 x 10 = 0.01125 bar.
     */
    @Test
    void a_ratiometric_sensor_errs_by_the_drop_of_its_own_current_on_its_return() {
        SensorBudget budget = SensorSketch.of(RATIOMETRIC, SCALED, 0.010, SensorSketch.STUB_OHMS, 0.5)
                .budget();
        assertEquals(0, budget.reading(), EXACT);
        assertEquals(0.010 * 0.5 * 0.9 / 4 * 10, part(budget, Disturbance.OWN_RETURN), 1e-6);
        assertEquals(part(budget, Disturbance.OWN_RETURN), budget.knownError(), 1e-6);
    }

    /** A droop of 10 mA x 1 ohm on the feed takes ratio x 10 mV: at 10 bar 0.9 x 0.010 / 4 x 10 = 0.0225 bar low. */
    @Test
    void droop_of_the_feed_makes_a_ratiometric_sensor_read_low() {
        SensorBudget budget = SensorSketch.of(RATIOMETRIC, SCALED, 0.010, 1, SensorSketch.STUB_OHMS)
                .budget();
        assertEquals(10, budget.reading(), EXACT);
        assertEquals(-0.9 * 0.010 / 4 * 10, part(budget, Disturbance.FEED), 1e-6);
    }

    /** An input of 100 kohm behind an output of 1 kohm takes 1/101 of the signal. At 10 bar: 4.5 / 101 V / 4 V x 10 bar. */
    @Test
    void an_input_loads_the_output_of_a_sensor_by_their_divider() {
        Measurement weak = Measurement.of(
                "Oil pressure", "bar", 0, 10, new Calibration.VoltageLine(0.5, 4.5, OptionalDouble.of(1000)));
        Pin loading = SensorSketch.analogue(InputStage.Scale.FIXED, OptionalDouble.of(100e3));
        SensorBudget budget = SensorSketch.of(weak, loading, 0, SensorSketch.STUB_OHMS, SensorSketch.STUB_OHMS)
                .budget();
        assertEquals(-4.5 / 101 / 4 * 10, part(budget, Disturbance.LOAD), 1e-6);
        assertEquals(-0.1114, budget.knownError(), 0.0001);
    }

    /** SE-9: 10 kohm at 25 deg C with 10 kohm to 5 V: 5 x 10 / 20 = 2.5 V. */
    @Test
    void a_thermistor_as_large_as_its_pull_up_gives_half_the_voltage() {
        Calibration.Beta beta = new Calibration.Beta(10e3, 25, 3435.4);
        ResistanceChannel channel = new ResistanceChannel(
                Measurement.of("Air", "°C", -20, 110, beta), beta, new InputCircuit.PullUp(5, 10e3));
        Conditions ideal = new Conditions(5, 5, 0, 0, 0, 0, 0, false, 25, true);
        assertEquals(2.5, channel.circuit(25, ideal).pinVolts(), EXACT);
        assertEquals(25, channel.reading(25, ideal), EXACT);
        assertEquals(110, channel.reading(110, ideal), 1e-6);
    }

    /** Every part together is what the whole network, solved anew with the sensor's resistance there, gives the unit to read. */
    @Test
    void the_parts_of_a_thermistor_sum_to_what_the_whole_network_says() {
        Calibration.Beta beta = new Calibration.Beta(2500, 20, 3900);
        Measurement measurement = Measurement.of("Coolant", "°C", -20, 120, beta);
        InputStage input = InputStage.UNKNOWN;
        SensorSketch sketch = SensorSketch.of(
                        measurement, SensorSketch.pulledUp(PinRole.THERMISTOR_INPUT, 1000, input), 0, 0.8, 0.020)
                .fan(8);
        SensorBudget budget = sketch.budget();
        double volts = sketch.solvedPinVolts(beta.ohms(budget.reading()));
        double read = beta.value(1000 * volts / (5 - volts));
        assertEquals(read - budget.reading(), budget.knownError(), 1e-7);
        assertTrue(Math.abs(budget.knownError()) > 1, "an offset of 160 mV is felt: " + budget);
        assertTrue(budget.known().size() >= 2);
    }

    /** Forty thermistors drawn at random with a fixed seed: pull-up, curve, leads, shared return and what flows there. */
    @Test
    void the_parts_sum_to_the_whole_network_for_thermistors_drawn_at_random() {
        Random random = new Random(404);
        for (int k = 0; k < 40; k++) {
            Calibration.Beta beta =
                    new Calibration.Beta(100 + 20_000 * random.nextDouble(), 25, 2500 + 2000 * random.nextDouble());
            Measurement measurement = Measurement.of("Coolant", "°C", -20, 120, beta);
            double pullUpOhms = 200 + 10_000 * random.nextDouble();
            SensorSketch sketch = SensorSketch.of(
                            measurement,
                            SensorSketch.pulledUp(PinRole.THERMISTOR_INPUT, pullUpOhms, InputStage.UNKNOWN),
                            0,
                            0.001 + random.nextDouble(),
                            0.001 + 0.05 * random.nextDouble())
                    .fan(10 * random.nextDouble());
            SensorBudget budget = sketch.budget();
            double volts = sketch.solvedPinVolts(beta.ohms(budget.reading()));
            double read = beta.value(pullUpOhms * volts / (5 - volts));
            assertEquals(read - budget.reading(), budget.knownError(), 1e-6, budget::toString);
        }
    }

    /**
     * Lead resistance: 2 x 0.5 ohm in series with 200 ohm of a table of 1 ohm for each degree: 1 degree. Self-heating: 5 V behind
     * 200 ohm give 200 ohm 2.5 V x 12.5 mA = 31.25 mW, over 10 mW/K 3.125 K; its resistance rises with it.
     */
    @Test
    void a_two_wire_sensor_reads_its_leads_and_its_own_warmth() {
        Calibration.ResistanceTable table = new Calibration.ResistanceTable(
                List.of(new Calibration.ResistancePoint(0, 100), new Calibration.ResistancePoint(300, 400)));
        Measurement measurement = Measurement.of("Winding", "°C", 0, 200, table);
        Pin input = SensorSketch.pulledUp(PinRole.THERMISTOR_INPUT, 200, InputStage.UNKNOWN);
        SensorBudget cold = SensorSketch.of(measurement, input, 0, 0.5, 0.5).budget();
        assertEquals(1, cold.knownError(), 1e-5);
        SensorBudget warm = SensorSketch.of(
                        measurement.dissipating(OptionalDouble.of(0.010)),
                        input,
                        0,
                        SensorSketch.STUB_OHMS,
                        SensorSketch.STUB_OHMS)
                .budget();
        double at = warm.reading();
        double own = at + warm.knownError();
        double amps = 5 / (200 + table.ohms(own));
        assertEquals(amps * amps * table.ohms(own) / 0.010, warm.knownError(), 1e-4);
        assertEquals(3.125, warm.knownError(), 0.01);
    }

    /** Its low level is 0.9 V of offset and 5 x 0.1 / 1000.1 V: above a falling threshold of 0.8 V it never reads as closed. */
    @Test
    void a_switch_to_a_ground_that_is_lifted_above_the_threshold_is_unusable() {
        Measurement door = Measurement.of("Door", "-", 0, 1, new Calibration.SwitchContact(0.1, NONE));
        InputStage input = InputStage.UNKNOWN.withThresholds(OptionalDouble.of(2), OptionalDouble.of(0.8));
        Pin pin = SensorSketch.pulledUp(PinRole.SWITCH_TO_GROUND_INPUT, 1000, input);
        SensorBudget lifted = SensorSketch.of(door, pin, 0, SensorSketch.STUB_OHMS, 0.045)
                .fan(20)
                .budget();
        assertTrue(lifted.unusable().isPresent());
        assertEquals("V", lifted.quantityUnit());
        assertEquals(0.9, lifted.knownError(), 0.001);
        assertEquals(0.8 - 5 * 0.1 / 1000.1, lifted.allowed(), 1e-9);
        SensorBudget sound = SensorSketch.of(door, pin, 0, SensorSketch.STUB_OHMS, 0.020)
                .fan(20)
                .budget();
        assertFalse(sound.isOver());
        assertEquals(0.4, sound.knownError(), 0.001);
    }

    /** An open collector of 0.4 V with 0.3 V of offset is at 0.7 V; the low level of 0.4 V had 0.4 V to a threshold of 0.8 V. */
    @Test
    void a_pulse_sensor_loses_its_threshold_margin_to_the_offset() {
        Measurement speed = Measurement.of(
                "Speed",
                "rpm",
                0,
                6000,
                new Calibration.PulseLevels(0.4, NONE, OptionalDouble.of(0), OptionalDouble.of(0.1)));
        InputStage input = InputStage.UNKNOWN.withThresholds(OptionalDouble.of(2), OptionalDouble.of(0.8));
        Pin pin = SensorSketch.pulledUp(PinRole.FREQUENCY_INPUT, 2200, input);
        SensorBudget budget = SensorSketch.of(speed, pin, 0.012, SensorSketch.STUB_OHMS, 0.015)
                .fan(20)
                .budget();
        assertEquals(0.4, budget.reading(), EXACT);
        assertEquals(0.4, budget.allowed(), EXACT);
        assertEquals(0.3, budget.knownError(), 0.001);
    }

    /**
     * 20 mA through a shunt of 250 ohm: 5 V. A transmitter of at least 6 V on 5 V: (5 - 6) V leave nothing. One of at least 2 V
     * gets (5 - 2) / 250 = 12 mA: half the span of 4 to 20 mA.
     */
    @Test
    void a_current_loop_short_of_voltage_gives_what_supply_and_shunt_let_through() {
        Pin pin = Pin.of("A1", PinRole.ANALOGUE_INPUT)
                .reading(Optional.of(InputStage.UNKNOWN.withShuntOhms(OptionalDouble.of(250))));
        Measurement level =
                Measurement.of("Level", "%", 0, 100, new Calibration.CurrentLine(0.004, 0.020, OptionalDouble.of(2)));
        SensorBudget budget = SensorSketch.of(level, pin, 0, SensorSketch.STUB_OHMS, SensorSketch.STUB_OHMS)
                .budget();
        assertEquals(100, budget.reading(), EXACT);
        assertEquals(-50, budget.knownError(), 1e-4);
        assertTrue(budget.unusable().isPresent());
        Measurement modest =
                Measurement.of("Level", "%", 0, 100, new Calibration.CurrentLine(0.001, 0.005, OptionalDouble.of(2)));
        assertEquals(0, SensorSketch.of(modest, pin, 0, 5, 1).fan(10).budget().knownError(), EXACT);
    }

    /** What an undisturbed channel reads is the value, for every kind. */
    @Test
    void without_disturbance_every_channel_reads_the_true_value() {
        Calibration.SteinhartHart curve = new Calibration.SteinhartHart(8.785205e-4, 2.529918e-4, 1.862278e-7);
        ResistanceCurve same = curve;
        Conditions ideal = new Conditions(5, 5, 0, 0, 0, 0, 0, false, 40, true);
        List<Channel> channels = List.of(
                new LineChannel(RATIOMETRIC, true, 5, Optional.empty()),
                new LineChannel(RATIOMETRIC, false, 5, Optional.empty()),
                new LineChannel(ABSOLUTE, true, 5, Optional.empty()),
                new LineChannel(ABSOLUTE, false, 5, Optional.empty()),
                new ResistanceChannel(
                        Measurement.of("Air", "°C", -20, 110, curve), same, new InputCircuit.PullUp(5, 1000)),
                new ThermocoupleChannel(
                        Measurement.of(
                                "Exhaust",
                                "°C",
                                -100,
                                1000,
                                new Calibration.Thermocouple(Calibration.Thermocouple.Type.K, Optional.empty(), NONE)),
                        40,
                        Optional.empty()));
        for (Channel channel : channels) {
            for (double value : channel.values()) {
                assertEquals(value, channel.reading(value, ideal), 1e-6, channel.getClass()::getSimpleName);
            }
        }
    }
}
