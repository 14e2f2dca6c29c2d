package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.SizedHarness;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/** A whole example with every size taken away and chosen anew, solved again with the chosen sizes as the check. */
@BesideOthers
class ExampleSizingTest {
    /** A load that gets less is off: a freewheel diode leaks this little. */
    private static final double LEAKS_AMPS = 1e-3;

    private static final Path EXAMPLE = Path.of("examples", "star-ground.harness.json");
    /** The second solution differs from the one the choice rests on by less than this, V. */
    private static final double AGREEMENT_VOLTS = 1e-6;

    private final WireTables tables = WireTables.bundled();

    private Analysis chosenAnew() throws Exception {
        Harness given = HarnessFiles.read(EXAMPLE);
        return SizedHarness.anew(Analyst.analyse(given, tables, Cancel.NEVER), Cancel.NEVER)
                .analysis();
    }

    @Test
    void everyLoadKeepsItsLimitAndEveryConductorItsAmpacity() throws Exception {
        Analysis check = chosenAnew();
        int loads = 0;
        for (Solution solution : check.evidence().solutions().values()) {
            for (LoadVolts load : solution.loads().values()) {
                if (load.amps() > LEAKS_AMPS) {
                    loads++;
                    assertTrue(
                            load.onDropVolts() <= load.limitVolts() + AGREEMENT_VOLTS,
                            load.load() + " loses " + load.onDropVolts() + " V");
                }
            }
        }
        assertTrue(loads >= 4, "the example has loads that draw");
        for (WireRating rating : check.ratings().values()) {
            assertTrue(
                    rating.worstAmps() <= rating.ampacity().orElseThrow().limitAmps(),
                    rating.wire().id() + "");
        }
    }

    @Test
    void noWireIsLeftWithoutASizeAndNoneAsksForMore() throws Exception {
        Analysis check = chosenAnew();
        List<Wire> wires = List.copyOf(check.harness().wires().all());
        assertEquals(0, wires.stream().filter(wire -> wire.gauge().isEmpty()).count());
        for (ConductorChoice choice : check.conductors().values()) {
            Wire wire = check.harness().wires().get(choice.wire());
            assertTrue(
                    choice.gauge().orElseThrow().compareTo(wire.gauge().orElseThrow()) <= 0,
                    wire.id() + ": " + choice.governing().reason());
        }
    }
}
