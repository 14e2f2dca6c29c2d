package org.ohmloom.heat;

import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.heat.balance.SkinEffect;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Skin depth at a switching frequency against the strand and the conductor.
 *
 * @param frequencyHertz    switching frequency, Hz
 * @param depthMm           skin depth at it, mm, in the warm conductor
 * @param strandRadiusMm    radius of a strand, mm
 * @param conductorRadiusMm radius over the strands, mm
 * @param extraHeatFraction heat beyond that of the RMS current in the direct-current resistance, as a share of it, with the
 *                          conductor taken as solid and the harmonics of a rectangle in the alternating part
 */
public record SkinCheck(
        double frequencyHertz,
        double depthMm,
        double strandRadiusMm,
        double conductorRadiusMm,
        double extraHeatFraction) {

    /** Extra heat from which it matters, as a share: a hundredth, less than any table's last digit. */
    public static final double MATTERS_FROM = 0.01;

    /**
     * Checks.
     *
     * @param hertz             switching frequency, Hz
     * @param wire              the wire
     * @param celsius           its temperature, deg C
     * @param alternatingShare  alternating part of the square of its RMS current, as a share, 0 to 1
     */
    public static SkinCheck of(double hertz, RoundWire wire, double celsius, double alternatingShare) {
        double warm = wire.ohmsPerMetreAt(celsius);
        // a rectangle at half duty: half of its square alternates
        double perAlternating = SkinEffect.extraHeatFraction(hertz, 0.5, warm) / 0.5;
        return new SkinCheck(
                hertz,
                SkinEffect.depthMm(hertz, celsius),
                strandMm(wire.copperAreaMm2()) / 2,
                wire.conductorDiameterMm() / 2,
                alternatingShare * perAlternating);
    }

    /** Thickest strand of a flexible conductor, mm: IEC 60228 class 5, from memory. */
    static double strandMm(double copperAreaMm2) {
        if (copperAreaMm2 <= 1) {
            return 0.21;
        }
        if (copperAreaMm2 <= 2.5) {
            return 0.26;
        }
        return copperAreaMm2 <= 6 ? 0.31 : copperAreaMm2 <= 50 ? 0.41 : 0.51;
    }

    /** Whether it matters. */
    public boolean matters() {
        return extraHeatFraction >= MATTERS_FROM;
    }

    /** In words. */
    public Text told() {
        return HeatTexts.text(
                matters() ? "skin.matters" : "skin.does-not-matter",
                Formats.millimetres(depthMm),
                Formats.hertz(frequencyHertz),
                Formats.millimetres(strandRadiusMm),
                Formats.millimetres(conductorRadiusMm),
                Formats.percent(extraHeatFraction));
    }

    /** In English words. */
    public String words() {
        return told().english();
    }
}
