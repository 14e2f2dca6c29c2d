package org.ohmloom.analysis.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.SizedHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SignalClass;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;

@BesideOthers
class FirstHarnessTest {

    private static final WireTables TABLES = WireTables.bundled();

    private static StartPlan plan(StartCraft craft, double volts, OptionalDouble alternatorAmps) {
        return new StartPlan(
                "Pump trailer",
                craft,
                new StartSupply(volts, 80, "Front", alternatorAmps),
                List.of(
                        new StartPlace("Front", 60, 0.8),
                        new StartPlace("Dash", 50, 1.2),
                        new StartPlace("Rear", 40, 3.5)),
                "Dash",
                Optional.of("Dash"),
                List.of(
                        load("Radio", StartLoad.Kind.ELECTRONICS, 2, "Dash", StartLoad.Control.ALWAYS_FED),
                        load("Work lamp", StartLoad.Kind.FILAMENT_LAMP, 4.6, "Rear", StartLoad.Control.SWITCH),
                        load("Heater", StartLoad.Kind.HEATER_OR_COIL, 22, "Dash", StartLoad.Control.SWITCH),
                        load("Valve", StartLoad.Kind.HEATER_OR_COIL, 1.2, "Rear", StartLoad.Control.CONTROL_UNIT),
                        load("Pump", StartLoad.Kind.MOTOR, 12, "Rear", StartLoad.Control.CONTROL_UNIT)),
                List.of(
                        new StartSensor("Pressure", StartSensor.Kind.RATIOMETRIC, "Rear"),
                        new StartSensor("Flow", StartSensor.Kind.PULSE, "Rear"),
                        new StartSensor("Temperature", StartSensor.Kind.THERMISTOR, "Front"),
                        new StartSensor("Lid", StartSensor.Kind.CONTACT, "Rear")));
    }

    private static StartLoad load(
            String name, StartLoad.Kind kind, double amps, String place, StartLoad.Control control) {
        return new StartLoad(name, kind, amps, place, control);
    }

    private static Stream<Arguments> crafts() {
        Stream<Arguments> all = Stream.of(
                arguments(StartCraft.ROAD_VEHICLE, 24, OptionalDouble.empty(), GaugeSystem.METRIC),
                arguments(StartCraft.MACHINE, 48, OptionalDouble.empty(), GaugeSystem.METRIC),
                arguments(StartCraft.SMALL_CRAFT, 12, OptionalDouble.of(60), GaugeSystem.AWG),
                arguments(StartCraft.ROAD_VEHICLE, 12, OptionalDouble.of(90), GaugeSystem.METRIC));
        return Campaign.FULL ? all : all.limit(1);
    }

    @ParameterizedTest
    @MethodSource("crafts")
    void everyFirstHarnessIsSizedWholeAndHasNoErrors(
            StartCraft craft, double volts, OptionalDouble alternator, GaugeSystem gauges) {
        SizedHarness sized = FirstHarness.sized(plan(craft, volts, alternator), gauges, TABLES, Cancel.NEVER);
        Analysis analysis = sized.analysis();
        List<Finding> errors = analysis.findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .toList();
        assertEquals(
                List.of(),
                errors.stream().map(f -> f.rule() + ": " + f.message()).toList());
        assertTrue(analysis.harness().wires().all().stream()
                .allMatch(wire -> wire.gauge().isPresent()));
    }

    @Test
    void eachLoadHasAFuseAndAReturnOfItsOwnAndSensorsReturnToTheUnitAlone() {
        Harness harness = FirstHarness.laidOut(
                plan(StartCraft.ROAD_VEHICLE, 12, OptionalDouble.empty()), GaugeSystem.METRIC, TABLES);
        // Fuses: main; radio, lamp, heater, pump; coils of heater and pump; the unit, which feeds the valve.
        assertEquals(
                7,
                harness.components().all().stream()
                        .filter(each -> each.id().value().startsWith("F"))
                        .count());
        // Returns: battery, five loads, the unit, and the coil that a hand switch feeds.
        assertEquals(8, wires(harness, SignalClass.RETURN));
        // Two studs of four terminals take them.
        assertEquals(2, harness.grounds().all().iterator().next().studCount());
        // Four sensors on one splice: one wire to the unit and four to them.
        assertEquals(5, wires(harness, SignalClass.REFERENCE_RETURN));
        // Two of them are supplied: one wire to the splice and two to them.
        assertEquals(3, wires(harness, SignalClass.REFERENCE_SUPPLY));
    }

    private static long wires(Harness harness, SignalClass signal) {
        return harness.wires().all().stream()
                .filter(wire -> wire.signalClass() == signal)
                .count();
    }

    @Test
    void whatIsTooMuchForAnOutputIsSwitchedByARelayOfTheNextRating() {
        // 12 A pump: above the 8 A of an output, so a 20 A relay; 22 A heater: above 16 A by hand, so a 40 A one.
        assertEquals(20, StartFigures.relayAmps(12));
        assertEquals(40, StartFigures.relayAmps(22));
        Harness harness = FirstHarness.laidOut(
                plan(StartCraft.ROAD_VEHICLE, 12, OptionalDouble.empty()), GaugeSystem.METRIC, TABLES);
        assertEquals(
                2,
                harness.components().all().stream()
                        .filter(each -> each.device() instanceof Relay)
                        .count());
    }

    @Test
    void aPlanThatCannotBeBuiltSaysWhatIsMissing() {
        StartSupply supply = new StartSupply(12, 80, "Front", OptionalDouble.empty());
        List<StartPlace> places = List.of(new StartPlace("Front", 40, 1));
        IllegalArgumentException unit = assertThrows(
                IllegalArgumentException.class,
                () -> new StartPlan(
                        "T",
                        StartCraft.MACHINE,
                        supply,
                        places,
                        "Front",
                        Optional.empty(),
                        List.of(),
                        List.of(new StartSensor("P", StartSensor.Kind.RATIOMETRIC, "Front"))));
        assertEquals("sensors need a control unit that reads them; give it a place", unit.getMessage());
        IllegalArgumentException place = assertThrows(
                IllegalArgumentException.class,
                () -> new StartPlan(
                        "T", StartCraft.MACHINE, supply, places, "Roof", Optional.empty(), List.of(), List.of()));
        assertEquals("there is no place 'Roof'; the places are [Front]", place.getMessage());
    }

    @Test
    void aHarnessOfASupplyAloneCanBeAnalysed() {
        StartPlan bare = new StartPlan(
                "T",
                StartCraft.SMALL_CRAFT,
                new StartSupply(12, 80, "Front", OptionalDouble.empty()),
                List.of(new StartPlace("Front", 40, 1)),
                "Front",
                Optional.empty(),
                List.of(),
                List.of());
        SizedHarness sized = FirstHarness.sized(bare, GaugeSystem.METRIC, TABLES, Cancel.NEVER);
        assertTrue(sized.analysis().findings().stream().noneMatch(each -> each.severity() == Severity.ERROR));
    }
}
