package org.ohmloom.heat.balance;

import static org.ohmloom.heat.balance.ReferenceRows.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Bundles against the curves of MIL-W-5088L. */
final class BundleValidation {

    /** What the reference bundle model reaches at full load, percent. */
    static final double FULL_LOAD = 8;
    /** Declared before the first run: partial load, where the reference has a root mean square of 16 percent. */
    private static final double PARTIAL_LOAD = 20;

    private BundleValidation() {}

    static ValidationSection fullLoad() {
        List<ValidationPoint> points = new ArrayList<>();
        add(
                points,
                "20 AWG, 200 C in 70 C",
                FreeAirValidation.aircraftWire("20"),
                70,
                200,
                FULL_LOAD,
                List.of("load100"));
        add(points, "2.5 mm2, 105 C in 40 C", vehicleWire(), 40, 105, FULL_LOAD, List.of("load100"));
        return new ValidationSection(
                "Bundles, every wire fully loaded",
                "MIL-W-5088L, bundle derating curve for 100 %.",
                "8 %, what a reference bundle of effective conductivity reaches; ours has two constants fitted to this curve.",
                "The reference has a root mean square of 4.1 % and a largest error of 6.7 and 8.1 % for the same two wires.",
                points);
    }

    static ValidationSection partialLoad() {
        List<ValidationPoint> points = new ArrayList<>();
        List<String> loads = List.of("load20", "load40", "load60", "load80");
        add(points, "20 AWG", FreeAirValidation.aircraftWire("20"), 70, 200, PARTIAL_LOAD, loads);
        add(points, "2.5 mm2", vehicleWire(), 40, 105, PARTIAL_LOAD, loads);
        return new ValidationSection(
                "Bundles, partly loaded",
                "MIL-W-5088L, bundle derating curves for 20 to 80 % of total capacity.",
                "20 %, declared before the first run. Nothing is fitted here.",
                "Percent of total capacity is read as so many wires at their full rating, one at least, lying together in the"
                        + " middle. Spread over the whole section instead, the same loads come out 16 % off in the"
                        + " root mean square.",
                points);
    }

    static RoundWire vehicleWire() {
        return new RoundWire(7.6e-3, 1.0 / 58 / 7.6e-3, 2.2, 3.6, RoundWire.USUAL_INSULATION);
    }

    private static void add(
            List<ValidationPoint> points,
            String name,
            RoundWire wire,
            double ambient,
            double limit,
            double tolerance,
            List<String> loads) {
        for (CSVRecord row : ReferenceRows.of("bundle-mil-w-5088l.csv")) {
            int count = Integer.parseInt(row.get("wires"));
            for (String load : loads) {
                double percent = Double.parseDouble(load.substring(4));
                if (count > 1) {
                    points.add(new ValidationPoint(
                            name + ", " + count + " wires, " + load.substring(4) + " %",
                            "x",
                            number(row, load),
                            BundleFactor.of(wire, OpenAir.seaLevel(ambient), limit, count, percent / 100),
                            -tolerance,
                            tolerance));
                }
            }
        }
    }
}
