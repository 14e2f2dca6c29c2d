package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.HandbookRows;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Sizes for a voltage drop as handbooks print them, chosen by the same formula the program chooses by. */
@BesideOthers
class HandbookSizesTest {

    private static final double METRES_PER_FOOT = 0.3048;
    private static final double THREE_DIGITS = 5e-3;
    /** ABYC E-11 counts 10.75 ohm circular mils per foot, 100 % conductivity copper at 20 C has 10.371 (NBS Handbook 100). */
    private static final double BOAT_RATIO = 10.75 / 10.371;

    private static final List<String> BOAT_GAUGES = List.of(
            "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "1 AWG", "1/0 AWG",
            "2/0 AWG", "3/0 AWG", "4/0 AWG");

    private final WireTables tables = WireTables.bundled();
    private final ConductorFamily solid = tables.family("awg-solid");
    private final ConductorFamily tinned = tables.family("ac-43.13-1b");

    /** The gauges boat cable is made in, with the resistance of solid copper. */
    private final ConductorFamily boat = new ConductorFamily(
            solid.id(),
            solid.title(),
            solid.system(),
            solid.rows().stream()
                    .filter(row -> BOAT_GAUGES.contains(row.gauge().text()))
                    .toList());

    private static Gauge thinnest(ConductorFamily family, double feet, double amps, double volts, double ratio) {
        return VoltageDrop.thinnest(family, feet * METRES_PER_FOOT, amps, volts, ratio)
                .orElseThrow()
                .gauge();
    }

    /**
     * A chandlery's example on ABYC E-11: bilge pump of 10 A, 11 ft out and 10 ft back, 3 % of 12 V: No. 10, because its table
     * goes by 25 ft. By the formula of that table 21 ft need 6271 circular mils, which No. 12 has (6530). With the listed
     * resistance of tinned stranded wire No. 12 loses 2.02 x 21 x 10 / 1000 = 0.424 V, and No. 10 it is.
     */
    @Test
    void mar3ABilgePumpTwentyOneFeetAway() {
        assertEquals(Gauge.awg(12), thinnest(boat, 21, 10, 0.36, BOAT_RATIO));
        assertEquals(Gauge.awg(10), thinnest(boat, 25, 10, 0.36, BOAT_RATIO));
        assertEquals(Gauge.awg(10), thinnest(tinned, 21, 10, 0.36, 1));
        ConductorRow twelve = tinned.row(Gauge.awg(12)).orElseThrow();
        assertEquals(0.424, VoltageDrop.volts(twelve, 21 * METRES_PER_FOOT, 10, 1), THREE_DIGITS);
    }

    /**
     * A lighting supplier's index, amperes x feet / (per cent x volts): 10 A, 100 ft one way, 24 V, 2 % give 20.83 and "No. 4",
     * whose index is 20. Solid No. 4 loses 0.497 V over the 200 ft, more than the 0.48 V allowed; of the even gauges No. 2
     * is the first that does not.
     */
    @Test
    void lv24TheIndexOfALightingSupplierIsAGaugeTooThin() {
        assertEquals(20.83, 10 * 100 / (2.0 * 24), THREE_DIGITS);
        ConductorRow four = solid.row(Gauge.awg(4)).orElseThrow();
        assertEquals(0.497, VoltageDrop.volts(four, 200 * METRES_PER_FOOT, 10, 1), 5e-4);
        assertEquals(Gauge.awg(2), thinnest(boat, 200, 10, 0.48, 1));
    }

    /** US Navy NEETS Module 4 (NAVEDTRA 14176), assignment 1, question 12, run 1: 2,500 ft of No. 12 at 25 C: 4.05 ohm. */
    @Test
    void neetsQuestionTwelveTwoThousandFiveHundredFeetOfTwelveGauge() {
        ConductorRow twelve = solid.row(Gauge.awg(12)).orElseThrow();
        double ratio = tables.copper().resistanceRatio(25);
        assertEquals(4.05, VoltageDrop.volts(twelve, 2500 * METRES_PER_FOOT, 1, ratio), THREE_DIGITS);
    }

    /** The figure the question goes with, at 25 and 65 C: all cells within one unit of their last printed digit. */
    @Test
    void neetsFigureOfResistancesAtTwoTemperatures() throws IOException {
        for (Map<String, String> row : HandbookRows.of("neets-module-4-figure-1b.csv")) {
            ConductorRow gauge =
                    solid.row(Gauge.parse(row.get("gauge") + " AWG")).orElseThrow();
            printed(row.get("ohms25C"), thousandFeet(gauge, 25), 0.6);
            printed(row.get("ohms65C"), thousandFeet(gauge, 65), 0.6);
        }
    }

    /**
     * NEC chapter 9 Table 8, uncoated copper at 75 C: solid rows to the last printed digit; stranded ones are up to 2.5 % longer
     * in the lay, which the program takes from a table of stranded wire instead.
     */
    @Test
    void necResistancesAtSeventyFiveDegrees() throws IOException {
        int rows = 0;
        for (Map<String, String> row : HandbookRows.of("nec-chapter-9-table-8.csv")) {
            ConductorRow gauge =
                    solid.row(Gauge.parse(row.get("size") + " AWG")).orElseThrow();
            double ours = thousandFeet(gauge, 75);
            if (row.get("strands").equals("1")) {
                printed(row.get("uncoated_cu"), ours, 1);
            } else {
                double lay = Double.parseDouble(row.get("uncoated_cu")) / ours;
                assertTrue(lay > 1.009 && lay < 1.031, row.get("size") + " is longer by " + lay);
            }
            rows++;
        }
        assertEquals(14, rows);
    }

    private double thousandFeet(ConductorRow row, double celsius) {
        return VoltageDrop.volts(row, 1000 * METRES_PER_FOOT, 1, tables.copper().resistanceRatio(celsius));
    }

    private static void printed(String text, double ours, double units) {
        int decimals = text.length() - text.indexOf('.') - 1;
        assertEquals(Double.parseDouble(text), ours, units * Math.pow(10, -decimals), text);
    }

    /**
     * ABYC E-11, sizes for a drop of 3 % at 12 V: each of the 128 cells held against the thinnest gauge whose drop is no more than 0.36
     * V. 120 agree; six are printed one size larger, two with up to 2 % too little copper.
     */
    @Test
    void everySizeOfTheThreePercentTableFollowsFromItsFormula() throws IOException {
        List<String> larger = new ArrayList<>();
        List<String> smaller = new ArrayList<>();
        int same = 0;
        for (Map<String, String> row : HandbookRows.of("abyc-e-11-three-percent-12-volts.csv")) {
            double feet = Double.parseDouble(row.get("length_ft"));
            for (Map.Entry<String, String> cell : new TreeMap<>(row).entrySet()) {
                if (!cell.getKey().endsWith("A") || cell.getValue().isEmpty()) {
                    continue;
                }
                double amps = Double.parseDouble(cell.getKey().replace("A", ""));
                Gauge printed = Gauge.parse(cell.getValue() + " AWG");
                Gauge ours = VoltageDrop.thinnest(boat, feet * METRES_PER_FOOT, amps, 0.36, BOAT_RATIO)
                        .map(ConductorRow::gauge)
                        .orElse(Gauge.parse("4/0 AWG"));
                int order = printed.compareTo(ours);
                same += order == 0 ? 1 : 0;
                String where = row.get("length_ft") + " ft " + cell.getKey();
                (order > 0 ? larger : smaller).addAll(order == 0 ? List.of() : List.of(where));
            }
        }
        assertEquals(List.of("15 ft 90A", "30 ft 90A", "40 ft 70A", "70 ft 40A", "70 ft 50A", "90 ft 30A"), larger);
        // 10.75 x 15 x 60 / 0.36 = 26,875 circular mils, 6 AWG has 26,251; 10.75 x 5 x 70 / 0.36 = 10,451, 10 AWG has
        // 10,383
        assertEquals(List.of("60 ft 15A", "70 ft 5A"), smaller);
        assertEquals(120, same);
    }
}
