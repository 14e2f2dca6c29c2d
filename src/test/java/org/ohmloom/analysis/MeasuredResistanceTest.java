package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.bench.Replacement;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** A measured resistance takes the place of the calculated one, at 20 C and from there by the temperature of the wire. */
@BesideOthers
class MeasuredResistanceTest {
    private static final double EXACT = 1e-12;
    private static final double PART_PER_MILLION = 1e-6;
    private static final WireId W8 = new WireId("W8");

    private static Reading reading(String id, Measured measured, OptionalDouble celsius) {
        return new Reading(
                new ReadingId(id),
                measured,
                Optional.of("0001"),
                Optional.empty(),
                celsius,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true);
    }

    private static Harness teaching(Reading... readings) {
        return AnalysedExamples.of("teaching").harness().withAll(List.of(readings));
    }

    private static Analysis analysed(Harness harness) {
        return Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER);
    }

    @Test
    void aWiresOwnReadingIsUsedAtTwentyDegreesAndWarmedLikeTheTables() {
        // 4 milliohm at 40 C are 4 x 254.5/274.5 = 3.7086 milliohm at 20 C; listed: 0.5 m x 4.71 = 2.355.
        Analysis analysis = analysed(teaching(reading("BR1", new Measured.OfWire("W8", 0.004), OptionalDouble.of(40))));
        double atTwenty = 0.004 * 254.5 / 274.5;
        double celsius = analysis.ratings().get(W8).celsius();

        Replacement used = Replacement.of(analysis.evidence().bench()).get(0);
        assertEquals(atTwenty, used.ohms(), EXACT);
        assertEquals(0.5 * 4.71e-3, used.insteadOhms().orElseThrow(), EXACT);
        assertEquals(
                atTwenty * (234.5 + celsius) / 254.5, analysis.ratings().get(W8).ohms(), EXACT);
        assertEquals(
                Status.MEASURED,
                analysis.ratings().get(W8).resistance().orElseThrow().status());
        assertTrue(
                analysis.ratings().get(W8).resistance().orElseThrow().text().contains("reading BR1"),
                () -> analysis.ratings().get(W8).resistance().orElseThrow().text());
        assertTrue(analysis.log().text().contains("BR1"));
        // The network carries it too: the drop along the wire is its current times that resistance.
        analysis.states().forEach(state -> analysis.solution(state.id())
                .flatMap(solution -> solution.flow(new BranchId("W8")))
                .filter(flow -> Math.abs(flow.amps()) > 0.1)
                .ifPresent(flow -> assertEquals(
                        atTwenty * (234.5 + analysis.wireCelsius(state.id(), W8).orElseThrow()) / 254.5,
                        flow.ohms().orElseThrow(),
                        atTwenty * PART_PER_MILLION * 100)));
    }

    @Test
    void aWholeNetOfOneWireGivesTheWireWithoutItsContacts() {
        // W6 from a contact of 3 milliohm to a ring terminal, which has no listed resistance of its own.
        Harness harness = teaching(
                reading("BR1", new Measured.Path("G2, terminal of W6", "X1.2", 0.025), OptionalDouble.empty()));

        assertEquals(
                0.025 - 0.003,
                MeasuredOhms.of(harness).wire(new WireId("W6")).get(0).ohms(),
                EXACT);
    }

    @Test
    void aWayOverASpliceReplacesNothingAndSaysWhy() {
        Harness harness = teaching(
                reading("BR1", new Measured.Path("S1.2, terminal of W3", "X2.1", 0.03), OptionalDouble.empty()));

        assertTrue(MeasuredOhms.of(harness).wires().isEmpty());
        assertEquals(
                "more than one wire lies from S1.2, terminal of W3 to X2.1",
                MeasuredOhms.of(harness).unused().get(new ReadingId("BR1")).english());
    }

    @Test
    void ofTwoHarnessesTheOneWithMoreResistanceCountsAtOneTemperature() {
        // 4.2 milliohm at 60 C are 3.63 at 20 C, less than 4 at 20 C.
        Analysis analysis = analysed(teaching(
                reading("BR1", new Measured.OfWire("W8", 0.0042), OptionalDouble.of(60)),
                reading("BR2", new Measured.OfWire("W8", 0.004), OptionalDouble.of(20))));

        assertEquals(
                new ReadingId("BR2"),
                Replacement.of(analysis.evidence().bench()).get(0).reading().id());
    }

    @Test
    void aMeasuredJointIsABranchOfThatResistance() {
        Harness harness = teaching(
                reading("BR1", new Measured.OfJoint("G1", 0.0123), OptionalDouble.empty()),
                reading("BR2", new Measured.OfJoint("SP1", 0.002), OptionalDouble.empty()));
        Analysis analysis = analysed(harness);

        assertEquals(
                0.0123,
                analysis.solution(analysis.states().get(0).id())
                        .orElseThrow()
                        .flow(new BranchId("G1.joint"))
                        .orElseThrow()
                        .ohms()
                        .orElseThrow(),
                EXACT);
        // Across a splice from wire to wire lie two of its joints.
        assertEquals(0.001, MeasuredOhms.of(harness).joint("SP1").orElseThrow().ohms(), EXACT);
    }

    @Test
    void aReadingBelongsToTheSizeThatWasBuiltIn() {
        Harness harness = teaching(reading("BR1", new Measured.OfWire("W8", 0.004), OptionalDouble.empty()));
        WireTables tables = WireTables.bundled();
        ConductorResistance resistance = new ConductorResistance(
                tables, tables.findBasis(harness.rules().basis()).orElseThrow(), MeasuredOhms.of(harness));
        Wire wire = harness.wires().get(W8);

        assertEquals(0.004, resistance.ohms(wire, Gauge.parse("4 mm2"), OptionalDouble.of(0.5), 20), EXACT);
        // Another size is only tried: 0.5 m of 6 mm2 at the listed 3.14 milliohm per metre.
        assertEquals(0.5 * 3.14e-3, resistance.ohms(wire, Gauge.parse("6 mm2"), OptionalDouble.of(0.5), 20), EXACT);
    }
}
