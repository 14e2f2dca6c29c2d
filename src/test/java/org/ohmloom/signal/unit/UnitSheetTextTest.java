package org.ohmloom.signal.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** What is written of a unit is read again as that unit. */
@BesideOthers
class UnitSheetTextTest {

    @Test
    void everyShippedUnitIsReadAgainAsItWasWritten() throws Exception {
        for (UnitDescription unit : UnitLibrary.shipped()) {
            UnitDescription again = UnitSheet.read(UnitSheetText.of(unit).csv(), unit.name());
            assertEquals(unit.unit(), again.unit(), unit.name());
            assertEquals(unit.connectors(), again.connectors(), unit.name());
            assertEquals(unit.title(), again.title());
        }
    }
}
