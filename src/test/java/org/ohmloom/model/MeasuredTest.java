package org.ohmloom.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a reading names, and what no reading can be. */
class MeasuredTest {

    @Test
    void anEndOfTheTestSheetBelongsToAConnectorOrToTheWireWhoseTerminalItIs() {
        assertEquals(List.of("X1", "W7"), new Measured.Path("X1.3", "G2, terminal of W7", 0.01).names());
        assertEquals(
                List.of("W9", "W9"),
                new Measured.Path("loose end of W9", "BT1.+, terminal of W9 (from)", 0.01).names());
        assertEquals(List.of("X1"), new Measured.OfJoint("X1.3", 0.01).names());
        assertEquals(List.of("SP1"), new Measured.OfJoint("SP1", 0.01).names());
    }

    @Test
    void aReadingIsDatedByIso8601AndOnlyAResistanceCanReplaceOne() {
        for (String right :
                List.of("2026-01-31", "2026-01-31T14:05", "2026-01-31T14:05:09+01:00", "2026-01-31T13:05:09Z")) {
            assertEquals(
                    Optional.of(right),
                    reading(new Measured.OfWire("W1", 0.01), right, true).measuredAt());
        }
        for (String wrong : List.of("31.1.2026", "2026-02-30", "2026-01-31T25:00", "soon")) {
            assertTrue(
                    assertThrows(
                                    IllegalArgumentException.class,
                                    () -> reading(new Measured.OfWire("W1", 0.01), wrong, false))
                            .getMessage()
                            .contains("2026-01-31"),
                    wrong);
        }
        Measured isolation = new Measured.Isolation("X1.1", 1e9, OptionalDouble.empty(), false);
        assertEquals(
                "reading BR1 cannot replace a resistance: it is isolation",
                assertThrows(IllegalArgumentException.class, () -> reading(isolation, "2026-01-31", true))
                        .getMessage());
    }

    private static Reading reading(Measured measured, String at, boolean replaces) {
        return new Reading(
                new ReadingId("BR1"),
                measured,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(at),
                Optional.empty(),
                replaces);
    }
}
