package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A number's name carries its unit, in every record below the drawing. */
class UnitSuffixTest {
    /** From this floor on, lengths are millimetres of paper and say so once, in the package. */
    private static final int DRAWING_FLOOR = Floors.floorOf("draw");

    private static final Set<Class<?>> NUMBERS =
            Set.of(double.class, Double.class, float.class, Float.class, double[].class, OptionalDouble.class);

    /** Record components without a unit in their name, each with the reason. */
    private static final Map<String, String> EXCEPTIONS = Map.of(
            "org.ohmloom.units.Quantity.value", "the unit is the record's other component",
            "org.ohmloom.units.DisplayStep.from", "a bound in the unit beside it",
            "org.ohmloom.tables.CitedValue.value", "the unit is named by the method or component that holds it",
            "org.ohmloom.tables.ConductorRow.ohmsPerMetreAt20Celsius",
                    "ohm per metre, at the temperature it is listed for",
            "org.ohmloom.model.Part.unitPrice", "money, in the currency of the rules beside it",
            "org.ohmloom.units.Gauge.number", "a gauge number is a name on a scale; it has no unit",
            "org.ohmloom.units.NumberText.value", "a number as typed, before its unit has been read");

    /** Components in the unit of what a sensor measures, of which each harness has its own. */
    private static final Set<String> OF_THE_QUANTITY = Set.of(
            "org.ohmloom.ground.sensor.Channel$Limit.error",
            "org.ohmloom.ground.sensor.Ripples$Swing.amplitude",
            "org.ohmloom.ground.sensor.SensorBudget$ErrorPart.error",
            "org.ohmloom.ground.sensor.SensorBudget.allowed",
            "org.ohmloom.ground.sensor.SensorBudget.reading",
            "org.ohmloom.ground.sensor.SensorBudget.ripple",
            "org.ohmloom.ground.sensor.SensorBudget.span",
            "org.ohmloom.ground.sensor.SignalSensitivity.allowed",
            "org.ohmloom.model.Calibration$PulseLevels.hertzPerUnit",
            "org.ohmloom.model.Calibration$ResistancePoint.value",
            "org.ohmloom.model.Calibration$VoltagePoint.value",
            "org.ohmloom.model.Measurement$Use.highest",
            "org.ohmloom.model.Measurement$Use.lowest",
            "org.ohmloom.model.Measurement$Tolerance.error",
            "org.ohmloom.model.Measurement.allowedError",
            "org.ohmloom.model.Measurement.highest",
            "org.ohmloom.model.Measurement.lowest",
            "org.ohmloom.signal.calibration.CalibrationCurve.highest",
            "org.ohmloom.signal.calibration.CalibrationCurve.lowest",
            "org.ohmloom.signal.calibration.CurvePoint.value",
            "org.ohmloom.signal.calibration.Resolution.atHighest",
            "org.ohmloom.signal.calibration.Resolution.atLowest",
            "org.ohmloom.signal.calibration.Resolution.coarsest",
            "org.ohmloom.signal.calibration.Resolution.coarsestAt",
            "org.ohmloom.signal.calibration.SensorCalibration.highest",
            "org.ohmloom.signal.calibration.SensorCalibration.lowest");

    /** Components whose unit stands beside them, or that have none with a name of its own. */
    private static final Set<String> OTHERS = Set.of(
            // V, A or deg C, as the measure says that is followed
            "org.ohmloom.analysis.tolerance.Outcome.deviationValue",
            "org.ohmloom.analysis.tolerance.Outcome.highValue",
            "org.ohmloom.analysis.tolerance.Outcome.leastValue",
            "org.ohmloom.analysis.tolerance.Outcome.lowValue",
            "org.ohmloom.analysis.tolerance.Outcome.meanValue",
            "org.ohmloom.analysis.tolerance.Outcome.mostValue",
            "org.ohmloom.analysis.tolerance.Outcome.nominalValue",
            "org.ohmloom.analysis.tolerance.Watch.limit",
            // % or K, as the kind beside it says
            "org.ohmloom.analysis.tolerance.Spread.highUnits",
            "org.ohmloom.analysis.tolerance.Spread.lowUnits",
            "org.ohmloom.ground.Attribution$Part.value",
            "org.ohmloom.ground.sensor.SignalSensitivity.ohmsAtPin",
            "org.ohmloom.heat.balance.Adiabatic.materialK",
            "org.ohmloom.model.Calibration$SteinhartHart.a",
            "org.ohmloom.model.Calibration$SteinhartHart.b",
            "org.ohmloom.model.Calibration$SteinhartHart.c",
            // V, ohm, A or Hz, as the kind beside it says
            "org.ohmloom.signal.bus.wiring.BusProblem.limit",
            "org.ohmloom.signal.bus.wiring.BusProblem.value",
            "org.ohmloom.signal.calibration.CurvePoint.signal",
            "org.ohmloom.signal.calibration.Resolution.step",
            "org.ohmloom.remedy.Effect.after",
            "org.ohmloom.remedy.Effect.before",
            // volts, amperes or times a limit, as the finding has it
            "org.ohmloom.remedy.Foresight$Foreseen.value",
            "org.ohmloom.remedy.Target$Reading.value");

    /** Components whose unit is a choice: what is made least is kg of copper, or money where there are prices. */
    private static final Set<String> COSTS = Set.of(
            "org.ohmloom.size.JointChoice.after",
            "org.ohmloom.size.JointChoice.before",
            "org.ohmloom.size.JointChoice.continuousBound",
            "org.ohmloom.size.JointChoice.lowerBound",
            "org.ohmloom.size.joint.DualAscent$Found.prices",
            "org.ohmloom.size.joint.DualAscent$Found.value",
            "org.ohmloom.size.joint.JointAnswer.continuousBound",
            "org.ohmloom.size.joint.JointAnswer.cost",
            "org.ohmloom.size.joint.JointAnswer.lowerBound",
            "org.ohmloom.size.joint.OptionDual$Priced.prices",
            "org.ohmloom.size.joint.OptionDual$Priced.value",
            "org.ohmloom.size.joint.Search$Solved.bound",
            "org.ohmloom.size.joint.Search$Solved.continuous",
            "org.ohmloom.size.joint.Search$Solved.cost");

    @Test
    void everyNumberInARecordNamesItsUnit() throws ClassNotFoundException {
        assertEquals(
                List.of(),
                numbersOfRecords().stream()
                        .filter(each -> !EXCEPTIONS.containsKey(each) && !COSTS.contains(each))
                        .filter(each -> !OF_THE_QUANTITY.contains(each) && !OTHERS.contains(each))
                        .filter(each -> !UnitSuffix.endsIn(each.substring(each.lastIndexOf('.') + 1)))
                        .toList());
    }

    @Test
    void namesWithAndWithoutAUnitAreToldApart() {
        assertTrue(UnitSuffix.endsIn("lengthMetres"));
        assertTrue(UnitSuffix.endsIn("areaMm2"));
        assertTrue(UnitSuffix.endsIn("capacityAmpHours"));
        assertTrue(UnitSuffix.endsIn("resistanceOhmsPerKilometre"));
        assertTrue(UnitSuffix.endsIn("coefficientPerKelvin"));
        assertTrue(UnitSuffix.endsIn("dutyFraction"));
        assertTrue(UnitSuffix.endsIn("amps"));
        assertFalse(UnitSuffix.endsIn("length"));
        assertFalse(UnitSuffix.endsIn("metresLength"));
        assertFalse(UnitSuffix.endsIn("value"));
        assertFalse(UnitSuffix.endsIn("resistancePerLength"));
    }

    private static List<String> numbersOfRecords() throws ClassNotFoundException {
        Set<String> names = new TreeSet<>();
        for (JavaClass each : OurClasses.MAIN) {
            if (each.isRecord() && Floors.floorOf(Floors.floorPackage(each.getPackageName())) < DRAWING_FLOOR) {
                for (RecordComponent component : Class.forName(each.getName()).getRecordComponents()) {
                    if (NUMBERS.contains(component.getType())) {
                        names.add(each.getName() + "." + component.getName());
                    }
                }
            }
        }
        return new ArrayList<>(names);
    }
}
