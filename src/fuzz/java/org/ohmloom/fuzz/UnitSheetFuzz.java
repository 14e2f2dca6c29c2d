package org.ohmloom.fuzz;

import java.nio.charset.StandardCharsets;
import org.ohmloom.signal.unit.UnitSheet;
import org.ohmloom.signal.unit.UnitSheetException;
import org.ohmloom.store.CsvTableException;

/** A description of a control unit, comma-separated: refused in one line, or read. */
public final class UnitSheetFuzz {

    private UnitSheetFuzz() {}

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        try {
            UnitSheet.read(new String(data, StandardCharsets.UTF_8), "fuzz");
        } catch (CsvTableException | UnitSheetException refused) {
            OneLine.check(refused.getMessage());
        }
    }
}
