package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;

/**
 * The sweep on a 10 A heater behind an output, on a feed so stiff that its current stays within 2 % of 10 A; and on the
 * fans of an example.
 */
@BesideOthers
class DutySweepTest {

    private static final double STIFF = 0.02;

    /** The way through an isolator has a wire and a diode more. */
    private static final double LONGER = 0.03;

    private static List<DutyStep> steps;

    @BeforeAll
    static void sweep() {
        OperatingState state = OperatingState.of("heating", "Heating", EngineMode.OFF)
                .with(new ComponentId("Q1"), Setting.duty(0.6))
                .with(new ComponentId("L1"), Setting.ON);
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        steps = DutySweep.of(
                Analyst.analyse(
                        new HarnessSketch()
                                .battery("BAT1", 12, 0.001)
                                .fuse("F1", 15, 0.001)
                                .component("Q1", new SolidStateOutput(0.001, 20))
                                .load("L1", 10, 12)
                                .run("W1", "BAT1.+", "F1.1", 0.1)
                                .run("W2", "F1.2", "Q1.in", 0.1)
                                .run("W3", "Q1.out", "L1.+", 0.1)
                                .run("W4", "L1.-", "BAT1.-", 0.1)
                                .with(state)
                                .harness()
                                .withRules(rules),
                        WireTables.bundled(),
                        Cancel.NEVER),
                Cancel.NEVER);
    }

    @Test
    void itRunsTheHeaterAtEveryDutyOfTheSweep() {
        assertEquals(
                DutySweep.DUTIES, steps.stream().map(DutyStep::dutyFraction).toList());
        assertEquals(
                List.of("W2", "W3"),
                steps.get(0).wires().stream().map(wire -> wire.wire().value()).toList());
    }

    @Test
    void aResistiveLoadTakesTheRootOfTheDutyAsRms() {
        for (DutyStep step : steps) {
            DutyStep.OnWire wire = step.wires().get(0);
            double on = wire.onAmps();
            assertEquals(10, on, 10 * STIFF);
            assertEquals(on * step.dutyFraction(), wire.meanAmps(), on * 1e-9);
            assertEquals(on * Math.sqrt(step.dutyFraction()), wire.rmsAmps(), on * 1e-9);
        }
    }

    @Test
    void moreDutyMakesTheWireWarmerAndLeavesTheOnStateDropNearlyAsItIs() {
        for (int k = 1; k < steps.size(); k++) {
            DutyStep.OnWire less = steps.get(k - 1).wires().get(0);
            DutyStep.OnWire more = steps.get(k).wires().get(0);
            assertTrue(more.celsius() > less.celsius());
            assertEquals(less.dropVolts(), more.dropVolts(), 0.05 * less.dropVolts());
        }
    }

    @Test
    void aLoadFedThroughABatteryIsolatorIsSweptToo() {
        // 14.4 V less the isolator's 0.4 V: 14 V on 1.2 ohm is 11.67 A while on
        OperatingState lasting = OperatingState.of("heating", "Heating", EngineMode.OFF)
                .with(new ComponentId("Q1"), Setting.duty(0.6))
                .with(new ComponentId("L1"), Setting.ON);
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        List<DutyStep> isolated = DutySweep.of(
                Analyst.analyse(
                        new HarnessSketch()
                                .battery("BAT1", 14.4, 0.001)
                                .component("ISO1", new BatteryIsolator(2, 0.4, 0.001, 80))
                                .fuse("F1", 15, 0.001)
                                .component("Q1", new SolidStateOutput(0.001, 20))
                                .load("L1", 10, 12)
                                .run("W1", "BAT1.+", "ISO1.in", 0.1)
                                .run("W3", "ISO1.out2", "F1.1", 0.1)
                                .run("W4", "F1.2", "Q1.in", 0.1)
                                .run("W5", "Q1.out", "L1.+", 0.1)
                                .run("W6", "L1.-", "BAT1.-", 0.1)
                                .with(lasting)
                                .harness()
                                .withRules(rules),
                        WireTables.bundled(),
                        Cancel.NEVER),
                Cancel.NEVER);
        assertEquals(
                DutySweep.DUTIES, isolated.stream().map(DutyStep::dutyFraction).toList());
        for (DutyStep step : isolated) {
            assertEquals(11.67, step.wires().get(0).onAmps(), 11.67 * LONGER);
            assertEquals(
                    step.wires().get(0).onAmps() * step.dutyFraction(),
                    step.wires().get(0).meanAmps(),
                    11.67 * LONGER);
        }
    }

    @Test
    void everyFanOfTheRefitIsSweptWithAGovernorForEachWire() throws Exception {
        List<DutyStep> all = DutySweep.of(AnalysedExamples.of("rescue-pickup"), Cancel.NEVER);
        for (String fan : List.of("FAN1", "FAN2")) {
            List<DutyStep> own =
                    all.stream().filter(step -> step.load().value().equals(fan)).toList();
            assertEquals(4, own.size());
            own.forEach(step -> {
                assertTrue(step.wires().size() >= 2);
                step.wires()
                        .forEach(wire -> assertTrue(wire.choice().isPresent()
                                && wire.rmsAmps() <= wire.onAmps()
                                && wire.meanAmps() <= wire.rmsAmps()));
            });
        }
    }

    @Test
    void aLargeHarnessSweepsAsManyLoadsAsTheWorkAllowsAndAtLeastOne() {
        // 60,000 branch steps over four duties: 2,000 branches leave 60,000 / 8,000 = 7 loads
        assertEquals(7, DutySweep.most(10, 2_000));
        assertEquals(10, DutySweep.most(10, 400));
        assertEquals(1, DutySweep.most(10, 25_000));
    }
}
