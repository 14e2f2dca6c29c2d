package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;

/**
 * The cavities of a connector as they lie, seen from the wire side: by the connector's own grid where it has one, otherwise in the
 * order of the list. Each has its name and a sample of its wires' colours; a plugged one is crossed, an open one empty. One is
 * marked, so that a person at the bench finds the same one on the housing.
 */
public final class CavityView {

    /** Side of a cavity below which it is not drawn unless there are too many for the room, mm. */
    static final double LEAST_MM = 2.4;

    private static final double MOST_MM = 9;
    private static final double NAME_MM = 1.8;
    private static final double AROUND_NAME_MM = 1.2;
    private static final double RIM_MM = 1.5;
    private static final double CAPTION_MM = 3.6;
    private static final double CAPTION_LINE_MM = 3;
    private static final double MARK_MM = 1.9;

    /**
     * One place of the view.
     *
     * @param name    name of the cavity; empty where there is none
     * @param colours colours of the wires in it
     * @param used    whether a wire sits in it
     * @param plugged whether a plug sits in it
     */
    record Place(String name, List<WireColour> colours, boolean used, boolean plugged) {
        Place {
            colours = List.copyOf(colours);
        }
    }

    private final List<List<Place>> rows;
    private final String marked;
    private final boolean schematic;

    private CavityView(List<List<Place>> rows, String marked, boolean schematic) {
        this.rows = rows;
        this.marked = marked;
        this.schematic = schematic;
    }

    /**
     * The view of a connector.
     *
     * @param connector the connector
     * @param wires     the wires in a cavity
     */
    public static CavityView of(Connector connector, Function<Cavity, List<Wire>> wires) {
        List<List<String>> names = places(connector, CavityGrid.Side.WIRE_SIDE);
        List<List<Place>> rows = new ArrayList<>();
        for (List<String> row : names) {
            rows.add(row.stream()
                    .map(name -> connector
                            .cavity(name)
                            .map(cavity -> place(cavity, wires.apply(cavity)))
                            .orElse(new Place("", List.of(), false, false)))
                    .toList());
        }
        return new CavityView(
                rows, connector.cavities().get(0).name(), connector.grid().isEmpty());
    }

    /**
     * How the cavities of a connector lie, by name, row by row; an empty name is a place without one.
     *
     * @param side the side it is seen from; one without a grid is the same from both, since its places are only those of the list
     */
    public static List<List<String>> places(Connector connector, CavityGrid.Side side) {
        return connector
                .grid()
                .map(grid -> grid.rows(side))
                .orElseGet(() ->
                        inOrder(connector.cavities().stream().map(Cavity::name).toList()));
    }

    private static Place place(Cavity cavity, List<Wire> wires) {
        List<WireColour> colours =
                wires.stream().flatMap(wire -> wire.colour().stream()).toList();
        return new Place(cavity.name(), colours, !wires.isEmpty(), cavity.plug().isPresent() && wires.isEmpty());
    }

    /** Most places beside each other where nothing says how they lie. */
    private static final int MOST_ACROSS = 12;

    /** Names in one to four rows, or as many as keep them large enough, from the left and from the top. */
    private static List<List<String>> inOrder(List<String> names) {
        int count = names.size();
        int lines = count <= 3
                ? 1
                : count <= 16 ? 2 : count <= 36 ? 3 : Math.max(4, (count + MOST_ACROSS - 1) / MOST_ACROSS);
        int across = (count + lines - 1) / lines;
        List<List<String>> rows = new ArrayList<>();
        for (int from = 0; from < count; from += across) {
            rows.add(names.subList(from, Math.min(count, from + across)));
        }
        return rows;
    }

    /** The cavity that is marked. */
    public String marked() {
        return marked;
    }

    /** Whether the places are those of the list, not those of the housing. */
    public boolean isSchematic() {
        return schematic;
    }

    private int across() {
        return rows.stream().mapToInt(List::size).max().orElse(1);
    }

    /** Side of a cavity that a room of that width, mm, allows: wide enough for the names where it can be. */
    private double cellMm(Function<String, Double> nameWidth, double roomMm) {
        double widest = rows.stream()
                .flatMap(List::stream)
                .mapToDouble(place -> nameWidth.apply(place.name()))
                .max()
                .orElse(0);
        double wanted = Math.max(widest + AROUND_NAME_MM, 6.2);
        double most = (roomMm - 2 * RIM_MM) / across();
        return Math.min(
                most, Math.max(LEAST_MM, Math.min(most, Math.max(Math.min(wanted, 22), Math.min(MOST_MM, most)))));
    }

    private static double heightMm(double cellMm) {
        return Math.min(cellMm, MOST_MM);
    }

    /** Height with the words below it in a room of that width, mm. */
    double heightMm(Lettering lettering, double roomMm) {
        double cell = cellMm(name -> lettering.widthMm(name, Weight.REGULAR, NAME_MM), roomMm);
        int lines = caption(lettering, roomMm).size();
        return rows.size() * heightMm(cell) + 2 * RIM_MM + CAPTION_MM + 1.4 + (lines - 1) * CAPTION_LINE_MM;
    }

    /** The picture by itself, no wider than that, mm, 30 or more. */
    public Scene scene(SceneFonts fonts, double mostMm) {
        Lettering lettering = new Lettering(fonts);
        SheetPen pen = new SheetPen(lettering);
        draw(pen, 0.4, 0.4, mostMm - 0.8);
        double right = pen.items().stream()
                .mapToDouble(item -> item.mark().bounds().rightMm())
                .max()
                .orElse(mostMm);
        return new Scene(Math.min(mostMm, right + 0.4), heightMm(lettering, mostMm - 0.8) + 0.4, pen.items());
    }

    /** Draws it from its upper left corner, no wider than the room, mm. */
    void draw(SheetPen pen, double left, double top, double roomMm) {
        double cell = cellMm(name -> pen.lettering().widthMm(name, Weight.REGULAR, NAME_MM), roomMm);
        double high = heightMm(cell);
        Extent housing = Extent.at(left, top, across() * cell + 2 * RIM_MM, rows.size() * high + 2 * RIM_MM);
        pen.mark(new Box(housing, 1.2, Fill.of(Ink.CONNECTOR, Ink.CONNECTOR_EDGE, SheetPen.MEDIUM_MM)));
        for (int line = 0; line < rows.size(); line++) {
            List<Place> row = rows.get(line);
            for (int k = 0; k < row.size(); k++) {
                if (!row.get(k).name().isEmpty()) {
                    double x = left + RIM_MM + k * cell;
                    double y = top + RIM_MM + line * high;
                    cavity(pen, row.get(k), Extent.at(x, y, cell, high).grown(-0.3));
                }
            }
        }
        double base = housing.bottomMm() + CAPTION_MM - 0.8;
        for (String line : caption(pen.lettering(), roomMm)) {
            pen.text(line, left, base, NAME_MM, roomMm, Weight.REGULAR, Ink.SOFT_TEXT);
            base += CAPTION_LINE_MM;
        }
    }

    /** The words below it: the side it is seen from, whether as the housing, and the cavity that is marked. */
    private List<String> caption(Lettering lettering, double roomMm) {
        String order = schematic ? "wire side, in the order of the list" : "wire side";
        return lettering.wrapped(order + "; cavity " + marked + " marked", Weight.REGULAR, NAME_MM, roomMm, 2);
    }

    private void cavity(SheetPen pen, Place place, Extent room) {
        boolean isMarked = place.name().equals(marked);
        Ink inside = place.used() ? Ink.PLATE : Ink.CONNECTOR;
        pen.box(room, Fill.of(inside, Ink.CONNECTOR_EDGE, isMarked ? SheetPen.WIDE_MM : SheetPen.THIN_MM));
        if (isMarked && room.widthMm() > 2 * MARK_MM) {
            corner(pen, room);
        }
        if (place.plugged()) {
            pen.line(
                    SheetPen.THIN_MM, Ink.CONNECTOR_EDGE, room.leftMm(), room.topMm(), room.rightMm(), room.bottomMm());
            pen.line(
                    SheetPen.THIN_MM, Ink.CONNECTOR_EDGE, room.leftMm(), room.bottomMm(), room.rightMm(), room.topMm());
        }
        boolean legible = pen.lettering().widthMm(place.name(), Weight.REGULAR, NAME_MM) <= room.widthMm() - 0.3
                && room.heightMm() >= (place.colours().isEmpty() ? 1.6 : 2.2) * NAME_MM;
        Point middle = room.centre();
        if (legible) {
            double overSamples = room.bottomMm() - stripMm(room, true) - 0.95;
            double base = place.colours().isEmpty()
                    ? middle.yMm() + NAME_MM / 2
                    : Math.min(overSamples, room.topMm() + 0.9 + NAME_MM);
            if (place.plugged()) {
                double wide = pen.lettering().widthMm(place.name(), Weight.REGULAR, NAME_MM) + 0.8;
                pen.box(
                        Extent.at(middle.xMm() - wide / 2, base - NAME_MM - 0.4, wide, NAME_MM + 0.8),
                        Fill.of(Ink.CONNECTOR));
            }
            Ink ink = place.used() ? Ink.TEXT : Ink.SOFT_TEXT;
            pen.centred(place.name(), new Point(middle.xMm(), base), NAME_MM, room.widthMm(), Weight.REGULAR, ink);
        }
        samples(pen, place, room, legible);
    }

    /** A filled corner: the mark that shows without colour. */
    private static void corner(SheetPen pen, Extent room) {
        for (int k = 0; k < 4; k++) {
            double reach = MARK_MM * (4 - k) / 4;
            double y = room.topMm() + k * MARK_MM / 4;
            pen.box(Extent.at(room.leftMm(), y, reach, MARK_MM / 4), Fill.of(Ink.CONNECTOR_EDGE));
        }
    }

    private static double stripMm(Extent room, boolean named) {
        return named ? Math.max(0.8, room.heightMm() - NAME_MM - 2.6) : room.heightMm() * 0.45;
    }

    /** The colours of the wires below the name, side by side. */
    private static void samples(SheetPen pen, Place place, Extent room, boolean named) {
        int count = place.colours().size();
        double strip = stripMm(room, named);
        double wide = (room.widthMm() - 1.4) / Math.max(1, count);
        for (int k = 0; k < count; k++) {
            pen.mark(new Swatch(
                    Extent.at(
                            room.leftMm() + 0.7 + k * wide,
                            room.bottomMm() - strip - 0.6,
                            wide - (k + 1 < count ? 0.3 : 0),
                            strip),
                    place.colours().get(k)));
        }
    }
}
