package org.ohmloom.units;

/**
 * The size label of a conductor, in one of the two systems: "14 AWG", "2/0 AWG", "2.5 mm2".
 *
 * <p>It names a size; it does not say what a given conductor really measures or resists. For AWG the nominal geometry is
 * that of the solid wire of ASTM B258: diameter 0.005 inch for 36 and 0.46 inch for 4/0 in 39 equal ratios, so
 * d = 0.127 mm x 92^((36 - n) / 39).
 *
 * <p>Ordered by nominal copper area, thinnest first.
 *
 * @param system the labelling system
 * @param number for AWG a whole number from -3 (4/0) to 40; for metric the nominal area, 0.05 to 400 mm2
 */
public record Gauge(GaugeSystem system, double number) implements Comparable<Gauge> {
    /** The AWG number of 4/0, the thickest. */
    public static final int THICKEST_AWG = -3;
    /** The AWG number of the thinnest wire accepted. */
    public static final int THINNEST_AWG = 40;
    /** The smallest nominal metric area accepted, mm2. */
    public static final double SMALLEST_MM2 = 0.05;
    /** The largest nominal metric area accepted, mm2. */
    public static final double LARGEST_MM2 = 400;

    private static final double MILLIMETRES_OF_36_AWG = 0.127;
    private static final double MILLIMETRES_IN_A_MIL = 0.0254;

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException when the number is outside its system's range, or an AWG number is not whole
     */
    public Gauge {
        if (system == GaugeSystem.AWG) {
            Require.that(
                    number >= THICKEST_AWG && number <= THINNEST_AWG && number == Math.rint(number),
                    "an AWG number must be whole, from 4/0 (-3) to 40, was %s",
                    number);
            number = number + 0.0;
        } else {
            Require.within(number, SMALLEST_MM2, LARGEST_MM2, "nominal conductor area in mm2");
        }
    }

    /** The American wire gauge of this number; 0, -1, -2 and -3 are 1/0, 2/0, 3/0 and 4/0. */
    public static Gauge awg(int number) {
        return new Gauge(GaugeSystem.AWG, number);
    }

    /** The metric size of this nominal area, mm2. */
    public static Gauge metric(double nominalAreaMm2) {
        return new Gauge(GaugeSystem.METRIC, nominalAreaMm2);
    }

    /**
     * Reads a size label: "14 AWG", "AWG 14", "2/0 AWG", "4/0", "2.5 mm2", "2,5 mm²".
     *
     * @throws QuantityFormatException with one line for the person who typed it, when the text is not such a label
     */
    public static Gauge parse(String text) {
        return GaugeText.read(text);
    }

    /** The label as it is written and read back: "14 AWG", "2/0 AWG", "2.5 mm2". */
    public String text() {
        return GaugeText.write(this);
    }

    /** Nominal copper area, mm2: the label itself for metric sizes, the area of the ASTM B258 circle for AWG. */
    public double nominalAreaMm2() {
        return system == GaugeSystem.METRIC ? number : Math.PI / 4 * diameterMm() * diameterMm();
    }

    /**
     * Diameter of a solid round wire of the nominal area, mm.
     *
     * <p>AWG: by ASTM B258. Metric: 2 x sqrt(area / pi). A stranded conductor is thicker than this.
     */
    public double diameterMm() {
        return system == GaugeSystem.METRIC
                ? 2 * Math.sqrt(number / Math.PI)
                : MILLIMETRES_OF_36_AWG * Math.pow(92, (36 - number) / 39);
    }

    /** Nominal copper area in circular mils: the square of the diameter in thousandths of an inch. */
    public double circularMils() {
        double diameterMils = diameterMm() / MILLIMETRES_IN_A_MIL;
        return diameterMils * diameterMils;
    }

    @Override
    public int compareTo(Gauge other) {
        int byArea = Double.compare(nominalAreaMm2(), other.nominalAreaMm2());
        return byArea != 0 ? byArea : system.compareTo(other.system);
    }

    @Override
    public String toString() {
        return text();
    }
}
