package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Transients: overload, repeated pulses, and published ignition tests as inequalities. */
class OverloadTest {
    private static final double KELVIN = 0.05;
    private static final double INCH = 25.4;

    private final RoundWire wire = new RoundWire(7.6e-3, 2.27, 2.2, 3.6, RoundWire.USUAL_INSULATION);
    private final OpenAir room = OpenAir.seaLevel(30);
    private final Transient moving = new Transient(HeatBalance.bare(wire, room));

    @Test
    void afterALongTimeTheTransientIsTheSteadyState() {
        assertEquals(HeatBalance.bare(wire, room).at(40).celsius(), moving.celsiusAfter(30, 40, 3600), KELVIN);
    }

    @Test
    void theTimeToALimitAndTheTemperatureAfterItAgree() {
        double seconds = moving.timeTo(60, 60, 105).lumpedSeconds().orElseThrow();
        assertEquals(105, moving.celsiusAfter(60, 60, seconds), KELVIN);
        assertTrue(moving.timeTo(60, 20, 105).seconds().isEmpty(), "20 A never brings it to 105 C");
        assertEquals(0, moving.timeTo(110, 60, 105).seconds().orElseThrow(), 0);
    }

    @Test
    void aShortEventIsJudgedOnTheCopperAlone() {
        // IEC 60949: t = (226 x 2.27/500)^2 x ln((234.5 + 160)/(234.5 + 70)) = 0.2726 s
        TimeToLimit time = moving.timeTo(70, 500, 160);
        assertEquals(
                Math.pow(226 * 2.27 / 500, 2) * Math.log(394.5 / 304.5),
                time.seconds().orElseThrow(),
                1e-9);
        assertTrue(time.lumpedSeconds().orElseThrow() > time.adiabaticSeconds());
    }

    @Test
    void fastPulsesHeatLikeTheirRootMeanSquareAndSlowOnesPeakAboveIt() {
        // 40 A for half of the time: 28.28 A in the root mean square
        double steady = HeatBalance.bare(wire, room).at(40 / Math.sqrt(2)).celsius();
        double tau = moving.timeConstantSeconds(steady);
        double fast = moving.peakCelsius(pulses(tau / 100), steady);
        assertEquals(steady, fast, 0.5);
        double slow = moving.peakCelsius(pulses(4 * tau), steady);
        double on = HeatBalance.bare(wire, room).at(40).celsius();
        assertTrue(slow > steady + 5 && slow < on, steady + " < " + slow + " < " + on);
        assertEquals(on, moving.peakCelsius(pulses(40 * tau), steady), 0.5);
    }

    private static List<Transient.Stretch> pulses(double periodSeconds) {
        return List.of(new Transient.Stretch(periodSeconds / 2, 40), new Transient.Stretch(periodSeconds / 2, 0));
    }

    @Test
    void whereCablesWereSeenToIgniteTheConductorIsFarBeyondItsInsulation() {
        // Song et al. 2026: 2.5 mm2 in polyethylene burns steadily from 180 A: no steady temperature below melting
        assertTrue(HeatBalance.bare(wire, OpenAir.seaLevel(20))
                .at(TransientValidation.value("ignition"))
                .runaway());
        // Lawson and McGuire 1953: PVC 3/.029 ignites only above 55 A: beyond 250 C, where PVC has long decomposed
        double strandMm = 0.029 * INCH;
        double areaMm2 = 3 * Math.PI / 4 * strandMm * strandMm;
        RoundWire pvc = new RoundWire(1.02 / 58 / areaMm2, areaMm2, 2.155 * strandMm, 3.2, RoundWire.USUAL_INSULATION);
        double celsius = HeatBalance.bare(pvc, OpenAir.seaLevel(20))
                .at(TransientValidation.value("pvc-ignition"))
                .celsius();
        assertTrue(celsius > 250, "PVC 3/.029 at 55 A: " + celsius);
        // the rubber cable, one solid strand of .044 in, only above 35 A
        double solidMm = 0.044 * INCH;
        double solidMm2 = Math.PI / 4 * solidMm * solidMm;
        RoundWire rubber = new RoundWire(1.02 / 58 / solidMm2, solidMm2, solidMm, 3.2, RoundWire.USUAL_INSULATION);
        assertTrue(HeatBalance.bare(rubber, OpenAir.seaLevel(20))
                        .at(TransientValidation.value("rubber-ignition"))
                        .celsius()
                > 150);
    }

    @Test
    void foamRoundACableWarmsItAsMeasuredWithinWhatTheRigTells() {
        // Two 14 AWG conductors at 19.82 A, 84.2 C in foam after 2 h in 18.9 C air. 8 K m/W by the amateur's own
        // points:
        // 2 I2 R(T) = 2 x 19.82^2 x 8.44e-3 x 318.7/254.5 = 8.3 W; 65.3 K / 8.3 W = 7.9 K m/W.
        RoundWire conductor = FreeAirValidation.solid("14", 3.3, 1, 1.02);
        double watts = 2 * conductor.heatWattsPerMetre(19.82, TransientValidation.value("foam-20"));
        assertEquals(8.0, (TransientValidation.value("foam-20") - 18.9) / watts, 0.5);
        // free air would leave it far cooler; the second point, not settled, is hotter than the first by more than half
        assertTrue(HeatBalance.bare(conductor, OpenAir.seaLevel(18.9))
                        .at(19.82 * Math.sqrt(2))
                        .celsius()
                < TransientValidation.value("foam-20"));
        assertTrue(TransientValidation.value("foam-30") - 16.7 > 1.5 * (TransientValidation.value("foam-20") - 18.9));
    }

    @Test
    void skinDepthOfCopperComesOutAsTabulated() {
        // depth = sqrt(rho/(pi f mu0)) with 1/58 ohm mm2/m: 66.09 mm at 1 Hz, 2.09 at 1 kHz, 0.4673 at 20 kHz
        assertEquals(66.09, SkinEffect.depthMm(1, 20), 0.01);
        assertEquals(2.09, SkinEffect.depthMm(1000, 20), 0.001);
        assertEquals(0.4673, SkinEffect.depthMm(20_000, 20), 0.0001);
        // published to two figures for 300 K
        assertEquals(8.5, SkinEffect.depthMm(60, 20), 0.05);
        assertEquals(0.15, SkinEffect.depthMm(200_000, 20), 0.005);
    }

    @Test
    void skinEffectDoesNotMatterInAFanFeedAndDoesInAThickCableAtHighFrequency() {
        // 4 mm2 at 20 kHz: radius 1.2 mm against a depth of 0.47 mm; 300 Hz: 3.8 mm
        assertTrue(SkinEffect.extraHeatFraction(300, 0.5, 4.71e-3) < 0.01);
        assertTrue(SkinEffect.extraHeatFraction(20_000, 0.5, 4.71e-3) > 0.2);
        assertEquals(0, SkinEffect.extraHeatFraction(20_000, 1, 4.71e-3), 0);
        // IEC 60287-1-1: x2 = 8 pi x 50 e-7 / 0.1e-3 = 1.2566, ys = 1.579/(192 + 1.263) = 0.00817
        assertEquals(1.00817, SkinEffect.resistanceRatio(50, 0.1e-3), 1e-5);
    }
}
