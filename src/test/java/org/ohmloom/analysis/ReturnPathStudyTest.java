package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.Rules;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;
import org.ohmloom.tables.GroundLimit;
import org.ohmloom.tables.WireTables;

/** Offsets and lost returns of whole harnesses, on the small ones that come with the rules. */
@BesideOthers
class ReturnPathStudyTest {

    private static final WireTables TABLES = WireTables.bundled();

    /** Shares sum to the offset within this share of their magnitudes. */
    private static final double AGREEMENT = 1e-9;

    private static Analysis example(String rule) {
        Rule found = Rules.ALL.stream()
                .filter(each -> each.info().id().equals(rule))
                .findFirst()
                .orElseThrow();
        return Analyst.analyse(RuleExamples.triggers(found.info()), TABLES, Cancel.NEVER);
    }

    private static ReturnStudy study(Analysis analysis) {
        return analysis.evidence().returns();
    }

    @Test
    void sharesOfEveryOffsetSumToItInWholeHarnessesToo() {
        int offsets = 0;
        for (String rule :
                List.of("unit-ground-offset", "sensor-return-shared", "bus-common-mode", "clamp-over-limit")) {
            for (Offset offset : study(example(rule)).offsets()) {
                double sum =
                        offset.shares().stream().mapToDouble(OffsetShare::volts).sum();
                double all = offset.shares().stream()
                        .mapToDouble(share -> Math.abs(share.volts()))
                        .sum();
                assertEquals(offset.volts(), sum, AGREEMENT * all, rule + " " + offset.point());
                offsets++;
            }
        }
        assertTrue(offsets >= 5, "offsets: " + offsets);
    }

    @Test
    void aLoadThatIsSwitchedOffLeavesTheUnitWithItsOwnDrop() {
        Offset offset = study(example("unit-ground-offset")).offsets().get(0);
        OffsetShare pump = offset.shares().get(0);
        assertEquals(new ComponentId("P1"), pump.cause());
        // the unit draws a constant 0.1 A whatever the pump does, so here the difference is the share
        assertEquals(offset.volts() - pump.volts(), pump.switchedOffVolts().orElseThrow(), AGREEMENT);
    }

    @Test
    void aSensorIsMeasuredAgainstTheSensorReturnOfTheUnitThatReadsIt() {
        List<ReferencePoint> points = study(example("sensor-return-shared")).offsets().stream()
                .map(Offset::point)
                .filter(point -> point.kind() == ReferencePoint.Kind.SENSOR_RETURN)
                .toList();
        assertEquals(1, points.size());
        assertEquals("U1.SRET", points.get(0).reference().value());
        assertEquals(new ComponentId("U1"), points.get(0).against());
    }

    @Test
    void nodesOfABusAreMeasuredAgainstTheFirst() {
        List<ReferencePoint> nodes = study(example("bus-common-mode")).offsets().stream()
                .map(Offset::point)
                .filter(point -> point.kind() == ReferencePoint.Kind.BUS_NODE_GROUND)
                .toList();
        assertEquals(1, nodes.size());
        assertEquals(new ComponentId("U2"), nodes.get(0).owner());
        assertEquals(new ComponentId("U1"), nodes.get(0).against());
    }

    @Test
    void aLostLampReturnSendsTheCurrentBackwardsThroughAnotherLampIntoAThird() {
        List<LostReturn> losses = study(example("lost-return-overloads")).losses();
        assertEquals(1, losses.size(), losses::toString);
        LostReturn loss = losses.get(0);
        assertEquals(new WireId("W8"), loss.opened());
        assertEquals(new StateId("rear"), loss.state());
        assertEquals(List.of(new ComponentId("L2")), loss.fedBackwards());
        // L1, L2 and L3 of 6 ohm in series at 12.6 V: 0.7 A
        double throughThird = loss.detours().stream()
                .filter(way -> way.member().equals(new ComponentId("L3")))
                .findFirst()
                .orElseThrow()
                .afterAmps();
        assertEquals(12.6 / 18, throughThird, 0.01);
    }

    /** Losses of the same lamps, their returns stacked on a ground point G1 instead of spliced; W8 comes from another, G2. */
    private static List<LostReturn> lampsOnTheBody(double jointOhms) throws HarnessFileException {
        Rule rule = Rules.ALL.stream()
                .filter(each -> each.info().id().equals("lost-return-overloads"))
                .findFirst()
                .orElseThrow();
        String grounds = "\"bodies\": [{\"id\": \"FR\", \"name\": \"Frame\"}], \"grounds\": ["
                + "{\"id\": \"G1\", \"name\": \"Lamps\", \"body\": \"FR\", \"jointOhms\": " + jointOhms + "},"
                + "{\"id\": \"G2\", \"name\": \"Battery\", \"body\": \"FR\", \"jointOhms\": " + jointOhms + "}],";
        String text = HarnessText.write(RuleExamples.triggers(rule.info()))
                .replace("\"to\": {\"splice\": \"SP1\"}", "\"to\": {\"ground\": \"G1\"}")
                .replace("\"from\": {\"splice\": \"SP1\"}", "\"from\": {\"ground\": \"G2\"}")
                .replace("\"wires\": [", grounds + "\"wires\": [");
        Analysis analysis = Analyst.analyse(HarnessText.read(text, Path.of("lamps")), TABLES, Cancel.NEVER);
        return study(analysis).losses();
    }

    @Test
    void aJointOfNoResistanceIsOpenedLikeOneThatHasSome() throws HarnessFileException {
        List<LostReturn> some = lampsOnTheBody(0.0005);
        List<LostReturn> none = lampsOnTheBody(0);
        // either joint or the wire behind them: the return of both lamps is lost, L1 and L2 and L3 in series take 12.6
        // V / 18 ohm
        assertEquals(
                List.of("G1", "G2", "W8"),
                none.stream().map(loss -> loss.opened().value()).toList());
        assertEquals(some.size(), none.size());
        for (int k = 0; k < some.size(); k++) {
            assertEquals(some.get(k).opened(), none.get(k).opened());
            assertEquals(List.of(new ComponentId("L2")), none.get(k).fedBackwards());
            for (List<LostReturn> losses : List.of(some, none)) {
                double throughThird = losses.get(k).detours().stream()
                        .filter(way -> way.member().equals(new ComponentId("L3")))
                        .findFirst()
                        .orElseThrow()
                        .afterAmps();
                assertEquals(12.6 / 18, throughThird, 0.01);
            }
        }
    }

    @Test
    void theLimitsThatHoldWithoutAnyOfTheHarnessStandInTheTable() {
        assertEquals(
                ReturnRules.UNIT_GROUND_VOLTS,
                TABLES.groundLimitVolts(GroundLimit.UNIT).orElseThrow().value());
        assertEquals(
                ReturnRules.GROUND_VOLTS,
                TABLES.groundLimitVolts(GroundLimit.OTHER).orElseThrow().value());
    }
}
