package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Inrush multiples and supply ranges with their sources. */
class StartTablesTest {

    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void aFilamentLampTakesTenToEighteenTimesItsCurrentByThreeSources() {
        List<InrushMultiple> lamps = TABLES.inrushMultiples().stream()
                .filter(each -> each.load().equals(InrushMultiple.LAMP))
                .toList();
        assertEquals(3, lamps.size());
        assertEquals(
                10, lamps.stream().mapToDouble(each -> each.low().value()).min().orElseThrow());
        assertEquals(
                18,
                lamps.stream().mapToDouble(each -> each.high().value()).max().orElseThrow());
        assertTrue(lamps.stream().allMatch(each -> each.low().citation().status() == Status.PUBLISHED));
    }

    @Test
    void theCodesThatStandALowSupply() {
        // ISO 16750-2:2010 Table 1, 12 V: A from 6 V, B from 8 V, D from 10.5 V; Table 2, 24 V: E from 10 V
        assertEquals(List.of("A", "B"), codes(12, 8));
        assertEquals(List.of("A"), codes(12, 7.9));
        assertEquals(List.of(), codes(12, 5.9));
        assertEquals(List.of("E"), codes(24, 10.5));
        SupplyCode a = TABLES.supplyCodes().get(0);
        assertEquals(
                "ISO 16750-2:2010, Tables 1 and 2, row supply code A",
                a.minimumVolts().citation().text());
        assertEquals(16, a.maximumVolts().value());
    }

    private static List<String> codes(double nominalVolts, double lowestVolts) {
        return SupplyCode.standing(TABLES.supplyCodes(), nominalVolts, lowestVolts).stream()
                .map(SupplyCode::code)
                .toList();
    }

    @Test
    void theStartingProfileIsFromMemory() {
        // ISO 16750-2:2010 Table 5, level I: first dip to 8 V, then 9.5 V for 1 s
        StartingProfile one = TABLES.startingProfiles().get(0);
        assertEquals("I", one.level());
        assertEquals(8, one.lowestVolts().value());
        assertEquals(9.5, one.crankingVolts().value());
        assertEquals(1, one.crankingSeconds());
        assertEquals(Status.FROM_MEMORY, one.lowestVolts().citation().status());
    }
}
