package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.RemoveElements;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.LoadGroupId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.SpeedLimit;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.model.StateSequence.Step;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.words.Text;

/** What is typed about load groups, sequences of states and alternators. */
class TypedGroupsTest {

    private static final ComponentId ALTERNATOR = new ComponentId("G1");

    private static final Harness HARNESS = Harness.empty(
                    TitleBlock.of("Small", "T-1"),
                    new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "none named", Optional.empty(), 25))
            .withAll(List.of(
                    Component.of("L1", "Lamp", Load.of(new Draw.Resistive(2, 12))),
                    Component.of("L2", "Lamp", Load.of(new Draw.Resistive(2, 12))),
                    Component.of("L3", "Winch", Load.of(new Draw.Resistive(90, 12))),
                    Component.of("G1", "Alternator", new Alternator(14.2, 0.01, 105)),
                    OperatingState.of("night", "Night, lamps on", EngineMode.OFF),
                    OperatingState.of("drive", "Driving", EngineMode.RUNNING)));

    private static LoadGroup group(Harness harness) {
        return harness.loadGroups().get(new LoadGroupId("LG1"));
    }

    private static StateSequence sequence(Harness harness) {
        return harness.sequences().get(new SequenceId("SQ1"));
    }

    private static AlternatorModel model(Harness harness) {
        return ((Alternator) harness.components().get(ALTERNATOR).device())
                .model()
                .orElse(AlternatorModel.NONE);
    }

    private static String refusal(org.junit.jupiter.api.function.Executable typed) {
        return assertThrows(IllegalArgumentException.class, typed).getMessage();
    }

    @Test
    void aGroupOfTheSelectedLoadsRunsOneAtATimeUntilAnotherRuleIsTyped() {
        Harness grouped = GroupEdits.create(HARNESS, List.of(new ComponentId("L1"), new ComponentId("L2")))
                .apply(HARNESS);
        assertEquals("one at a time", GroupEdits.rule(group(grouped)));
        assertEquals("L1, L2", GroupEdits.loads(group(grouped)));
        Harness most =
                GroupEdits.loads(grouped, List.of(group(grouped)), "l1; L2 L3").apply(grouped);
        most = GroupEdits.rule(List.of(group(most)), " At most 2 ").apply(most);
        assertEquals("L1, L2, L3", GroupEdits.loads(group(most)));
        assertEquals(Optional.of(2), group(most).atMost());
        assertEquals("at most 2", GroupEdits.rule(group(most)));
        Harness together = GroupEdits.rule(List.of(group(most)), "all together").apply(most);
        assertEquals(LoadGroup.Kind.TOGETHER, group(together).kind());
        assertEquals(Optional.empty(), group(together).atMost());
    }

    @Test
    void aWrongRuleOrLoadIsToldWithWhatWouldBeRight() {
        Harness grouped = GroupEdits.create(HARNESS, List.of(new ComponentId("L1"), new ComponentId("L2")))
                .apply(HARNESS);
        List<LoadGroup> groups = List.of(group(grouped));
        assertTrue(refusal(() -> GroupEdits.rule(groups, "sometimes")).contains("at most 2"));
        assertTrue(refusal(() -> GroupEdits.rule(groups, "at most none")).contains("one at a time"));
        assertTrue(refusal(() -> GroupEdits.loads(grouped, groups, "L1, L9")).contains("no load 'L9'"));
        assertTrue(refusal(() -> GroupEdits.loads(grouped, groups, "L1, G1")).contains("no load 'G1'"));
        assertTrue(refusal(() -> GroupEdits.loads(grouped, groups, "L1")).contains("at least two"));
        assertTrue(refusal(() -> GroupEdits.name(groups, " ")).contains("name"));
    }

    @Test
    void aSequenceIsStatesWithTheirDurations() {
        Harness begun = SequenceEdits.create(HARNESS, new StateId("night")).apply(HARNESS);
        assertEquals("night 1 h", SequenceEdits.steps(sequence(begun)));
        Harness typed = SequenceEdits.steps(begun, List.of(sequence(begun)), "night 8,5 h, drive 90 min; Night 20 s")
                .apply(begun);
        assertEquals(
                List.of(
                        new Step(new StateId("night"), 30_600),
                        new Step(new StateId("drive"), 5400),
                        new Step(new StateId("night"), 20)),
                sequence(typed).steps());
        String shown = SequenceEdits.steps(sequence(typed));
        assertEquals("night 510 min, drive 90 min, night 20 s", shown);
        assertEquals(
                sequence(typed),
                sequence(SequenceEdits.steps(typed, List.of(sequence(typed)), shown)
                        .apply(typed)));
        Harness asked = SequenceEdits.until(List.of(sequence(typed)), "12.1 V").apply(typed);
        assertEquals(OptionalDouble.of(12.1), sequence(asked).untilVolts());
        assertTrue(refusal(() -> SequenceEdits.steps(begun, List.of(sequence(begun)), "night"))
                .contains("engine-off 8 h"));
        assertTrue(refusal(() -> SequenceEdits.steps(begun, List.of(sequence(begun)), "moon 1 h"))
                .contains("there are drive, night"));
    }

    @Test
    void anAlternatorHasACurveLimitsByEngineAndSlopes() {
        List<ComponentId> ids = List.of(ALTERNATOR);
        Harness curved = AlternatorEdits.curve(ids, "6000 rpm 105 A, 1500: 35; 3000 rpm 80 A")
                .apply(HARNESS);
        assertEquals(
                List.of(new SpeedLimit(1500, 35), new SpeedLimit(3000, 80), new SpeedLimit(6000, 105)),
                model(curved).speedLimits());
        assertEquals("1500 rpm 35 A, 3000 rpm 80 A, 6000 rpm 105 A", AlternatorEdits.curve(model(curved)));
        Harness moded = AlternatorEdits.modes(ids, "idling 60 A, running 105 A").apply(curved);
        assertEquals(60, model(moded).modeLimitAmps().get(EngineMode.IDLING));
        assertEquals("idling 60 A, running 105 A", AlternatorEdits.modes(model(moded)));
        Harness sloped = AlternatorEdits.setPointSlope(ids, "-15 mV/K").apply(moded);
        assertEquals(OptionalDouble.of(-0.015), model(sloped).setPointVoltsPerKelvin());
        Harness derated = AlternatorEdits.derating(ids, "0.3 %/K").apply(sloped);
        assertEquals(0.003, model(derated).deratingPerKelvin().orElseThrow(), 1e-12);
        assertEquals(3, model(derated).speedLimits().size(), "the rest stays");
        assertEquals(
                HARNESS.components().get(ALTERNATOR),
                AlternatorEdits.curve(ids, "").apply(curved).components().get(ALTERNATOR),
                "an empty curve is none");
        assertTrue(refusal(() -> AlternatorEdits.curve(ids, "fast 35 A")).contains("1500 rpm 35 A"));
        assertTrue(refusal(() -> AlternatorEdits.modes(ids, "flying 35 A")).contains("idling"));
    }

    @Test
    void eachEditIsOneStepBack() {
        Session session = new Session(HARNESS, Optional.empty());
        session.apply(GroupEdits.create(HARNESS, List.of(new ComponentId("L1"), new ComponentId("L2"))));
        session.apply(AlternatorEdits.limit(List.of(ALTERNATOR), "120 A"));
        session.apply(new RemoveElements(Text.of("Remove LG1"), List.of(new LoadGroupId("LG1"))));
        assertTrue(session.current().loadGroups().isEmpty());
        session.undo();
        assertEquals("L1, L2", GroupEdits.loads(group(session.current())));
        session.undo();
        session.undo();
        assertEquals(HARNESS, session.current());
    }
}
