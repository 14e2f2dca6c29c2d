package org.ohmloom.workbench.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.unit.UnitLibrary;
import org.ohmloom.signal.wiring.UnitFeed;
import org.ohmloom.signal.wiring.WiringMade;
import org.ohmloom.workbench.words.Words;

/** Sensors, calibrations and units as they are typed and pasted. */
class TypedListsTest {

    private final Words words = Words.of("channels");

    private ThingListModel pasted(Harness harness, String block) {
        ThingListModel model = new ThingListModel(words, harness);
        model.paste(block, -1, -1);
        return model;
    }

    @Test
    void aListWithTitlesIsTakenWhateverTheOrderOfItsColumns() throws Exception {
        Harness bare = BarePickup.withoutUnits();
        ThingListModel model = pasted(
                bare,
                "Where\tName\tType\tRange\tGives\tRate\n"
                        + "QC\tRail pressure\tPressure, ratiometric\t0 to 250 bar\t5 % to 95 %\t100 Hz\n"
                        + "\tCabin fan\tFan\t\t\t\n");
        assertEquals(2, model.filled());
        assertEquals(0, model.unfit());
        Harness after = model.edit().apply(bare);
        List<Component> added = after.components().all().stream()
                .filter(component -> bare.components().find(component.id()).isEmpty())
                .toList();
        Component sensor = added.stream()
                .filter(each -> each.device() instanceof Sensor)
                .findFirst()
                .orElseThrow();
        Measurement measured = ((Sensor) sensor.device()).measurement().orElseThrow();
        assertEquals("Rail pressure", sensor.name());
        assertEquals(Optional.of(new BreakoutId("QC")), sensor.at());
        assertEquals(250, measured.highest());
        assertEquals("bar", measured.unit());
        assertEquals(new Calibration.RatiometricLine(0.05, 0.95, OptionalDouble.empty()), measured.calibration());
        assertEquals(OptionalDouble.of(100), measured.use().orElseThrow().updateHertz());
        assertTrue(added.stream().anyMatch(each -> each.device() instanceof Load));
    }

    @Test
    void whatDoesNotFitIsSaidInItsRowAndNothingElseIsLost() throws Exception {
        ThingListModel model = pasted(
                BarePickup.withoutUnits(),
                "Oil\tPressure, ratiometri\tQC\n"
                        + "Tank\tFuel sender\tNowhere\n"
                        + "Air\tTemperature, NTC\tQB\t\t0 to 100 psi\n");
        assertEquals(3, model.unfit());
        assertTrue(model.problem(0).contains("Pressure, ratiometric"), model.problem(0));
        assertTrue(model.problem(1).contains("Nowhere"), model.problem(1));
        assertTrue(model.problem(2).contains("°C"), model.problem(2));
        assertEquals("Oil", model.getValueAt(0, 0));
    }

    @Test
    void theListOfTheRescuePickupComesBackAsTheSensorsItHas() throws Exception {
        Harness bare = BarePickup.withoutUnits();
        ThingListModel model = pasted(bare, BarePickup.sensorList());
        assertEquals(10, model.filled());
        assertEquals(0, model.unfit());
    }

    @Test
    void everyKindOfCalibrationIsShownInItsFormAndReadAgain() {
        OptionalDouble none = OptionalDouble.empty();
        List<Calibration> all = List.of(
                new Calibration.RatiometricLine(0.1, 0.9, none),
                new Calibration.VoltageLine(0.5, 4.5, none),
                new Calibration.CurrentLine(0.004, 0.02, none),
                new Calibration.VoltageTable(
                        List.of(new Calibration.VoltagePoint(0, 0.5), new Calibration.VoltagePoint(10, 4.5)),
                        none,
                        none),
                new Calibration.ResistanceTable(
                        List.of(new Calibration.ResistancePoint(0, 10), new Calibration.ResistancePoint(100, 180))),
                new Calibration.Beta(2500, 20, 3500),
                new Calibration.SteinhartHart(1.129e-3, 2.341e-4, 8.775e-8),
                new Calibration.AmplifiedThermocouple(Calibration.Thermocouple.Type.K, 100, 0.25, none),
                new Calibration.Thermocouple(Calibration.Thermocouple.Type.K, Optional.empty(), none),
                new Calibration.PulseLevels(
                        0.3, none, none, none, Optional.of(new Calibration.Turns(48, none, OptionalDouble.of(0.65)))),
                new Calibration.SwitchContact(0.1, none));
        assertEquals(CalibrationKind.values().length, all.size());
        for (Calibration calibration : all) {
            CalibrationKind kind = CalibrationKind.of(calibration);
            List<String[]> rows = kind.rows(Optional.of(calibration));
            assertEquals(calibration, kind.read(rows, Optional.of(calibration)));
        }
    }

    @Test
    void aUnitIsFedFromItsFuseAndGroundedThroughTheBulkhead() throws Exception {
        Harness bare = BarePickup.withoutUnits();
        ComponentId unit = new ComponentId("U1");
        Harness with = UnitLibrary.find("main-unit")
                .into(bare, unit, "Main unit", Optional.of(new BreakoutId("E1")))
                .apply(bare);
        WiringMade made = UnitFeed.of(
                with,
                unit,
                Optional.of(new WireEnd.AtTerminal(new ComponentId("F8"), "2")),
                Optional.of(new GroundPointId("G3")));
        assertEquals(List.of(), made.problems());
        Joints joints = Joints.of(made.edit().orElseThrow().apply(with));
        String fuse = Joints.terminal(new ComponentId("F8"), "2");
        assertTrue(joints.with(unit, "SUP1").contains(fuse));
        assertTrue(joints.with(unit, "SUP2").contains(fuse));
        assertTrue(joints.isJoined(unit, "GND1") && joints.isJoined(unit, "GND2"));
    }
}
