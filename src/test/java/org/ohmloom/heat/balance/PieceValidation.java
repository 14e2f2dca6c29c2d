package org.ohmloom.heat.balance;

import static org.ohmloom.heat.balance.ReferenceRows.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Parts of the heat balance against worked exercises, and the shape of a measured warming. */
final class PieceValidation {

    /** Textbook arithmetic, percent. */
    private static final double ARITHMETIC = 0.5;
    /** Declared before the first run: how far the shape of a measured warming may be off, percent of its whole rise. */
    private static final double SHAPE = 10;

    private PieceValidation() {}

    static ValidationSection pieces() {
        double kelvinMetresPerWatt = new Cover(0, 1, 2, 0.13, 0.9).kelvinMetresPerWatt(2)
                + 3e-4 / (Math.PI * 2e-3)
                + 1 / (10 * Math.PI * 6e-3);
        List<ValidationPoint> points = List.of(
                piece(
                        "rubber over a wire: largest heat",
                        "critical-radius-heat",
                        "W/m",
                        (50 - 20) / kelvinMetresPerWatt),
                piece("critical radius k/h", "critical-radius", "mm", 1e3 * 0.13 / 10),
                piece("bare wire, film by a quarter-power law", "bare-wire", "C", textbook(2, 0, 0.3)),
                piece(
                        "the same with insulation",
                        "covered-wire",
                        "C",
                        textbook(6, Math.log(3) / (2 * Math.PI * 0.25), 0.9)),
                piece(
                        "Nusselt number of a pipe, Churchill and Chu",
                        "pipe-churchill-chu",
                        "",
                        Convection.churchillChu(6.884e6 * 0.7, 0.7)));
        return new ValidationSection(
                "Pieces of the balance",
                "worked textbook exercises, see correlations.csv in the test resources.",
                "0.5 %.",
                "The conduction, the search for the temperature and the correlation by themselves.",
                points);
    }

    private static ValidationPoint piece(String name, String id, String unit, double ours) {
        double published = number(ReferenceRows.row("correlations.csv", id), "value");
        return new ValidationPoint(name, unit, published, ours, -ARITHMETIC, ARITHMETIC);
    }

    /** The exercise's wire: 20 A, 0.01 ohm/m, 20 C; its own film law instead of ours. */
    private static double textbook(double outsideMm, double insulation, double emissivity) {
        double watts = 4;
        double surface = Rise.where(20, celsius -> {
            double rise = celsius - 20;
            double film = 1.25 * Math.pow(rise / (outsideMm / 1e3), 0.25);
            double hot = Math.pow(celsius + 273.15, 4) - Math.pow(293.15, 4);
            return Math.PI * outsideMm / 1e3 * (film * rise + emissivity * 5.670374419e-8 * hot) - watts;
        });
        return surface + watts * insulation;
    }

    /**
     * The measured flat cable warms like one heat store: each thermocouple's share of its own rise against
     * 1 - exp(-t/tau) with its own time constant, taken from the middle and the end of the warming.
     */
    static ValidationSection flatCable() {
        List<ValidationPoint> points = new ArrayList<>();
        for (String channel : List.of("O1", "O2", "I1")) {
            double start = at(channel, 420);
            double tau = tau(channel, start);
            double end = start + (at(channel, 1680) - start) / -Math.expm1(-(1680 - 420) / tau);
            for (int seconds : new int[] {300, 600, 900}) {
                double measured = (at(channel, 420 + seconds) - start) / (end - start);
                points.add(new ValidationPoint(
                        channel + ", share of the rise after " + seconds + " s (tau " + Math.round(tau) + " s)",
                        "",
                        measured,
                        -Math.expm1(-seconds / tau),
                        -SHAPE,
                        SHAPE));
            }
        }
        return new ValidationSection(
                "Shape of a measured warming",
                "flat cable of 4 x 10 AWG, thermocouples, NASA Glenn; the current in each conductor is not fully documented,"
                        + " so no temperatures.",
                "10 % of each share, declared before the first run.",
                "One heat store fits the open cable and the insulated one.",
                points);
    }

    /** The time constant that fits the middle and the end of the warming best, s. */
    static double tau(String channel, double start) {
        double half = (at(channel, 420 + 630) - start) / (at(channel, 1680) - start);
        // (1 - x)/(1 - x^2) = half with x = exp(-630/tau): x = 1/half - 1
        return -630 / Math.log(1 / half - 1);
    }

    static double at(String channel, int seconds) {
        List<CSVRecord> rows = ReferenceRows.of("flat-cable.csv");
        CSVRecord before = rows.get(0);
        for (CSVRecord row : rows) {
            if (number(row, "t_s") >= seconds) {
                double span = number(row, "t_s") - number(before, "t_s");
                double part = span == 0 ? 0 : (seconds - number(before, "t_s")) / span;
                return number(before, channel) + part * (number(row, channel) - number(before, channel));
            }
            before = row;
        }
        throw new AssertionError("the record ends before " + seconds + " s");
    }
}
