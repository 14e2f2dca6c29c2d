package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a builder's own tables refer to, and limits that are in the wrong order. */
class MalformedBasesTest {
    private static final String HEAD = String.join(
            "\n",
            "# kind: KIND",
            "# id: own",
            "# source: none",
            "# edition: none",
            "# table: invented",
            "# status: common practice, no source",
            "# units: UNITS",
            "");

    private static final String BASIS_COLUMNS =
            "id,title,defaultAwgFamily,defaultMetricFamily,ampacityTable,bundleTable,bundleFromVolts,"
                    + "baseAmbientCelsius,ambientRule,ambientTable,dropTable,protectorTable,placementSeverity\n";

    private static final String BASIS_UNITS = "bundleFromVolts=V; baseAmbientCelsius=C";

    @TempDir
    Path folder;

    @Test
    void aDesignBasisOfABuilderMayUseTheBundledTables() throws IOException {
        write(
                "design-bases",
                BASIS_UNITS,
                BASIS_COLUMNS
                        + "own,Own practice,ac-43.13-1b,iso-6722-1,din-vde-0298-4,none,0,30,square-root,none,none,none,"
                        + "warning\n");
        DesignBasis basis = WireTables.load(folder).basis("own");
        assertEquals("din-vde-0298-4", basis.ampacityTable());
        assertEquals(PlacementSeverity.WARNING, basis.placementSeverity());
    }

    @Test
    void aDesignBasisThatNamesNoSuchTableIsRefused() {
        refused(
                "design-bases",
                BASIS_UNITS,
                BASIS_COLUMNS
                        + "own,Own practice,ac-43.13-1b,iso-6722-1,own-amps,none,0,30,square-root,none,none,none,note\n",
                "own.csv, line 9, column ampacityTable: there is no table 'own-amps'; "
                        + "write one of 33-cfr-183.425, ac-43.13-1b, din-vde-0298-4");
    }

    @Test
    void aSeverityThatIsNoneIsRefused() {
        refused(
                "design-bases",
                BASIS_UNITS,
                BASIS_COLUMNS
                        + "own,Own,ac-43.13-1b,iso-6722-1,din-vde-0298-4,none,0,30,square-root,none,none,none,fatal\n",
                "own.csv, line 9, column placementSeverity: 'fatal' is not a severity; write error, warning or note");
    }

    @Test
    void aBundleFactorAboveOneIsRefused() {
        refused(
                "bundle",
                "upToConductors=1; factor=1",
                "upToConductors,factor\n3,1.1\n",
                "own.csv, line 9, column factor: the factor 1.1 is above 1; write a factor of 1 or less");
    }

    @Test
    void anInsulationWhoseMinimumIsNotBelowItsMaximumIsRefused() {
        refused(
                "insulation",
                "minimumCelsius=C; maximumCelsius=C",
                "id,title,minimumCelsius,maximumCelsius\nown,Own,105,-40\n",
                "own.csv, line 9, column minimumCelsius: the minimum is not below the maximum; check both temperatures");
    }

    @Test
    void fuseTimesInTheWrongOrderAreRefused() {
        refused(
                "fuse-times",
                "fromRatingAmps=A; toRatingAmps=A; percentOfRating=%; minimumSeconds=s; maximumSeconds=s",
                "type,fromRatingAmps,toRatingAmps,percentOfRating,minimumSeconds,maximumSeconds\nown,1,5,200,5,0.1\n",
                "own.csv, line 9, column minimumSeconds: the minimum is above the maximum; check both times");
    }

    @Test
    void fuseTimesOfATypeWithoutRatingsAreRefused() {
        refused(
                "fuse-times",
                "fromRatingAmps=A; toRatingAmps=A; percentOfRating=%; minimumSeconds=s; maximumSeconds=s",
                "type,fromRatingAmps,toRatingAmps,percentOfRating,minimumSeconds,maximumSeconds\nown,1,5,200,1,5\n",
                "own.csv, line 9, column type: 'own' has no ratings in any table; add its ratings, or correct it");
    }

    @Test
    void anUnknownIdIsAnsweredWithTheOnesThereAre() {
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class, () -> WireTables.bundled().ampacity("iso-6722-1"));
        assertEquals(
                "there is no ampacity table 'iso-6722-1'; there are 33-cfr-183.425, ac-43.13-1b, din-vde-0298-4",
                thrown.getMessage());
    }

    private void refused(String kind, String units, String body, String message) {
        TableFormatException thrown = assertThrows(TableFormatException.class, () -> {
            write(kind, units, body);
            WireTables.load(folder);
        });
        assertEquals(message, thrown.getMessage());
    }

    private void write(String kind, String units, String body) throws IOException {
        Files.writeString(folder.resolve("own.csv"), HEAD.replace("KIND", kind).replace("UNITS", units) + body);
    }
}
