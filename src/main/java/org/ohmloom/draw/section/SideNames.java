package org.ohmloom.draw.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/** Ids of wires too thin to hold them: beside the bundle, each at the end of a line from its wire. */
final class SideNames {

    /** Room for the names on one side, mm. */
    static final double WIDE_MM = 9;

    private static final double HEIGHT_MM = 1.5;
    private static final double PITCH_MM = 2.3;
    private static final double GAP_MM = 1.2;
    private static final double LINE_MM = 0.1;
    private static final double DOT_MM = 0.25;

    /**
     * A wire that cannot hold its id.
     *
     * @param id          its id
     * @param description what it is
     * @param at          its centre
     */
    record Place(String id, String description, Point at) {}

    private SideNames() {}

    /**
     * The names with their lines; those for which neither side has room are left out.
     *
     * @param places   the wires
     * @param centre   centre of the bundle
     * @param radiusMm its radius on the picture, mm
     * @param room     where names may stand
     */
    static List<Item> items(List<Place> places, Point centre, double radiusMm, Extent room, SceneFonts fonts) {
        int most = Math.max(0, (int) (room.heightMm() / PITCH_MM));
        List<Place> sorted = new ArrayList<>(places);
        sorted.sort(Comparator.comparingDouble(place -> place.at().xMm()));
        int left = (int)
                sorted.stream().filter(place -> place.at().xMm() < centre.xMm()).count();
        left = Math.min(most, Math.max(left, sorted.size() - most));
        List<Item> items = new ArrayList<>(column(sorted.subList(0, left), centre.xMm() - radiusMm, -1, room, fonts));
        int right = Math.min(sorted.size(), left + most);
        items.addAll(column(sorted.subList(left, right), centre.xMm() + radiusMm, 1, room, fonts));
        return items;
    }

    private static List<Item> column(List<Place> places, double edgeMm, int side, Extent room, SceneFonts fonts) {
        List<Place> down = new ArrayList<>(places);
        down.sort(Comparator.comparingDouble(place -> place.at().yMm()));
        double[] heights = heights(down, room);
        List<Item> items = new ArrayList<>();
        for (int k = 0; k < down.size(); k++) {
            Place place = down.get(k);
            double wide = fonts.widthMm(place.id(), Weight.REGULAR, 1);
            double height = Math.min(HEIGHT_MM, (WIDE_MM - 2 * GAP_MM) / wide);
            Point end = new Point(edgeMm + side * GAP_MM, heights[k]);
            items.add(Item.of(
                    Layer.WIRES, Line.of(LINE_MM, Ink.FRAME, place.at(), end), place.id(), place.description()));
            items.add(Item.of(Layer.WIRES, new Disc(place.at(), DOT_MM, Fill.of(Ink.FRAME))));
            items.add(Item.of(
                    Layer.NUMBERS,
                    new Text(
                            place.id(),
                            end.plus(side * 0.5, height / 2),
                            height,
                            wide * height,
                            side < 0 ? Anchor.END : Anchor.START,
                            0,
                            Weight.REGULAR,
                            Ink.TEXT),
                    place.id(),
                    place.description()));
        }
        return items;
    }

    /** Heights in order from the top, each as near to its wire as the pitch allows. */
    private static double[] heights(List<Place> down, Extent room) {
        double[] heights = new double[down.size()];
        double least = room.topMm() + PITCH_MM / 2;
        for (int k = 0; k < heights.length; k++) {
            heights[k] = Math.max(least, down.get(k).at().yMm());
            least = heights[k] + PITCH_MM;
        }
        double most = room.bottomMm() - PITCH_MM / 2;
        for (int k = heights.length - 1; k >= 0; k--) {
            heights[k] = Math.min(most, heights[k]);
            most = heights[k] - PITCH_MM;
        }
        return heights;
    }
}
