package org.ohmloom.signal.unit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.NearestText;
import org.ohmloom.store.CsvTable;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.words.Refusals;

/** The control units that come with the program, all invented, and those of a person's own files. */
public final class UnitLibrary {

    /** Names of the units that come with the program. */
    public static final List<String> NAMES = List.of(
            "compact-unit",
            "main-unit",
            "input-module",
            "output-module",
            "remote-node",
            "thermocouple-module",
            "oxygen-module");

    private static final long MOST_BYTES = 4L << 20;

    private UnitLibrary() {}

    /** All units that come with the program. */
    public static List<UnitDescription> shipped() {
        List<UnitDescription> all = new ArrayList<>();
        for (String name : NAMES) {
            try {
                all.add(UnitSheet.read(text(name), name));
            } catch (CsvTableException | UnitSheetException broken) {
                throw new IllegalStateException(broken);
            }
        }
        return List.copyOf(all);
    }

    /** The text of a unit that comes with the program, as a pattern for a sheet of one's own. */
    public static String text(String name) {
        try (InputStream stream = UnitLibrary.class.getResourceAsStream(name + ".csv")) {
            if (stream == null) {
                throw new IllegalArgumentException("no control unit '" + name + "' comes with the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /**
     * The unit asked for: one that comes with the program, or that of a file ending in {@code .csv}.
     *
     * @throws CsvTableException  when the file cannot be read or is no table; one line for people
     * @throws UnitSheetException when there is none, or the file describes none; one line for people
     */
    public static UnitDescription find(String asked) throws CsvTableException, UnitSheetException {
        if (NAMES.contains(asked)) {
            return UnitSheet.read(text(asked), asked);
        }
        if (!asked.endsWith(".csv")) {
            throw new UnitSheetException(
                    new UnitSheetException.Place(""),
                    Refusals.text("no control unit '%s'%s", asked, NearestText.question(asked, NAMES)));
        }
        return UnitSheet.read(
                CsvTable.text(
                        Path.of(asked),
                        MOST_BYTES,
                        Refusals.text("more than 4 MB are no description of a control unit")),
                asked);
    }
}
