package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.StateId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.desk.Readout;

/** What is typed about starting loads, switching outputs and sources in a state. */
class TypedDevicesTest {

    private static final ComponentId VALVE = new ComponentId("Y1");
    private static final ComponentId OUTPUT = new ComponentId("Q1");
    private static final ComponentId BATTERY = new ComponentId("BT1");
    private static final StateId STATE = new StateId("ON");

    private static final Harness HARNESS = Harness.empty(
                    TitleBlock.of("Small", "T-1"),
                    new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "none named", Optional.empty(), 25))
            .withAll(List.of(
                    Component.of("Y1", "Valve", Load.of(new Draw.Resistive(2, 12))),
                    Component.of("Q1", "Output", new SolidStateOutput(0.02, 20)),
                    Component.of("BT1", "Battery", new Battery(12.6, 0.01, 60)),
                    OperatingState.of("ON", "On", OperatingState.EngineMode.OFF)));

    @Test
    void anInrushIsAPeakAndTheTimeConstantOfItsDecay() {
        Optional<Inrush> wanted = Optional.of(new Inrush(60, 0.1));
        for (String typed : List.of("60 A, 100 ms", "60; 0,1", "60 A for 0.1 s", "60/0.1")) {
            Load load = load(LoadEdits.inrush(List.of(VALVE), typed));
            assertEquals(wanted, load.inrush(), typed);
        }
        assertEquals("60 A, 100 ms", LoadEdits.text(wanted));
        assertEquals(
                Optional.empty(), load(LoadEdits.inrush(List.of(VALVE), " ")).inrush());
        assertTrue(refusal(() -> LoadEdits.inrush(List.of(VALVE), "60 A")).contains("100 ms"));
    }

    @Test
    void aCycleIsAPeriodOrAnOnTimeOfAPeriod() {
        assertEquals(
                60,
                load(LoadEdits.cycle(List.of(VALVE), "1 min"))
                        .cycle()
                        .orElseThrow()
                        .periodSeconds());
        Load load = load(LoadEdits.cycle(List.of(VALVE), "10 s of 60 s"));
        assertEquals("10 s of 60 s", LoadEdits.text(load.cycle().orElseThrow()));
        assertTrue(
                refusal(() -> LoadEdits.cycle(List.of(VALVE), "90 s of 60 s")).contains("on-time"));
    }

    @Test
    void aResistanceWithAnInductanceIsASolenoidAndWithoutOneAgainAResistance() {
        Harness solenoid = LoadEdits.inductance(List.of(VALVE), "4 mH").apply(HARNESS);
        assertEquals(new Draw.Inductive(2, 12, 0.004), load(solenoid).draw());
        Harness plain = LoadEdits.inductance(List.of(VALVE), "").apply(solenoid);
        assertEquals(new Draw.Resistive(2, 12), load(plain).draw());
    }

    @Test
    void anOutputGetsItsFrequencyFirstAndThenTheRest() {
        OutputSheet.Row bare = row(HARNESS);
        assertTrue(refusal(() -> DriverEdits.phase(List.of(bare), "25 %")).contains("frequency of Q1 first"));
        Harness driven = DriverEdits.frequency(List.of(bare), "20 kHz").apply(HARNESS);
        assertEquals(20_000, driver(driven).frequencyHertz());
        Harness shifted = DriverEdits.phase(List.of(row(driven)), "25").apply(driven);
        assertEquals(OptionalDouble.of(0.25), driver(shifted).phaseFraction());
        Harness clocked = DriverEdits.clock(List.of(row(shifted)), "main").apply(shifted);
        assertEquals(Optional.of("main"), driver(clocked).clock());
        Harness clamped =
                DriverEdits.freewheel(List.of(row(clocked)), "clamp 45 V").apply(clocked);
        assertEquals(45, driver(clamped).clamp().orElseThrow().clampVolts());
        assertEquals("clamp 45 V", row(clamped).freewheel());
        Harness held = DriverEdits.limit(List.of(row(clamped)), "30").apply(clamped);
        assertEquals(30, driver(held).limit().orElseThrow().limitAmps());
        assertTrue(refusal(() -> DriverEdits.freewheel(List.of(row(clocked)), "sideways"))
                .contains("clamp 45 V"));
    }

    @Test
    void aStateFindsItsBatteryAtAChargeLevelAndATemperature() {
        Harness low = source(HARNESS, "Charge", "60 %");
        Harness cold = source(low, "Temperature", "-20");
        SourceSetting found = cold.states().get(STATE).sources().get(BATTERY);
        assertEquals(OptionalDouble.of(0.6), found.chargeFraction());
        assertEquals(OptionalDouble.of(-20), found.celsius());
        assertTrue(found.on());
        Harness full = source(cold, "Charge", "");
        assertEquals(
                OptionalDouble.empty(),
                full.states().get(STATE).sources().get(BATTERY).chargeFraction());
        assertTrue(refusal(() -> source(HARNESS, "Charge", "160 %")).contains("charge level"));
    }

    @Test
    void anEditThatChangesNothingGivesTheSameHarness() {
        assertSame(HARNESS, LoadEdits.least(List.of(VALVE), "").apply(HARNESS));
    }

    private static Harness source(Harness harness, String column, String typed) {
        SourceSheet sheet = new SourceSheet();
        List<SourceSheet.Row> rows = sheet.rows(new Readout(harness, Optional.empty(), Optional.empty()));
        return sheet.columns().stream()
                .filter(each -> each.title().equals(column))
                .findFirst()
                .orElseThrow()
                .edit()
                .orElseThrow()
                .parse(rows, typed)
                .apply(harness);
    }

    private static OutputSheet.Row row(Harness harness) {
        return new OutputSheet()
                .rows(new Readout(harness, Optional.empty(), Optional.empty()))
                .get(0);
    }

    private static Driver driver(Harness harness) {
        return ((SolidStateOutput) harness.components().get(OUTPUT).device())
                .driver()
                .orElseThrow();
    }

    private static Load load(Edit edit) {
        return load(edit.apply(HARNESS));
    }

    private static Load load(Harness harness) {
        return (Load) harness.components().get(VALVE).device();
    }

    private static String refusal(Runnable task) {
        return assertThrows(IllegalArgumentException.class, task::run).getMessage();
    }
}
