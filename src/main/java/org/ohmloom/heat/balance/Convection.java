package org.ohmloom.heat.balance;

/**
 * Natural convection from a horizontal cylinder in still air, as Nusselt numbers.
 *
 * <p>Two correlations and what we make of them. Churchill and Chu (1975) is the lower of the known ones where the layer of
 * moving air is thin beside the wire; for thin wires, where that layer is thicker than the wire, it gives some 20 % less
 * heat than hot-wire tests. Raithby and Hollands (1975) treat the thick layer as a shell that conducts, which is right for
 * thin wires. {@link #nusselt} goes from the one to the other at a Rayleigh number of about {@link #CHANGE}; the change
 * itself is ours, chosen on the free-air ratings of DIN VDE 0298-4, see src/docs/validation.md.
 */
public final class Convection {

    /** The Rayleigh number at which both correlations count half. */
    static final double CHANGE = 100;

    private Convection() {}

    /** The Nusselt number we use. Rayleigh and Prandtl numbers more than 0. */
    public static double nusselt(double rayleigh, double prandtl) {
        double share = CHANGE * CHANGE / (CHANGE * CHANGE + rayleigh * rayleigh);
        double thin = churchillChu(rayleigh, prandtl);
        return thin + share * (raithbyHollands(rayleigh, prandtl) - thin);
    }

    /** Churchill and Chu 1975, for Rayleigh numbers up to 1e12. */
    public static double churchillChu(double rayleigh, double prandtl) {
        double shape = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
        double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / shape;
        return root * root;
    }

    /** Raithby and Hollands 1975, laminar and turbulent part; in the form of the handbooks, from memory. */
    public static double raithbyHollands(double rayleigh, double prandtl) {
        double plate = 0.671 / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9);
        double thinLayer = 0.772 * plate * Math.pow(rayleigh, 0.25);
        double curvature = 1 - 0.13 / Math.pow(thinLayer, 0.16);
        if (curvature <= 0) {
            return churchillChu(rayleigh, prandtl);
        }
        double laminar = 2 * curvature / Math.log1p(2 * curvature / thinLayer);
        double turbulent = 0.103 * Math.cbrt(rayleigh);
        return Math.pow(Math.pow(laminar, 10) + Math.pow(turbulent, 10), 0.1);
    }
}
