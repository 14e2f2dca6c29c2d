package org.ohmloom.workbench.widget;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Dimension;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.OnEventThread;

class SharedSplitTest {

    @Test
    void keepsToItsShareUntilAPersonMovesTheDivider() {
        SharedSplit split = OnEventThread.get(() -> split(0.6));
        assertEquals(List.of(510, 894, 510), places(split, 850, 1490, 850));
        OnEventThread.run(() -> split.setDividerLocation(300));
        assertEquals(List.of(300, 300), places(split, 1490, 850));
    }

    @Test
    void givesTheFirstPaneWhatItAsksForAtFirstAndWhatTheRoomGrowsByToTheSecond() {
        SharedSplit split = OnEventThread.get(() -> split(0.1).firstWhole());
        assertEquals(List.of(180, 180), places(split, 850, 1490));
    }

    private static SharedSplit split(double share) {
        JPanel first = new JPanel();
        first.setPreferredSize(new Dimension(180, 300));
        return new SharedSplit("chart", JSplitPane.HORIZONTAL_SPLIT, first, new JPanel(), share);
    }

    private static List<Integer> places(SharedSplit split, int... widths) {
        return OnEventThread.get(() -> IntStream.of(widths)
                .mapToObj(width -> {
                    split.setSize(width, 400);
                    split.doLayout();
                    return split.getLeftComponent().getWidth();
                })
                .toList());
    }
}
