package org.ohmloom.size;

import org.ohmloom.model.ContactPart;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What the crimp of a contact takes, with its seal.
 *
 * @param conductorMinMm2  smallest nominal area of a conductor, mm2
 * @param conductorMaxMm2  largest nominal area, mm2
 * @param insulationMinMm  smallest outside diameter of the insulation, mm
 * @param insulationMaxMm  largest outside diameter, mm
 */
public record CrimpRange(
        double conductorMinMm2, double conductorMaxMm2, double insulationMinMm, double insulationMaxMm) {

    private static final double SLACK = 1e-6;

    /** The range of a contact, narrowed by its seal. */
    public static CrimpRange of(ContactPart contact) {
        return new CrimpRange(
                contact.conductorMinMm2(),
                contact.conductorMaxMm2(),
                contact.seal()
                        .map(seal -> Math.max(seal.insulationMinMm(), contact.insulationMinMm()))
                        .orElse(contact.insulationMinMm()),
                contact.seal()
                        .map(seal -> Math.min(seal.insulationMaxMm(), contact.insulationMaxMm()))
                        .orElse(contact.insulationMaxMm()));
    }

    /** Whether a conductor of that nominal area in mm2 fits. */
    public boolean takesConductor(double areaMm2) {
        return within(areaMm2, conductorMinMm2, conductorMaxMm2);
    }

    /** Whether an insulation of that diameter in mm fits. */
    public boolean takesInsulation(double diameterMm) {
        return within(diameterMm, insulationMinMm, insulationMaxMm);
    }

    /** The range in words. */
    Text words() {
        return SizeTexts.text(
                "crimp.range",
                Formats.number(conductorMinMm2),
                Formats.squareMillimetres(conductorMaxMm2),
                Formats.number(insulationMinMm),
                Formats.millimetres(insulationMaxMm));
    }

    private static boolean within(double value, double low, double high) {
        return value >= low * (1 - SLACK) && value <= high * (1 + SLACK);
    }
}
