package org.ohmloom.analysis.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.model.Wire;
import org.ohmloom.store.HarnessFiles;

/** The as-built record of an assembly by itself. */
@BesideOthers
class AssemblyReadingsTest {

    @Test
    void anAssemblyKeepsTheReadingsOfItsOwnWires() throws Exception {
        Harness whole = HarnessFiles.read(Path.of("examples", "rescue-pickup" + HarnessFiles.ENDING));
        List<AssemblyId> assemblies = List.copyOf(whole.assemblies().ids());
        Wire first = wireOf(whole, assemblies.get(0));
        Wire second = wireOf(whole, assemblies.get(1));
        Harness measured = whole.withAll(List.of(
                Reading.of(new ReadingId("BR1"), new Measured.OfWire(first.id().value(), 0.01)),
                Reading.of(new ReadingId("BR2"), new Measured.OfWire(second.id().value(), 0.01))));

        assertEquals(
                List.of(new ReadingId("BR1")),
                List.copyOf(AssemblyHarness.of(measured, assemblies.get(0))
                        .readings()
                        .ids()));
        assertEquals(
                List.of(new ReadingId("BR2")),
                List.copyOf(AssemblyHarness.of(measured, assemblies.get(1))
                        .readings()
                        .ids()));
        assertTrue(AssemblyHarness.of(whole, assemblies.get(0)).readings().isEmpty());
    }

    private static Wire wireOf(Harness whole, AssemblyId assembly) {
        return whole.wires().all().stream()
                .filter(wire -> wire.assembly().filter(assembly::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }
}
