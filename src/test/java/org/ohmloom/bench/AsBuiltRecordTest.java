package org.ohmloom.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.model.Element;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.units.Gauge;

/** Readings held against the limits of the tests of the teaching example. */
class AsBuiltRecordTest {
    private static final double EXACT = 1e-9;
    private static final String G1 = "G1, terminal of W8";
    private static final String BT = "BT1.-, terminal of W8";

    private final List<Element> readings = new ArrayList<>();

    private Reading reading(Measured measured, OptionalDouble celsius, Optional<String> serial, Optional<String> at) {
        Reading reading = new Reading(
                new ReadingId("BR" + (readings.size() + 1)),
                measured,
                serial,
                Optional.empty(),
                celsius,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                at,
                Optional.empty(),
                false);
        readings.add(reading);
        return reading;
    }

    private Judgement judged(Measured measured) {
        Reading reading = reading(measured, OptionalDouble.empty(), Optional.empty(), Optional.empty());
        return record().of(reading).orElseThrow();
    }

    private AsBuiltRecord record() {
        BenchInput teaching = AnalysedExamples.of("teaching").evidence().bench();
        return new BenchResults(new BenchInput(
                        teaching.harness().withAll(readings),
                        teaching.tables(),
                        teaching.basis(),
                        teaching.routes(),
                        teaching.ratings(),
                        teaching.solutions()))
                .record();
    }

    /** W8 is 0.5 m of 4 mm2; ISO 6722-1 lists 4.71 milliohm per metre at 20 C; four wires add 1 milliohm. */
    @Test
    void theLimitOfAWireIsItsListedMaximumAtTheTemperatureOfTheMeasurementAndTheInstrument() {
        Reading cold =
                reading(new Measured.Path(BT, G1, 0.00336), OptionalDouble.empty(), Optional.empty(), Optional.empty());
        Reading warm = reading(
                new Measured.Path(G1, BT, 0.00336), OptionalDouble.of(60), Optional.of("0002"), Optional.empty());
        Judgement atTwenty = record().of(cold).orElseThrow();
        Judgement atSixty = record().of(warm).orElseThrow();

        assertEquals(0.5 * 4.71e-3 + 1e-3, atTwenty.limit().orElseThrow().canonical(), EXACT);
        assertEquals(Verdict.FAILED, atTwenty.verdict());
        // (234.5 + 60)/254.5 = 1.1572 times as much copper resistance; measured from the other end it is the same way.
        assertEquals(
                0.5 * 4.71e-3 * (234.5 + 60) / 254.5 + 1e-3,
                atSixty.limit().orElseThrow().canonical(),
                EXACT);
        assertEquals(Verdict.PASSED, atSixty.verdict());
    }

    /** W5, 1.5 m of 1.5 mm2, has 19.05 milliohm; nine tenths of it less 1 milliohm are 16.145. Without a typical share 15 pass. */
    @Test
    void aTypicalShareOfTheListedResistanceIsALowerLimitAndWithoutItThereIsNone() {
        Reading low =
                reading(new Measured.OfWire("W5", 0.015), OptionalDouble.empty(), Optional.empty(), Optional.empty());
        assertEquals(Verdict.PASSED, record().of(low).orElseThrow().verdict());

        BenchInput teaching = AnalysedExamples.of("teaching").evidence().bench();
        Harness harness = teaching.harness().withAll(readings);
        FabricationRules typical = harness.rules().fabricationRules().withTypicalFraction(OptionalDouble.of(0.9));
        BenchInput asked = new BenchInput(
                harness.withRules(harness.rules().withFabrication(typical)),
                teaching.tables(),
                teaching.basis(),
                teaching.routes(),
                teaching.ratings(),
                teaching.solutions());
        Judgement judgement = new BenchResults(asked).record().of(low).orElseThrow();
        assertEquals(Verdict.FAILED, judgement.verdict());
        assertEquals(0.9 * 19.05e-3 - 1e-3, judgement.limit().orElseThrow().canonical(), EXACT);
        assertEquals("at least 16.1 mΩ", judgement.limitText());
        assertTrue(judgement.because().startsWith("typically at least 90 % of listed W5"), judgement.because());

        ContinuityTest test = TestPlan.of(asked).continuity().stream()
                .filter(each ->
                        each.net().wires().size() == 1 && each.leastOhms().isPresent())
                .findFirst()
                .orElseThrow();
        double wires = test.path().wireOhms().orElseThrow();
        assertEquals(
                Math.max(0, 0.9 * wires - test.errorOhms()), test.leastOhms().orElseThrow(), EXACT);
    }

    @Test
    void anInstrumentWithALargerErrorWidensTheLimitByIt() {
        Reading coarse = new Reading(
                new ReadingId("BR9"),
                new Measured.OfWire("W8", 0.03),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of(Reading.Method.TWO_WIRE),
                Optional.empty(),
                OptionalDouble.of(0.1),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
        readings.add(coarse);
        Judgement judgement = record().of(coarse).orElseThrow();

        assertEquals(0.5 * 4.71e-3 + 0.1, judgement.limit().orElseThrow().canonical(), EXACT);
        assertEquals(Verdict.PASSED, judgement.verdict());
        assertFalse(judgement.source().contains("two-wire-error"), judgement.source());
    }

    @Test
    void aThirdLessThanTheCopperHasIsNotToBeBelieved() {
        // W5, 1.5 m of 1.5 mm2, has 19.05 milliohm.
        Judgement low = judged(new Measured.OfWire("W5", 0.012));
        Judgement usual = judged(new Measured.OfWire("W5", 0.018));

        assertEquals(0.7 * 19.05e-3 - 1e-3, low.implausible().orElseThrow().canonical(), EXACT);
        assertTrue(usual.implausible().isEmpty());
    }

    @Test
    void aLaterReadingOfTheSameThingOnTheSameHarnessCountsInstead() {
        Measured bad = new Measured.Path(BT, G1, 0.02);
        Measured good = new Measured.Path(BT, G1, 0.003);
        Reading before = reading(bad, OptionalDouble.empty(), Optional.of("0001"), Optional.of("2026-02-03T09:00"));
        Reading mended = reading(good, OptionalDouble.empty(), Optional.of("0001"), Optional.of("2026-02-03T10:30"));
        Reading other = reading(bad, OptionalDouble.empty(), Optional.of("0002"), Optional.of("2026-02-03T08:00"));
        AsBuiltRecord record = record();

        assertEquals(mended, record.of(before).orElseThrow().superseded().orElseThrow());
        assertTrue(record.of(other).orElseThrow().stands());
        assertEquals("2 readings: 1 passed, 1 failed, 0 not judged", record.summary());
        assertEquals(List.of("0001", "0002"), record.serialNumbers());
    }

    @Test
    void isolationNeedsAHundredMegohmAndAnInstrumentThatReachesThem() {
        assertEquals(Verdict.PASSED, judged(isolation(5e8, false)).verdict());
        assertEquals(Verdict.FAILED, judged(isolation(5e6, false)).verdict());
        // An ohmmeter that shows "over 40 megohm" proves nothing.
        assertEquals(Verdict.NOT_JUDGED, judged(isolation(4e7, true)).verdict());
        assertEquals("> 40 MΩ", judged(isolation(4e7, true)).valueText());
    }

    private static Measured isolation(double ohms, boolean beyond) {
        return new Measured.Isolation(BT, ohms, OptionalDouble.empty(), beyond);
    }

    /** IEC 60352-2 asks 230 N of a crimp on 2.5 mm2; five samples are asked for. */
    @Test
    void aPullTestIsJudgedByTheSetForItsSizeAndByItsSamples() {
        String ring = "terminal on a stud or screw";
        Gauge size = Gauge.parse("2.5 mm2");

        assertEquals(
                Verdict.PASSED,
                judged(new Measured.Pull(ring, size, 231, OptionalDouble.of(5))).verdict());
        assertEquals(
                Verdict.FAILED,
                judged(new Measured.Pull(ring, size, 229, OptionalDouble.of(5))).verdict());
        assertEquals(
                Verdict.NOT_JUDGED,
                judged(new Measured.Pull(ring, size, 231, OptionalDouble.of(3))).verdict());
        assertEquals(
                Verdict.NOT_JUDGED,
                judged(new Measured.Pull("no such terminal", size, 231, OptionalDouble.of(5)))
                        .verdict());
    }

    @Test
    void whatTheDesignNoLongerHasIsNotJudgedAndStaysInTheRecord() {
        Judgement gone = judged(new Measured.Path("X99.1", "X99.2", 0.01));

        assertEquals(Verdict.NOT_JUDGED, gone.verdict());
        assertEquals("the test sheet has no way from X99.1 to X99.2", gone.because());
    }

    @Test
    void aLoadIsJudgedByItsDropAndWithoutOneByItsVoltage() {
        PoweredTest test = TestPlan.of(
                        AnalysedExamples.of("teaching").evidence().bench())
                .powered()
                .get(0);
        String load = test.load().load().value();
        String state = test.state().id().value();
        double limit = test.load().limitVolts();

        Judgement dropped = judged(new Measured.Powered(
                load, state, OptionalDouble.of(9), OptionalDouble.of(limit - 0.01), OptionalDouble.empty()));
        Judgement low = judged(new Measured.Powered(
                load,
                state,
                OptionalDouble.of(test.sourceVolts() - limit - 0.01),
                OptionalDouble.empty(),
                OptionalDouble.empty()));

        assertEquals(Verdict.PASSED, dropped.verdict());
        assertEquals(limit, dropped.limit().orElseThrow().canonical(), EXACT);
        assertEquals(Verdict.FAILED, low.verdict());
    }
}
