package org.ohmloom.workbench.widget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Map;
import javax.swing.JComboBox;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.OnEventThread;

/** A box whose choices are called otherwise by the program than on the screen. */
class ChoicesTest {

    private enum Kind {
        BATTERY,
        SUPPLY,
        HEATER,
        BUS_BAR
    }

    private static final Map<Kind, String> WORDS = Map.of(
            Kind.BATTERY, "Battery", Kind.SUPPLY, "Bench supply", Kind.HEATER, "Wärmer", Kind.BUS_BAR, "Bus bar");

    @Test
    void aLetterGoesOnToTheNextChoiceWhoseWordsBeginWithIt() {
        OnEventThread.run(() -> {
            JComboBox<Kind> box = new JComboBox<>(Kind.values());
            Choices.say(box, WORDS::get);
            box.selectWithKeyChar('b');
            assertEquals(Kind.SUPPLY, box.getSelectedItem());
            box.selectWithKeyChar('B');
            assertEquals(Kind.BUS_BAR, box.getSelectedItem());
            box.selectWithKeyChar('b');
            assertEquals(Kind.BATTERY, box.getSelectedItem(), "round the end");
            box.selectWithKeyChar('w');
            assertEquals(Kind.HEATER, box.getSelectedItem());
            assertFalse(box.selectWithKeyChar('s'), "no words begin with it");
            assertEquals(Kind.HEATER, box.getSelectedItem());
        });
    }
}
