package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;

/** Harnesses for the tests of the solver. */
final class Harnesses {

    private Harnesses() {}

    /** A harness without elements; 12 V, 3 % allowed drop. */
    static Harness empty() {
        return Harness.empty(
                TitleBlock.of("Loads of a test", "T-2"),
                new DesignRules("road-vehicle", 12, 0.03, GaugeSystem.METRIC, "PVC", Optional.empty(), 25));
    }
}
