package org.ohmloom.bundle.packing;

import java.util.List;

/**
 * Round wires inside the smallest circle found for them, that circle's centre at 0, 0.
 *
 * @param diameterMm diameter of the circle round all, mm; 0 for no wire
 * @param discs      the wires, in the order they were given
 */
public record CrossSection(double diameterMm, List<Disc> discs) {

    public CrossSection {
        discs = List.copyOf(discs);
    }

    /**
     * One wire.
     *
     * @param xMm        centre, mm to the right
     * @param yMm        centre, mm upwards
     * @param diameterMm diameter over the insulation, mm
     */
    public record Disc(double xMm, double yMm, double diameterMm) {}

    /** Share of the circle that wires fill, 0 to 1. */
    public double fillFraction() {
        double area = discs.stream()
                .mapToDouble(disc -> disc.diameterMm() * disc.diameterMm())
                .sum();
        return diameterMm == 0 ? 0 : area / (diameterMm * diameterMm);
    }
}
