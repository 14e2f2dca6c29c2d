package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.words.PseudoLanguage;
import org.ohmloom.words.Text;

/** What our own tables say in words can be said in any language; what a builder wrote stays as written. */
@BesideOthers
class TableWordsTest {

    @Test
    void whereDevicesMaySitAndWhatBreakersDoIsSaidInAnyLanguage() {
        WireTables tables = WireTables.bundled();
        List<Text> said = Stream.concat(
                        tables.bases().stream()
                                .flatMap(basis -> tables.placementRules(basis.id()).stream())
                                .map(PlacementRule::situation),
                        tables.breakerTypes().stream().map(BreakerType::behaviour))
                .toList();
        assertTrue(said.size() > 10, said::toString);
        said.forEach(each -> assertTrue(each.in(PseudoLanguage.LOCALE).startsWith("["), each::english));
    }

    @Test
    void aBuildersOwnWordsStayAsWritten() {
        assertEquals(
                "behind the dashboard", TableWords.text("behind the dashboard").in(PseudoLanguage.LOCALE));
        assertEquals(
                "Conductor not sheathed or enclosed",
                TableWords.text("Conductor not sheathed or enclosed").in(PseudoLanguage.LOCALE));
    }
}
