package org.ohmloom.workbench.window;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import org.ohmloom.workbench.CountedHand;
import org.ohmloom.workbench.OnEventThread;

/** Draws the teaching example on an empty layout by hand: places its things, draws its segments and its wires, splices one. */
final class TeachingBoard {

    /** Turns of the wheel until all of it has room. */
    private static final int FARTHER = 5;

    private final HandAtTheLayout layout;
    private final CountedHand hand;
    private final Dimension room;

    TeachingBoard(HandAtTheLayout layout, CountedHand hand) {
        this.layout = layout;
        this.hand = hand;
        this.room = OnEventThread.get(() -> layout.canvas().getSize());
    }

    /** A place on the layout: so many tenths of its first width and height, which tools may make less. */
    private Point at(int right, int down) {
        return new Point(room.width * right / 10, room.height * down / 10);
    }

    private Point battery() {
        return at(3, 5);
    }

    private Point split() {
        return at(7, 5);
    }

    void draw() {
        hand.turn(layout.canvas(), FARTHER);
        place();
        segments();
        wires();
    }

    private void place() {
        hand.click("strip-tool-component");
        hand.choose("tool-kind", "Battery");
        click(battery());
        hand.choose("tool-kind", "Fuse");
        click(battery());
        hand.choose("tool-kind", "Switch");
        hand.click("tool-plugged");
        click(at(5, 5));
        hand.choose("tool-kind", "Heater");
        click(at(9, 2));
        hand.choose("tool-kind", "Constant-current load");
        click(at(9, 5));
        hand.click("strip-tool-ground");
        click(at(1, 5));
        click(at(9, 8));
        hand.click("strip-tool-breakout");
        click(split());
    }

    /** Click by click as long as lengths are the same, then from end to end. */
    private void segments() {
        hand.click("strip-tool-segment");
        hand.enter("tool-length", "1");
        click(battery());
        click(at(5, 5));
        click(split());
        click(at(9, 2));
        hand.shortcut(KeyEvent.VK_ESCAPE);
        hand.enter("tool-length", "1,5 m");
        drag(split(), at(9, 5));
        hand.enter("tool-length", "500 mm");
        drag(split(), at(9, 8));
        drag(battery(), at(1, 5));
    }

    /** The feed goes to the heater; the splice on it takes in the pump. */
    private void wires() {
        hand.click("strip-tool-wire");
        end("BT1", "BT1.+, free");
        end("F1", "F1.1, free");
        end("F1", "F1.2, free");
        end("S1", "S1.1, free");
        end("S1", "S1.2, free");
        end("X1", "X1.1  +, free");
        hand.click("strip-tool-splice");
        click(split());
        hand.click("strip-tool-wire");
        click(layout.middle("SP1"));
        end("X2", "X2.1  +, free");
        end("X1", "X1.2  -, free");
        click(layout.middle("G2"));
        end("X2", "X2.2  -, free");
        click(layout.middle("G2"));
        click(layout.middle("G1"));
        end("BT1", "BT1.-, free");
        hand.shortcut(KeyEvent.VK_ESCAPE);
    }

    /** Clicks on a thing and picks the place on it at which a wire ends. */
    private void end(String id, String choice) {
        click(layout.middle(id));
        hand.pick(choice);
        layout.settle();
    }

    private void click(Point at) {
        hand.clickAt(layout.canvas(), at);
        layout.settle();
    }

    private void drag(Point from, Point to) {
        hand.dragOn(layout.canvas(), from, to);
        layout.settle();
    }
}
