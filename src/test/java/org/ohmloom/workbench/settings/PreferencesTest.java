package org.ohmloom.workbench.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.prefs.BackingStoreException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class PreferencesTest {

    private static final String NODE = "org/ohmloom/test-of-preferences";

    @AfterEach
    void removeNode() throws BackingStoreException {
        java.util.prefs.Preferences.userRoot().node(NODE).removeNode();
    }

    @Test
    void theLatestFileStandsFirstOnceAndOldOnesFallOff() {
        Preferences some = Preferences.DEFAULT;
        for (int k = 0; k < 10; k++) {
            some = some.withRecent(Path.of("h" + k));
        }
        some = some.withRecent(Path.of("h5"));
        assertEquals(Preferences.RECENT, some.recent().size());
        assertEquals(Path.of("h5"), some.recent().get(0));
        assertEquals(1, some.recent().stream().filter(Path.of("h5")::equals).count());
    }

    @Test
    void whatWasSettledIsThereAtTheNextStart() {
        PreferenceNode node = PreferenceNode.at(NODE);
        node.change(before -> before.withLook(Look.DARK)
                .withCautionsRead()
                .withRecent(Path.of("a.harness.json"))
                .withFolder("harness", Path.of("somewhere"))
                .withPersonal(new Personal(150, 14, true, Map.of("undo", "ctrl pressed U", "look", "")))
                .withWindow(new Rectangle(10, 20, 900, 700), Map.of("side", 640)));
        Preferences again = PreferenceNode.at(NODE).now();
        assertEquals(Look.DARK, again.look());
        assertTrue(again.cautions());
        assertEquals(new Personal(150, 14, true, Map.of("undo", "ctrl pressed U", "look", "")), again.personal());
        node.change(before -> before.withPersonal(before.personal().withKeys(Map.of())));
        assertEquals(Map.of(), PreferenceNode.at(NODE).now().personal().keys());
        assertEquals(List.of(Path.of("a.harness.json")), again.recent());
        assertEquals(Path.of("somewhere"), again.folders().get("harness"));
        assertEquals(Optional.of(new Rectangle(10, 20, 900, 700)), again.window());
        assertEquals(640, again.dividers().get("side"));
    }

    @Test
    void aDamagedEntryCountsAsNone() {
        java.util.prefs.Preferences node =
                java.util.prefs.Preferences.userRoot().node(NODE);
        node.put("look", "PURPLE");
        node.put("window.width", "wide");
        node.put("zoomPercent", "7");
        node.put("fontPoints", "900");
        node.put("recent.0", "");
        assertEquals(Preferences.DEFAULT, PreferenceNode.at(NODE).now());
    }
}
