package org.ohmloom.workbench;

import java.awt.event.KeyEvent;

/** A hand at the lists of a window: a list is found by its name, columns are shown, rows added, cells typed. */
public final class HandAtTheLists {

    private final CountedHand hand;
    private HandAtATable front;

    /** At one of the lists. */
    public HandAtTheLists(CountedHand hand, String title) {
        this.hand = hand;
        this.front = bring(title);
    }

    private HandAtATable bring(String title) {
        hand.enter("find-list", title);
        hand.shortcut(KeyEvent.VK_ENTER);
        return new HandAtATable(hand, "list-" + title);
    }

    /** Brings a list to the front by its name. */
    public HandAtTheLists open(String title) {
        front = bring(title);
        return this;
    }

    /** The list in front. */
    public HandAtATable front() {
        return front;
    }

    /** Shows columns that are hidden at first. */
    public HandAtTheLists show(String... columns) {
        hand.click("list-columns");
        for (String column : columns) {
            hand.pick(column);
        }
        hand.shortcut(KeyEvent.VK_ESCAPE);
        OnEventThread.await("the menu of columns to close", () -> !CountedHand.isSeen("columns"));
        return this;
    }

    /** Adds one thing and types its first cells, Tab between; an empty text passes over a cell. */
    public HandAtTheLists add(String... texts) {
        int rows = front.rows();
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_INSERT);
        front.awaitRows(rows + 1);
        for (int k = 0; k < texts.length; k++) {
            if (!texts[k].isEmpty()) {
                hand.type(texts[k]);
            }
            hand.shortcut(k < texts.length - 1 ? KeyEvent.VK_TAB : KeyEvent.VK_ENTER);
        }
        return this;
    }

    /** Types into a column from a row downwards; an empty text leaves a cell as it is. */
    public HandAtTheLists type(String row, String column, String... texts) {
        front.type(row, column, texts);
        return this;
    }
}
