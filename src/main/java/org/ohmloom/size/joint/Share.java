package org.ohmloom.size.joint;

import org.ohmloom.units.Require;

/**
 * What a part spends of a budget: amps x its resistance.
 *
 * @param part  index of the part in its problem
 * @param curve the curve of resistance of that part that counts here
 * @param amps  current through it, A, 0 or more
 */
public record Share(int part, int curve, double amps) {

    public Share {
        Require.notNegative(amps, "current of a share");
    }
}
