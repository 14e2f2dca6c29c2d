package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.WireId;

/**
 * Name and number of each wire on its level stretches inside a bundle, small enough for the room between its neighbours, so
 * that they come out when one looks closely. Each lies on a plate that interrupts the wire; plates have no element.
 */
final class StrandNames {

    private static final double MOST_MM = 0.5;

    /** Height of letters with descent and accents, in heights of capitals. */
    private static final double WHOLE_RATIO = 1.45;

    private static final double SIDE_RATIO = 0.5;

    /** A stretch is named where it is longer than its name by as much, mm. */
    private static final double LEAST_REST_MM = 6;

    private final Figures figures;
    private final Lettering lettering;
    private final boolean wanted;

    /**
     * Names of strands.
     *
     * @param wanted whether there are to be any
     */
    StrandNames(Figures figures, Lettering lettering, boolean wanted) {
        this.figures = figures;
        this.lettering = lettering;
        this.wanted = wanted;
    }

    /** Whether an item is a plate or a name that this class made, to be left out where it cannot be read. */
    static boolean isFine(Item item) {
        return item.layer() == Layer.WIRES && (item.mark() instanceof Box || item.mark() instanceof Text);
    }

    /**
     * The names along one wire.
     *
     * @param corners the line of the wire
     * @param pitchMm least distance of the middles of neighbouring wires along it, mm
     */
    List<Item> of(WireId wire, List<Point> corners, double pitchMm, String description) {
        List<Item> items = new ArrayList<>();
        if (!wanted) {
            return items;
        }
        figures.ofWire(wire).ifPresent(number -> {
            double heightMm = Math.min(MOST_MM, pitchMm / WHOLE_RATIO);
            String words = wire + "  " + number;
            double widthMm = lettering.widthMm(words, Weight.REGULAR, heightMm);
            for (int k = 1; k < corners.size(); k++) {
                Point from = corners.get(k - 1);
                Point to = corners.get(k);
                boolean level = Math.abs(from.yMm() - to.yMm()) < 1e-9;
                if (level && Math.abs(from.xMm() - to.xMm()) > widthMm + LEAST_REST_MM) {
                    Point middle = from.towards(to, 0.5);
                    double side = heightMm * SIDE_RATIO;
                    Extent plate = Extent.at(
                            middle.xMm() - widthMm / 2 - side, middle.yMm() - pitchMm / 2, widthMm + 2 * side, pitchMm);
                    items.add(Item.of(Layer.WIRES, new Box(plate, 0, Fill.of(Ink.BUNDLE_INSIDE))));
                    Point base = middle.plus(0, heightMm / 2);
                    Text text = lettering.text(words, base, heightMm, Anchor.MIDDLE, Weight.REGULAR, Ink.TEXT);
                    items.add(Item.of(Layer.WIRES, text, wire.value(), description));
                }
            }
        });
        return items;
    }
}
