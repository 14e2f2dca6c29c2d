package org.ohmloom.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ManualSearchTest {

    private static final Map<String, String> PAGES = Map.of(
            Manual.HOME,
            "# Home\n\n[a](a.md) [b](b.md) [c](c.md)",
            "a",
            "# Fuses\n\nA fuse opens. It protects a wire.",
            "b",
            "# Wires\n\nA wire has a size. A fuse protects the wire. Wires lie in bundles.",
            "c",
            "# Lamps\n\nA lamp glows where it is fed by a relay, a switch or an output.");

    private final ManualSearch search = new ManualSearch(Manual.read(id -> Optional.ofNullable(PAGES.get(id))));

    @Test
    void aPageMustHoldEveryWord() {
        assertEquals(List.of("a", "b"), ids("fuse wire"));
        assertEquals(List.of("c"), ids("relay output"));
        assertEquals(List.of(), ids("relay fuse"));
    }

    @Test
    void aPageWithTheWordInItsTitleComesFirst() {
        assertEquals(List.of("a", "b"), ids("fuse"));
        assertEquals(List.of("b", "a"), ids("wire"));
    }

    @Test
    void theBeginningOfAWordIsEnoughAndCapitalsAndPluralsDoNotMatter() {
        assertEquals(List.of("c"), ids("swi"));
        assertEquals(List.of("a", "b"), ids("FUSES"));
    }

    @Test
    void nothingIsFoundByNothing() {
        assertEquals(List.of(), search.find("  ,. "));
    }

    @Test
    void thePassageIsTheOneThatHoldsTheWords() {
        assertTrue(search.find("relay").get(0).passage().contains("fed by a relay"));
    }

    @Test
    void inTheManualARuleIsFoundByWhatItSays() {
        ManualSearch whole = new ManualSearch(Manual.bundled());
        assertEquals(
                "rules/no-return-path",
                whole.find("load no return to a source").get(0).page().id());
        assertEquals(
                "views/state-matrix", whole.find("state matrix").get(0).page().id());
        assertEquals(
                "dialogs/find-replace",
                whole.find("find and replace").get(0).page().id());
    }

    private List<String> ids(String typed) {
        return search.find(typed).stream().map(hit -> hit.page().id()).toList();
    }
}
