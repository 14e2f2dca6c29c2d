package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.desk.Examples;

/** Renaming by a pattern, seen before it is done. */
class RenamePaneTest {

    @Test
    void thePatternIsTriedAsItIsTyped() throws Exception {
        Harness harness = Examples.open("teaching").harness();
        List<ElementId> wires = List.copyOf(harness.wires().ids());
        Object[] answered = {Optional.empty()};
        RenamePane pane = OnEventThread.get(() -> new RenamePane(harness, wires, edit -> answered[0] = edit));
        OnEventThread.run(() -> {
            assertFalse(pane.renameButton().isEnabled(), "nothing changes yet");
            pane.patternField().setText("W{");
            assertTrue(pane.stateText().contains("partner"), pane.stateText());
            pane.patternField().setText("X1");
            assertFalse(pane.renameButton().isEnabled());
            pane.patternField().setText("{class}-{01}");
            assertTrue(pane.renameButton().isEnabled(), pane.stateText());
            pane.renameButton().doClick();
        });
        @SuppressWarnings("unchecked")
        Optional<Edit> edit = (Optional<Edit>) answered[0];
        Harness after = edit.orElseThrow().apply(harness);
        assertEquals(harness.wires().size(), after.wires().size());
        assertTrue(after.wires().has(new WireId("feed-01")));
    }
}
