package org.ohmloom.workbench.widget;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Color;
import javax.swing.JLabel;
import javax.swing.JList;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.OnEventThread;

/** A list with words below it, also between two looks, when the list has no background of its own and asks what it lies in. */
class ListWithFootTest {

    @Test
    void takesTheBackgroundOfTheListAndItsOwnWhileThatHasNone() {
        OnEventThread.run(() -> {
            JList<String> list = new JList<>();
            ListWithFoot both = new ListWithFoot(list, new JLabel("below"));
            both.setBackground(Color.GRAY);

            list.setBackground(Color.PINK);
            assertEquals(Color.PINK, both.getBackground());

            list.setBackground(null);
            assertEquals(Color.GRAY, both.getBackground());
            assertEquals(Color.GRAY, list.getBackground());
        });
    }
}
