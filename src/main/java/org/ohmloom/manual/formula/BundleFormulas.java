package org.ohmloom.manual.formula;

import java.util.Collections;
import java.util.List;
import org.ohmloom.bundle.length.Helix;
import org.ohmloom.bundle.packing.CirclePacking;

/** Lengths and diameters. */
final class BundleFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "twist-take-up",
                    "Take-up of twist",
                    "r = sqrt(1 + (pi x Dp / lay)^2)",
                    Symbol.of(
                            """
                    r | length of the wire over the length of its axis |
                    Dp | diameter of the circle its middle runs on | mm
                    lay | length of one turn | mm
                    """),
                    "Added to the cut length of twisted pairs and of wires laid in layers.",
                    "Geometry of the helix",
                    "sqrt(1 + (pi Dp / lay)^2)",
                    List.of("views/fabrication", "views/inspector"),
                    new Worked(
                            "Dp = 10 mm, lay 100 mm.",
                            "pi x 0.1 = 0.3142; squared 0.0987; sqrt(1.0987) = 1.048",
                            1.0482,
                            "",
                            () -> Helix.takeUpRatio(10, 100))),
            new Formula(
                    "bundle-diameter",
                    "Diameter of a bundle",
                    "the smallest circle found round circles that do not overlap",
                    Symbol.of(
                            """
                    d | diameter of each wire over its insulation | mm
                    D | diameter of the bundle | mm
                    """),
                    "Wires are laid one after the other where they take least room, from several beginnings, and pressed together; the smallest outcome counts. Seven equal wires lie as one round which six lie.",
                    "Our own search, from the same beginnings every time",
                    "",
                    List.of("views/fabrication", "rules/covering-does-not-fit"),
                    new Worked("Seven wires of 2 mm.", "2 + 2 x 2 = 6 mm", 6, "mm", () -> CirclePacking.of(
                                    Collections.nCopies(7, 2.0))
                            .diameterMm())));

    private BundleFormulas() {}
}
