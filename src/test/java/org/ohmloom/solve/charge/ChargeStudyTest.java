package org.ohmloom.solve.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Cycle;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.solve.charge.AlternatorBalance.Mode;
import org.ohmloom.words.Text;

/** The invented wagon in its states and through its days, with the numbers a person would get. */
@BesideOthers
class ChargeStudyTest {

    /** The feeders of 1 micro-ohm and the search at the sense point leave this much, V and A. */
    private static final double CLOSE = 1e-3;

    private static StateCharge charge(Wagon wagon, String state) {
        return wagon.study().states().get(new StateId(state));
    }

    @Test
    void theAlternatorFeedsTheLoadsAndChargesWhatTheBatteryAccepts() {
        // AGM at 50 %: EMF 12.18 V, charge resistance 22.5 mohm: (14.4 - 12.18) / 0.0225 = 98.7 A, but it accepts 24 A;
        // with 20 A of loads the alternator gives 44 A of 60 A and holds 14.4 V at the battery
        StateCharge charge =
                charge(new Wagon().load("L1", 20).with(Wagon.state("run", EngineMode.RUNNING, 0.5, "L1")), "run");
        AlternatorBalance alternator = charge.alternators().get(0);
        assertEquals(Mode.REGULATES, alternator.mode());
        assertEquals(44, alternator.amps(), CLOSE);
        assertEquals(14.4, alternator.senseVolts(), 1e-8);
        assertTrue(alternator.residualVolts() <= 1e-8);
        assertEquals(-24, charge.batteries().get(0).amps(), CLOSE);
        assertEquals(
                List.of(
                        "ALT1 holds 14.4 V at BAT1.+ and gives 44 A of 60 A.",
                        "BAT1 is charged with 24 A, all it accepts."),
                Text.english(charge.sentences()));
    }

    @Test
    void whenTheAlternatorRunsOutTheBatterySuppliesTheRestAndTheStateSaysByHowMuch() {
        // idling: 30 A of 50 A; the battery gives 20 A: 12.84 - 20 x 5 mohm x 3 = 12.54 V; Peukert, k = 1.1:
        // 20 h x (60 / (20 x 20))^1.1 = 2.4817 h, by ampere hours alone 3 h
        StateCharge charge =
                charge(new Wagon().load("L1", 50).with(Wagon.state("idle", EngineMode.IDLING, 1, "L1")), "idle");
        assertEquals(Mode.AT_LIMIT, charge.alternators().get(0).mode());
        assertEquals(0, charge.alternators().get(0).residualVolts());
        BatteryBalance battery = charge.batteries().get(0);
        assertEquals(20, battery.amps(), CLOSE);
        assertEquals(12.54, battery.volts(), CLOSE);
        assertEquals(2.4817, battery.enduranceHours().orElseThrow(), 5e-4);
        assertEquals(3, battery.plainHours().orElseThrow(), CLOSE);
        assertEquals(
                List.of(
                        "ALT1 gives all of its 30 A and reaches 12.5 V of 14.4 V at BAT1.+.",
                        "BAT1 supplies the remaining 20 A at 12.5 V: 20 Ah in every hour, empty after 2 h 29 min."),
                Text.english(charge.sentences()));
        assertTrue(charge.isOverloaded());
    }

    @Test
    void withTheEngineOffAllComesFromTheBattery() {
        StateCharge charge =
                charge(new Wagon().load("L1", 3).with(Wagon.state("off", EngineMode.OFF, 0.75, "L1")), "off");
        // 3 A is the 20 h rate of 60 Ah: three quarters of 20 h
        assertEquals(15, charge.batteries().get(0).enduranceHours().orElseThrow(), CLOSE);
        assertEquals(
                List.of("BAT1 supplies 3 A at 12.5 V: 3 Ah in every hour, empty after 15 h."),
                Text.english(charge.sentences()));
    }

    @Test
    void aShortStateSaysItsAmpereHours() {
        // 180 A for 10 s: 180 x 10 / 3600 = 0.5 Ah
        OperatingState crank =
                Wagon.state("crank", EngineMode.CRANKING, 1, "L1").withDurationSeconds(10);
        StateCharge charge = charge(new Wagon().load("L1", 180).with(crank), "crank");
        // 12.84 V - 180 A x 5 mohm x 1.655 = 11.3505 V
        assertEquals(List.of("BAT1 supplies 180 A at 11.4 V for 10 s: 0.5 Ah."), Text.english(charge.sentences()));
    }

    @Test
    void theRunCountsPlainAmpereHoursAndFindsWhenTheVoltageIsReached() {
        // 6 A from 60 Ah: in 5 h 30 Ah, 100 to 50 %. At 50 %: 12.18 V - 6 A x 18.75 mohm = 12.0675 V after 300 min
        SequenceRun run = new Wagon()
                .load("L1", 6)
                .with(Wagon.state("off", EngineMode.OFF, 1, "L1"))
                .sequence(12.0675, new StateSequence.Step(new StateId("off"), 6 * 3600))
                .study()
                .sequences()
                .get(0);
        BatteryRun battery = run.batteries().get(0);
        assertEquals(36, battery.drawnAmpHours(), 1e-6);
        assertEquals(0.4, battery.endFraction(), 1e-6);
        assertEquals(300, run.untilMinutes().orElseThrow(), 0.5);
        assertEquals(OptionalDouble.empty(), battery.emptyMinutes());
        assertEquals(
                List.of(
                        "BAT1 goes from 100 % to 40 % of 60 Ah in 6 h: gives 36 Ah, takes 0 Ah; lowest voltage 11.9 V.",
                        "BAT1 comes down to 12.1 V after 5 h."),
                Text.english(run.sentences()));
    }

    @Test
    void aResistanceDrawsLessAsTheVoltageFalls() {
        // 1.2 ohm on an AGM battery of 60 Ah for 3 h, against a hundred thousand small steps of
        // I = E(q) / (1.2 + R(q, t)), E and R by the table
        SequenceRun run = new Wagon()
                .load("L1", Load.of(new Draw.Resistive(10, 12)))
                .with(Wagon.state("off", EngineMode.OFF, 1, "L1"))
                .sequence(10, new StateSequence.Step(new StateId("off"), 3 * 3600))
                .study()
                .sequences()
                .get(0);
        double charge = 1;
        double seconds = 3 * 3600.0 / 100_000;
        var agm = Wagon.TABLES.findBatteryType("lead-acid-agm").orElseThrow();
        for (int step = 0; step < 100_000; step++) {
            double emf = 12.84 * agm.openCircuitRatio(charge).value();
            double ohms = 0.005
                    * agm.chargeFactor(charge).value()
                    * agm.pulseFactor(Math.max(1, step * seconds)).value();
            charge -= emf / (1.2 + 2e-6 + ohms) * seconds / 3600 / 60;
        }
        assertEquals(charge, run.batteries().get(0).endFraction(), 2e-4);
    }

    @Test
    void anHourOfDrivingPutsBackWhatTheNightTook() {
        // night: 2 A x 5 h = 10 Ah, 100 to 83.33 %; day: 10 A of loads, the battery accepts by its level, less as it
        // fills
        SequenceRun run = new Wagon()
                .load("L1", 2)
                .load("L2", 8)
                .with(
                        Wagon.state("night", EngineMode.OFF, 1, "L1"),
                        Wagon.state("day", EngineMode.RUNNING, 1, "L1", "L2"))
                .sequence(
                        12,
                        new StateSequence.Step(new StateId("night"), 5 * 3600),
                        new StateSequence.Step(new StateId("day"), 3600))
                .study()
                .sequences()
                .get(0);
        BatteryRun battery = run.batteries().get(0);
        assertEquals(10, battery.drawnAmpHours(), 1e-6);
        assertEquals(
                1 - 10.0 / 60,
                run.batteries().get(0).samples().stream()
                        .filter(sample -> sample.state().equals(new StateId("night")))
                        .reduce((first, last) -> last)
                        .orElseThrow()
                        .chargeFraction(),
                1e-9);
        // charge efficiency 95 %
        assertEquals(battery.endFraction(), 1 - 10.0 / 60 + 0.95 * battery.chargedAmpHours() / 60, 1e-9);
        assertTrue(battery.endFraction() > 0.93 && battery.endFraction() < 1);
        assertTrue(run.untilMinutes().isEmpty());
    }

    @Test
    void aBatteryDrawnEmptySaysWhen() {
        // 30 A from 60 Ah at 50 %: empty after 1 h
        SequenceRun run = new Wagon()
                .load("L1", 30)
                .with(Wagon.state("off", EngineMode.OFF, 0.5, "L1"))
                .sequence(9, new StateSequence.Step(new StateId("off"), 2 * 3600))
                .study()
                .sequences()
                .get(0);
        assertEquals(60, run.batteries().get(0).emptyMinutes().orElseThrow(), 0.01);
        assertEquals(0, run.batteries().get(0).endFraction());
    }

    @Test
    void crankingDoesNotCountAgainstTheVoltageAskedAbout() {
        SequenceRun run = new Wagon()
                .load("L1", 250)
                .load("L2", 1)
                .with(Wagon.state("crank", EngineMode.CRANKING, 1, "L1"), Wagon.state("off", EngineMode.OFF, 1, "L2"))
                .sequence(
                        12,
                        new StateSequence.Step(new StateId("crank"), 10),
                        new StateSequence.Step(new StateId("off"), 600))
                .study()
                .sequences()
                .get(0);
        // 12.84 V - 250 A x 5 mohm x 1.655 = 10.77 V while cranking, and 25 mV less for the 0.7 Ah drawn
        assertEquals(10.745, run.batteries().get(0).lowestVolts(), 0.002);
        assertTrue(run.untilMinutes().isEmpty());
    }

    @Test
    void theLoadAnalysisTellsContinuousFromIntermittent() {
        Load horn = new Load(
                new Draw.ConstantCurrent(12, 12),
                Load.Control.FEED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(new Cycle(120, OptionalDouble.of(6))),
                Optional.empty(),
                OptionalDouble.empty());
        LoadTabulation table = new Wagon()
                .load("L1", 50)
                .load("H1", horn)
                .with(Wagon.state("run", EngineMode.RUNNING, 1, "L1", "H1"))
                .study()
                .tabulations()
                .get(new StateId("run"));
        LoadLine line = table.lines().stream()
                .filter(each -> each.component().value().equals("H1"))
                .findFirst()
                .orElseThrow();
        assertTrue(line.intermittent());
        // continuous 50 A of 60 A: 83 %, above 48 A; A + B: 50 + the horn
        assertEquals(50, table.continuousAmps(), CLOSE);
        assertEquals(48, table.allowedAmps(), 1e-12);
        assertEquals(50 + line.onAmps(), table.twoColumnAmps(), CLOSE);
        assertEquals(50 + line.onAmps(), table.fiveSecondAmps(), CLOSE);
        // 5 min: 2 whole periods and 60 s: 3 on-times of 6 s
        assertEquals(50 + line.onAmps() * 18 / 300, table.fiveMinuteAmps(), CLOSE);
    }
}
