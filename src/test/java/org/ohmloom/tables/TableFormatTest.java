package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A malformed table is refused with one line: file, line, column, what is wrong and what would be right. */
class TableFormatTest {
    private static final String HEAD = String.join(
            "\n",
            "# kind: conductors",
            "# id: example-family",
            "# title: Invented family for this test",
            "# source: none",
            "# edition: none",
            "# table: invented",
            "# status: common practice, no source",
            "# units: gauge=mm2; resistance=mohm/m",
            "");

    @TempDir
    Path folder;

    private String file;

    @BeforeEach
    void nameTheFile() {
        file = "own.csv";
    }

    @Test
    void aWellFormedTableOfABuilderIsReadBesideTheBundledOnes() throws IOException {
        write(HEAD + "gauge,resistance\n2.5,7.6\n1.5,12.7\n");
        WireTables tables = WireTables.load(folder);
        ConductorFamily family = tables.family("example-family");
        assertEquals("1.5 mm2", family.rows().get(0).gauge().text(), "rows ascend by copper area");
        assertEquals(0.0076, family.rows().get(1).ohmsPerMetreAt20Celsius());
        assertEquals(
                "invented, row 2.5 mm2 (common practice, no source)",
                family.rows().get(1).citation().text());
        assertEquals(WireTables.bundled().sheets().size() + 1, tables.sheets().size());
    }

    @Test
    void theExampleOfTheReadmeIsATable() throws IOException {
        // the lines of wire-tables/README.md that are set in by four blanks
        String example = Files.readString(Path.of("wire-tables", "README.md"))
                .lines()
                .filter(line -> line.startsWith("    "))
                .map(String::strip)
                .collect(Collectors.joining("\n"));
        write(example);
        // 7.98 ohm/km is 0.00798 ohm/m
        assertEquals(
                0.00798,
                WireTables.load(folder).family("my-cable").rows().get(0).ohmsPerMetreAt20Celsius(),
                1e-12);
    }

    @Test
    void aMissingHeadKeyIsNamed() {
        refused(
                HEAD.replace("# edition: none\n", "") + "gauge,resistance\n2.5,7.6\n",
                "own.csv, line 1: the head has no edition; add a line such as '# edition: ...'");
    }

    @Test
    void anUnknownStatusOfTheHeadIsNamed() {
        refused(
                HEAD.replace("common practice, no source", "probably right") + "gauge,resistance\n2.5,7.6\n",
                "own.csv, line 7, column status: 'probably right' is not a status; write published, from memory, "
                        + "computed (FORMULA) or common practice, no source");
    }

    @Test
    void anUnknownStatusOfARowIsNamed() {
        refused(
                HEAD + "gauge,resistance,status\n2.5,7.6,computed\n",
                "own.csv, line 10, column status: 'computed' is not a status; write published, from memory, "
                        + "computed (FORMULA) or common practice, no source");
    }

    @Test
    void aCellThatIsNotANumberIsNamed() {
        refused(
                HEAD + "gauge,resistance\n2.5,7.6\n1.5,12..7\n",
                "own.csv, line 11, column resistance: '12..7' is not a number; write a decimal number such as 12.5");
        refused(
                HEAD + "gauge,resistance\n2.5,NaN\n",
                "own.csv, line 10, column resistance: 'NaN' is not a number; write a decimal number such as 12.5");
    }

    @Test
    void aResistanceOfZeroIsRefused() {
        refused(
                HEAD + "gauge,resistance\n2.5,0\n",
                "own.csv, line 10, column resistance: '0' is not more than zero; write a positive number");
    }

    @Test
    void aSecondRowOfTheSameSizeIsNamedWithTheFirst() {
        refused(
                HEAD + "gauge,resistance\n2.5,7.6\n1.5,12.7\n2.5,7.7\n",
                "own.csv, line 12, column gauge: '2.5' is already in line 10; keep one row for it");
    }

    @Test
    void aRowWithTooManyCellsIsNamed() {
        refused(
                HEAD + "gauge,resistance\n2,5,7.6\n",
                "own.csv, line 10: the row has 3 cells; write 2, one for each of gauge, resistance");
    }

    @Test
    void aMissingColumnIsNamed() {
        refused(
                HEAD.replace("; resistance=mohm/m", "") + "gauge,ohms\n2.5,7.6\n",
                "own.csv, line 10, column resistance: there is no such column; "
                        + "add it to the header line and to every row");
    }

    @Test
    void aUnitOfTheWrongKindIsNamedWithTheRightOnes() {
        refused(
                HEAD.replace("mohm/m", "mm") + "gauge,resistance\n2.5,7.6\n",
                "own.csv, line 10, column resistance: 'mm' is not a unit for this column; "
                        + "declare one of mohm/m, ohm/1000 ft, ohm/km, ohm/m in '# units'");
    }

    @Test
    void unitsForAColumnThatIsNotThereAreRefused() {
        refused(
                HEAD + "gauge,resistances\n2.5,7.6\n",
                "own.csv, line 8, column resistance: units names a column that is not there; "
                        + "use one of gauge, resistances");
    }

    @Test
    void aConductorSizeThatIsNoneIsNamed() {
        refused(
                HEAD + "gauge,resistance\nthick,7.6\n",
                "own.csv, line 10, column gauge: 'thick' is not a conductor size; write one such as 14 AWG or "
                        + "2.5 mm2, or the number alone with the unit in '# units'");
    }

    @Test
    void anUnknownKindOfTableIsRefused() {
        TableFormatException thrown =
                refusal(HEAD.replace("# kind: conductors", "# kind: conductor") + "gauge,resistance\n2.5,7.6\n");
        assertEquals(
                "own.csv, line 1: the kind 'conductor' is not known; write one of adiabatic-k, altitude, ambient, "
                        + "ampacity, battery-acceptance, battery-open-circuit, battery-resistance, battery-types, bench-test, "
                        + "breakers, build-times, bundle, bus-figures, bus-limits, change-times, colours, conductors, copper, covering-sizes, coverings, design-bases, device-rating, drop, "
                        + "fault-conditions, fuse-ambient, fuse-breaking, fuse-derating, fuse-ratings, "
                        + "fuse-resistances, fuse-times, ground-limits, inrush, insulation, label-sizes, length-tolerances, mechanical, "
                        + "outside-diameters, placement, practice, "
                        + "protector, pull-force, reference, short-time, starting-profiles, supply-codes, switch, terminals, "
                        + "tie-spacing, tolerance-spreads, workmanship",
                thrown.getMessage());
    }

    @Test
    void anOpenQuotationMarkIsRefusedWithItsLine() {
        refused(
                HEAD + "gauge,resistance\n2.5,7.6\n\"1.5,12.7\n",
                "own.csv, line 11: the line is not plain CSV; close every quotation mark on its own line");
    }

    @Test
    void aTableWithoutRowsIsRefused() {
        refused(
                HEAD + "gauge,resistance\n",
                "own.csv, line 10: the table has no rows; write a header line and at least one row below the head");
    }

    @Test
    void aHeadLineThatSaysNothingIsRefused() {
        refused(
                "# hello\n" + HEAD + "gauge,resistance\n2.5,7.6\n",
                "own.csv, line 1: the head line is not a key and a text; write '# key: text'");
    }

    @Test
    void anIdThatABundledTableHasIsRefused() {
        refused(
                HEAD.replace("example-family", "iso-6722-1") + "gauge,resistance\n2.5,7.6\n",
                "own.csv, line 1, column id: the conductor family 'iso-6722-1' is already in "
                        + "wire-tables/iso-6722-1-conductors.csv; choose another name");
    }

    @Test
    void aFileThatIsNotUtf8IsRefused() throws IOException {
        Files.write(folder.resolve(file), (HEAD + "gauge,resistance\n").getBytes(StandardCharsets.UTF_16));
        TableFormatException thrown = assertThrows(TableFormatException.class, () -> WireTables.load(folder));
        assertEquals(folder.resolve(file) + ": it is not UTF-8 text; save it as UTF-8", thrown.getMessage());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path missing = folder.resolve("missing");
        TableFormatException thrown = assertThrows(TableFormatException.class, () -> WireTables.load(missing));
        assertEquals(missing + ": it is not a folder; name a folder with table files (*.csv)", thrown.getMessage());
    }

    @Test
    void aRefusalCarriesItsPlaceAndNoStackTrace() {
        TableFormatException thrown = refusal(HEAD + "gauge,resistance\n2.5,none\n");
        assertEquals("own.csv", thrown.fileName());
        assertEquals(10, thrown.line());
        assertEquals("resistance", thrown.column());
        assertEquals(0, thrown.getStackTrace().length);
    }

    private void refused(String text, String message) {
        assertEquals(message, refusal(text).getMessage());
    }

    private TableFormatException refusal(String text) {
        return assertThrows(TableFormatException.class, () -> {
            write(text);
            WireTables.load(folder);
        });
    }

    private void write(String text) throws IOException {
        Files.writeString(folder.resolve(file), text);
    }
}
