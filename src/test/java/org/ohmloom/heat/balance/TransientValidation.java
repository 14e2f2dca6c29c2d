package org.ohmloom.heat.balance;

import static org.ohmloom.heat.balance.ReferenceRows.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Transients against a reference integration and published points. */
final class TransientValidation {

    /** The same physics, printed to two or three digits: percent, to which comes what the convections differ by. */
    private static final double SAME_PHYSICS = 3;
    /** Declared before the first run: the cable of the published overload is not described. */
    private static final double UNKNOWN_CABLE = 40;
    /** An exact formula, printed to three digits, percent. */
    private static final double FORMULA = 1;

    private TransientValidation() {}

    static ValidationSection lumped() {
        List<ValidationPoint> points = new ArrayList<>();
        for (CSVRecord row : ReferenceRows.of("transient-lumped.csv")) {
            RoundWire wire = nominal(row.get("area_mm2"));
            double tolerance = SAME_PHYSICS + convections(row.get("area_mm2"));
            HeatBalance balance = HeatBalance.bare(wire, OpenAir.seaLevel(30));
            Transient moving = new Transient(balance);
            double settled = number(row, "I70_A");
            String name = row.get("area_mm2") + " mm2, ";
            points.add(point(
                    tolerance,
                    name + "heat stored, J/mK",
                    "",
                    row,
                    "C_J_mK",
                    HeatStore.of(wire).joulesPerKelvin()));
            points.add(point(tolerance, name + "time constant", "s", row, "tau_s", moving.timeConstantSeconds(70)));
            for (String times : List.of("2", "3.5", "6")) {
                double amps = Double.parseDouble(times) * settled;
                for (int limit : new int[] {105, 160}) {
                    points.add(point(
                            tolerance,
                            name + times + " x rated, to " + limit + " C",
                            "s",
                            row,
                            "x" + times + "_t" + limit,
                            moving.timeTo(70, amps, limit).lumpedSeconds().orElseThrow()));
                }
                points.add(point(
                        tolerance,
                        name + times + " x rated, copper alone to 160 C",
                        "s",
                        row,
                        "x" + times + "_adiab160",
                        moving.timeTo(70, amps, 160).adiabaticSeconds()));
            }
        }
        return new ValidationSection(
                "Transients of vehicle conductors",
                "a reference integration of the same lumped physics with Churchill-Chu and printed to two or three digits.",
                "3 %, and for each size as much as the reference's two convections differ in heat (the square of their currents).",
                "Computed, not measured: a check of the integration.",
                points);
    }

    private static ValidationPoint point(
            double tolerance, String name, String unit, CSVRecord row, String column, double ours) {
        return new ValidationPoint(name, unit, number(row, column), ours, -tolerance, tolerance);
    }

    /** By how much the heats of the reference's two convections differ for a size, percent. */
    private static double convections(String areaMm2) {
        CSVRecord row = ReferenceRows.row("free-air-din-vde-model.csv", areaMm2);
        double ratio = number(row, "I_MO") / number(row, "I_CC");
        return 100 * (ratio * ratio - 1);
    }

    /** The wire with its nominal copper area, as the reference reckons. */
    private static RoundWire nominal(String areaMm2) {
        RoundWire wire = FreeAirValidation.dinVde(ReferenceRows.row("free-air-din-vde.csv", areaMm2));
        return new RoundWire(
                wire.ohmsPerMetre(),
                Double.parseDouble(areaMm2),
                wire.conductorDiameterMm(),
                wire.outsideDiameterMm(),
                wire.wattsPerMetrePerKelvin());
    }

    static ValidationSection published() {
        List<ValidationPoint> points = new ArrayList<>();
        RoundWire cable = overloadedCable();
        HeatBalance balance = HeatBalance.bare(cable, OpenAir.seaLevel(100));
        double amps = balance.ampacityAmps(value("overload-end"));
        points.add(new ValidationPoint(
                "overload to 138 C: 100 to 105 C, 12 mm2 cable",
                "s",
                value("overload-time"),
                new Transient(balance).timeTo(100, amps, 105).lumpedSeconds().orElseThrow(),
                -UNKNOWN_CABLE,
                UNKNOWN_CABLE));
        points.add(new ValidationPoint(
                "the same: the lasting current, 4 kW from 48 V", "A", 83, amps, -UNKNOWN_CABLE, UNKNOWN_CABLE));
        points.add(new ValidationPoint(
                "the same: time constant",
                "s",
                value("overload-tau"),
                new Transient(balance).timeConstantSeconds(value("overload-end")),
                -UNKNOWN_CABLE,
                UNKNOWN_CABLE));
        for (int amperes : new int[] {180, 200}) {
            points.add(new ValidationPoint(
                    "2.5 mm2 from 20 C to melting at " + amperes + " A, copper alone",
                    "s",
                    value("melting-" + amperes),
                    Adiabatic.COPPER.seconds(2.5, amperes, 20, RoundWire.MELTING_CELSIUS),
                    -FORMULA,
                    FORMULA));
        }
        return new ValidationSection(
                "Published points on overload",
                "Henke and Frei, VEHITS 2021, figure 12 (their simulation; the cable is not described, 12 mm2 thin wall taken, the size whose current is nearest);"
                        + " Onderdonk's formula for the case of Song et al., Polymers 2026.",
                "40 % where the cable is not described, 1 % for the formula, declared before the first run.",
                "Ignition currents are checked as inequalities in OverloadTest: the conductor must be far beyond its insulation"
                        + " there. A survey of house circuits without sizes and currents cannot be checked.",
                points);
    }

    static RoundWire overloadedCable() {
        return new RoundWire(1.52e-3, 1.0 / 58 / 1.52e-3, 5.0, 6.5, RoundWire.USUAL_INSULATION);
    }

    static double value(String id) {
        return number(ReferenceRows.row("transient-points.csv", id), "value");
    }
}
