package org.ohmloom.review;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Wire;
import org.ohmloom.size.CrimpRange;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * How a conductor of a size fits a contact: its nominal area the crimp, its insulation the crimp's wings and the seal.
 *
 * @param areaMm2     nominal area of the conductor, mm2
 * @param diameterMm  outside diameter of its insulation, mm; empty when no table lists it
 * @param thinnestMm  smallest insulation the contact with its seal takes, mm
 * @param thickestMm  largest insulation the contact with its seal takes, mm
 * @param conductor   whether the conductor fits; true when another wire shares the crimp, as {@link
 *                    CavityDoubleOccupied} then judges it
 * @param insulation  whether the insulation fits; true when its diameter is not known
 */
record CrimpFit(
        double areaMm2,
        OptionalDouble diameterMm,
        double thinnestMm,
        double thickestMm,
        boolean conductor,
        boolean insulation) {

    private static final RuleInfo RULE = ConductorOutsideCrimpRange.INFO;

    /** Tries a wire with a size in a contact, alone or with another wire. */
    static CrimpFit of(Evidence evidence, ContactPart contact, Wire wire, Gauge gauge, boolean alone) {
        OptionalDouble diameter = OutsideDiameter.millimetres(evidence, wire, gauge);
        CrimpRange range = CrimpRange.of(contact);
        double area = gauge.nominalAreaMm2();
        return new CrimpFit(
                area,
                diameter,
                range.insulationMinMm(),
                range.insulationMaxMm(),
                !alone || range.takesConductor(area),
                diameter.isEmpty() || range.takesInsulation(diameter.getAsDouble()));
    }

    boolean fits() {
        return conductor && insulation;
    }

    /** Whether it is too large, so that no larger size fits either. */
    boolean isTooLarge(ContactPart contact) {
        return (!conductor && areaMm2 > contact.conductorMaxMm2())
                || (!insulation && diameterMm.orElse(0) > thickestMm);
    }

    /** What is wrong about the wire: {@code 16 AWG, 1.31 mm², insulation 2.4 mm}. */
    Text wireWords(Gauge gauge) {
        List<Text> words = new ArrayList<>(List.of(Text.of(gauge.text())));
        if (!conductor && !gauge.text().endsWith("mm2")) {
            words.add(Text.of(Formats.squareMillimetres(areaMm2)));
        }
        if (!insulation) {
            words.add(RULE.text("insulation", Formats.millimetres(diameterMm.orElseThrow())));
        }
        return Text.joined(", ", words);
    }

    /** What the contact takes of it. */
    Text contactWords(ContactPart contact) {
        Text area = RULE.text(
                "range",
                Formats.number(contact.conductorMinMm2()),
                Formats.squareMillimetres(contact.conductorMaxMm2()));
        Text thick = RULE.text("insulations", Formats.number(thinnestMm), Formats.millimetres(thickestMm));
        if (conductor || insulation) {
            return insulation ? area : thick;
        }
        return RULE.text("both", area, thick);
    }
}
