package org.ohmloom.edit.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.Position;

/** New places for several things on the board: aligned, shared out evenly, mirrored, turned, on the grid. */
public final class Arrangement {

    /** What is aligned with what. */
    public enum Side {
        LEFT,
        CENTRE,
        RIGHT,
        TOP,
        MIDDLE,
        BOTTOM
    }

    private final List<Footprint> things;

    /** Of some things; of none, nothing moves. */
    public Arrangement(List<Footprint> things) {
        this.things = List.copyOf(things);
    }

    /** Each with its side where that of the outermost is; centre and middle are those of the room all take together. */
    public SortedMap<String, Position> aligned(Side side) {
        double left = least(Footprint::leftMm);
        double right = most(Footprint::rightMm);
        double top = least(Footprint::topMm);
        double bottom = most(Footprint::bottomMm);
        return placed(each -> switch (side) {
            case LEFT -> new Position(left + each.widthMm() / 2, each.centre().yMm());
            case CENTRE -> new Position((left + right) / 2, each.centre().yMm());
            case RIGHT -> new Position(right - each.widthMm() / 2, each.centre().yMm());
            case TOP -> new Position(each.centre().xMm(), top + each.heightMm() / 2);
            case MIDDLE -> new Position(each.centre().xMm(), (top + bottom) / 2);
            case BOTTOM -> new Position(each.centre().xMm(), bottom - each.heightMm() / 2);
        });
    }

    /** With equal gaps between neighbours; the outermost stay. Two things or fewer stay where they are. */
    public SortedMap<String, Position> sharedOut(boolean sideways) {
        if (things.size() < 3) {
            return new TreeMap<>();
        }
        ToDoubleFunction<Footprint> start = sideways ? Footprint::leftMm : Footprint::topMm;
        ToDoubleFunction<Footprint> size = sideways ? Footprint::widthMm : Footprint::heightMm;
        List<Footprint> order = new ArrayList<>(things);
        order.sort(Comparator.comparingDouble(each -> start.applyAsDouble(each) + size.applyAsDouble(each) / 2));
        Footprint first = order.get(0);
        Footprint last = order.get(order.size() - 1);
        double room = start.applyAsDouble(last) + size.applyAsDouble(last) - start.applyAsDouble(first);
        double filled = order.stream().mapToDouble(size).sum();
        double gap = (room - filled) / (order.size() - 1);
        SortedMap<String, Position> positions = new TreeMap<>();
        double at = start.applyAsDouble(first);
        for (Footprint each : order) {
            double middle = at + size.applyAsDouble(each) / 2;
            Position place = sideways
                    ? new Position(middle, each.centre().yMm())
                    : new Position(each.centre().xMm(), middle);
            each.ids().forEach(id -> positions.put(id, rounded(place)));
            at += size.applyAsDouble(each) + gap;
        }
        return positions;
    }

    /** As in a mirror through the middle of all: left and right change places, or top and bottom. */
    public SortedMap<String, Position> mirrored(boolean sideways) {
        Position middle = middle();
        return placed(each -> sideways
                ? new Position(
                        2 * middle.xMm() - each.centre().xMm(), each.centre().yMm())
                : new Position(
                        each.centre().xMm(), 2 * middle.yMm() - each.centre().yMm()));
    }

    /** Turned by a quarter about the middle of all; the things themselves stay upright. */
    public SortedMap<String, Position> turned(boolean clockwise) {
        Position middle = middle();
        int sign = clockwise ? 1 : -1;
        return placed(each -> new Position(
                middle.xMm() - sign * (each.centre().yMm() - middle.yMm()),
                middle.yMm() + sign * (each.centre().xMm() - middle.xMm())));
    }

    /**
     * Each with its middle on the nearest crossing of a grid.
     *
     * @param gridMm distance of the lines of the grid, mm, more than 0
     */
    public SortedMap<String, Position> onGrid(double gridMm) {
        return placed(each -> snapped(each.centre(), gridMm));
    }

    /** Moved. */
    public SortedMap<String, Position> moved(double dxMm, double dyMm) {
        return placed(
                each -> new Position(each.centre().xMm() + dxMm, each.centre().yMm() + dyMm));
    }

    /** The nearest crossing of a grid. */
    public static Position snapped(Position at, double gridMm) {
        return rounded(new Position(gridMm * Math.round(at.xMm() / gridMm), gridMm * Math.round(at.yMm() / gridMm)));
    }

    private Position middle() {
        return new Position(
                (least(each -> each.centre().xMm()) + most(each -> each.centre().xMm())) / 2,
                (least(each -> each.centre().yMm()) + most(each -> each.centre().yMm())) / 2);
    }

    private double least(ToDoubleFunction<Footprint> measure) {
        return things.stream().mapToDouble(measure).min().orElse(0);
    }

    private double most(ToDoubleFunction<Footprint> measure) {
        return things.stream().mapToDouble(measure).max().orElse(0);
    }

    private SortedMap<String, Position> placed(Function<Footprint, Position> place) {
        SortedMap<String, Position> positions = new TreeMap<>();
        things.forEach(each -> {
            Position at = rounded(place.apply(each));
            each.ids().forEach(id -> positions.put(id, at));
        });
        return positions;
    }

    /** Positions are kept to a tenth of a millimetre, as those a person drags to. */
    public static Position rounded(Position at) {
        return new Position(Math.round(at.xMm() * 10) / 10.0 + 0.0, Math.round(at.yMm() * 10) / 10.0 + 0.0);
    }
}
