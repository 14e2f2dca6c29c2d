package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.words.Text;

class SessionTest {

    private static final WireId W1 = new WireId("W1");

    static Harness harness() {
        return Harness.empty(
                        TitleBlock.of("Test harness", "T-1"),
                        new DesignRules(
                                "road-vehicle",
                                12,
                                0.05,
                                GaugeSystem.METRIC,
                                "ISO 6722-1 class B",
                                Optional.empty(),
                                25))
                .with(Component.of("HEATER", "Heater", Load.of(new Draw.Resistive(5, 12))))
                .with(Wire.of("W1", new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.FEED));
    }

    private static Gauge gauge(String text) {
        return Gauge.parse(text);
    }

    @Test
    void undoGoesBackToTheVerySameHarnessAndClearsTheChangedMark() {
        Session session = new Session(harness(), Optional.empty());
        Harness start = session.current();
        session.apply(SetWireGauge.of(W1, gauge("2.5 mm2")));
        assertTrue(session.isChanged());
        assertEquals(
                Optional.of("Set conductor of W1 to 2.5 mm2"),
                session.undoLabel().map(Text::english));
        session.undo();
        assertSame(start, session.current());
        assertFalse(session.isChanged());
        session.redo();
        assertEquals(
                Optional.of(gauge("2.5 mm2")), session.current().wires().get(W1).gauge());
    }

    @Test
    void anEditThatChangesNothingIsNoStep() {
        Session session = new Session(harness(), Optional.empty());
        session.apply(SetWireGauge.of(W1, gauge("2.5 mm2")));
        session.apply(SetWireGauge.of(W1, gauge("2.5 mm2")));
        session.undo();
        assertEquals(Optional.empty(), session.undoLabel());
    }

    @Test
    void aStepAfterUndoDropsWhatWasUndone() {
        Session session = new Session(harness(), Optional.empty());
        session.apply(SetWireGauge.of(W1, gauge("2.5 mm2")));
        session.undo();
        session.apply(new SetWireLength(List.of(W1), OptionalDouble.of(1.5)));
        assertEquals(Optional.empty(), session.redoLabel());
        assertEquals(Optional.empty(), session.current().wires().get(W1).gauge());
    }

    @Test
    void theLoadKeepsItsVoltageWhenItsCurrentIsTyped() {
        Session session = new Session(harness(), Optional.empty());
        ComponentId heater = new ComponentId("HEATER");
        session.apply(new SetLoadCurrent(List.of(heater), 8));
        Load load = (Load) session.current().components().get(heater).device();
        // 12 V at 8 A is 1.5 ohm
        assertEquals(1.5, ((Draw.Resistive) load.draw()).resistanceOhms(), 1e-12);
    }

    @Test
    void listenersHearBeforeAndAfterAndSavingClearsTheMark() {
        Session session = new Session(harness(), Optional.empty());
        List<Harness> heard = new ArrayList<>();
        Harness start = session.current();
        session.listen((before, after) -> {
            heard.add(before);
            heard.add(after);
        });
        session.apply(SetWireGauge.of(W1, gauge("4 mm2")));
        assertEquals(List.of(start, session.current()), heard);
        session.savedAs(session.current(), Path.of("x.harness.json"));
        assertFalse(session.isChanged());
        session.undo();
        assertTrue(session.isChanged());
    }

    @Test
    void theListOfStepsLeadsToAnyOfThemAndBack() {
        Session session = new Session(harness(), Optional.empty());
        List<Harness> states = new ArrayList<>(List.of(session.current()));
        for (double areaMm2 : new double[] {4, 6, 10}) {
            session.apply(new PutElements(
                    Text.of("Size " + areaMm2),
                    List.of(session.current().wires().get(W1).withGauge(Optional.of(Gauge.metric(areaMm2))))));
            states.add(session.current());
        }
        assertEquals(
                List.of("Size 4.0", "Size 6.0", "Size 10.0"),
                session.steps().stream().map(Text::english).toList());
        for (int done : new int[] {0, 2, 3, 1}) {
            session.goTo(done);
            assertSame(states.get(done), session.current());
            assertEquals(done, session.stepsDone());
            assertEquals(3, session.steps().size(), "what is undone stays in the list");
        }
        org.junit.jupiter.api.Assertions.assertThrows(IllegalArgumentException.class, () -> session.goTo(4));
    }
}
