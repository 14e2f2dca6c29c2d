package org.ohmloom.fuzz;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.ohmloom.bench.record.FilledSheet;
import org.ohmloom.bench.record.RecordDefaults;
import org.ohmloom.bench.record.RecordRefusedException;
import org.ohmloom.model.Harness;
import org.ohmloom.store.CsvTable;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;

/** A filled-in test sheet of the teaching example, comma-separated: each wrong cell refused in one line, or taken. */
public final class FilledSheetFuzz {

    private static final Harness TEACHING = teaching();

    private FilledSheetFuzz() {}

    private static Harness teaching() {
        try {
            return HarnessFiles.read(Path.of("examples/teaching.harness.json"));
        } catch (HarnessFileException missing) {
            throw new AssertionError(missing);
        }
    }

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        try {
            CsvTable table = CsvTable.parse(new String(data, StandardCharsets.UTF_8), "fuzz");
            FilledSheet.of(table, TEACHING, RecordDefaults.NONE);
        } catch (CsvTableException refused) {
            OneLine.check(refused.getMessage());
        } catch (RecordRefusedException refused) {
            refused.lines().forEach(line -> OneLine.check(line.english()));
        }
    }
}
