package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

/**
 * A single-wire seal.
 *
 * @param part            entry of the parts list
 * @param insulationMinMm smallest insulation diameter it seals, mm, more than 0
 * @param insulationMaxMm largest insulation diameter it seals, mm, at least the smallest
 */
public record Seal(PartId part, double insulationMinMm, double insulationMaxMm) {

    public Seal {
        positive(insulationMinMm, "smallest insulation of a seal");
        that(
                insulationMaxMm >= insulationMinMm && Double.isFinite(insulationMaxMm),
                "largest insulation of seal %s, %s mm, is below the smallest, %s mm",
                part,
                insulationMaxMm,
                insulationMinMm);
    }
}
