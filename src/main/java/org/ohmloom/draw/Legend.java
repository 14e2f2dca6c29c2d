package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Formats;

/** The key below a layout: line patterns of the signal classes in use, and the zones with their ambient temperatures. */
public final class Legend {

    private static final double ROW_MM = 5;
    private static final double GAP_MM = 6;
    private static final double SAMPLE_MM = 16;
    private static final double SYMBOL_MM = 8;
    private static final double SAMPLE_HALF_MM = 0.6;
    private static final double TEXT_MM = 1.8;
    private static final double MOST_TEXT_MM = 80;

    private final Lettering lettering;
    private final double roomMm;
    private final List<Item> items = new ArrayList<>();
    private double xMm;
    private double yMm;

    private Legend(Lettering lettering, double roomMm) {
        this.lettering = lettering;
        this.roomMm = roomMm;
    }

    /** The items of the key, its upper left corner at the origin, as wide as the room at most. */
    public static List<Item> items(
            Harness harness, boolean wires, boolean tints, boolean symbols, Lettering lettering, double roomMm) {
        Legend legend = new Legend(lettering, roomMm);
        if (wires) {
            Set<SignalClass> used = EnumSet.noneOf(SignalClass.class);
            harness.wires().all().forEach(wire -> used.add(wire.signalClass()));
            used.forEach(legend::signal);
            legend.row();
        }
        if (tints) {
            zones(harness).forEach(id -> legend.zone(harness.zones().get(id)));
        }
        if (symbols) {
            legend.row();
            legend.symbols();
        }
        return legend.items;
    }

    /** A zone in plain words. */
    static String describe(Zone zone) {
        String id = zone.id().value();
        String name = zone.name().equals(id) ? id : id + ": " + zone.name();
        return name + ", " + Formats.celsius(zone.ambientCelsius());
    }

    private static Set<ZoneId> zones(Harness harness) {
        Set<ZoneId> used = new TreeSet<>();
        harness.segments().all().stream()
                .map(BundleSegment::zone)
                .flatMap(Optional::stream)
                .forEach(used::add);
        harness.components().all().stream()
                .map(Component::zone)
                .flatMap(Optional::stream)
                .forEach(used::add);
        harness.connectors().all().stream()
                .map(Connector::zone)
                .flatMap(Optional::stream)
                .forEach(used::add);
        harness.grounds().all().stream()
                .map(GroundPoint::zone)
                .flatMap(Optional::stream)
                .forEach(used::add);
        return new LinkedHashSet<>(used);
    }

    private void signal(SignalClass signalClass) {
        SignalLook look = SignalLook.of(signalClass);
        place(SAMPLE_MM, lettering.said(look.word()), at -> {
            Point from = at.plus(0, ROW_MM / 2);
            List<Point> points = List.of(from, from.plus(SAMPLE_MM, 0));
            return List.of(Item.of(Layer.CONNECTORS, new Line(points, 0.45, look.ink(), look.pattern())));
        });
    }

    private void zone(Zone zone) {
        place(5, describe(zone), at -> {
            Fill fill = Fill.of(BoardDrawing.tint(zone), Ink.ZONE_EDGE, 0.18);
            Box box = new Box(Extent.at(at.xMm(), at.yMm() + 0.7, 5, ROW_MM - 1.4), 0.8, fill);
            return List.of(Item.of(Layer.CONNECTORS, box, zone.id().value(), describe(zone)));
        });
    }

    private void symbols() {
        symbol("support", (from, middle) -> List.of(Symbols.support(middle)));
        symbol("tie", (from, middle) -> List.of(Symbols.tie(middle, SAMPLE_HALF_MM)));
        symbol(
                "covering, start and end",
                (from, middle) -> Symbols.covering(from.plus(1, 0), from.xMm() + SYMBOL_MM - 1, SAMPLE_HALF_MM));
        symbol("label of a connector", (from, middle) -> List.of(Symbols.label(middle, SAMPLE_HALF_MM)));
        symbol("splice", (from, middle) -> CardDrawing.splice(middle));
        place(0, "N1 in a box: note, see the table of notes", at -> List.of());
        place(0, "D1: datum of running dimensions", at -> List.of());
    }

    private void symbol(String words, BiFunction<Point, Point, List<? extends Mark>> marks) {
        place(SYMBOL_MM, words, at -> {
            Point from = at.plus(0, ROW_MM / 2);
            List<Item> sample = new ArrayList<>();
            Line bundle = Line.of(2 * SAMPLE_HALF_MM, Ink.BUNDLE, from, from.plus(SYMBOL_MM, 0));
            sample.add(Item.of(Layer.BUNDLES, bundle));
            marks.apply(from, from.plus(SYMBOL_MM / 2, 0)).forEach(mark -> sample.add(Item.of(Layer.CONNECTORS, mark)));
            return sample;
        });
    }

    private void place(double sampleMm, String all, Function<Point, List<Item>> sample) {
        String words = lettering.cut(all, Weight.REGULAR, TEXT_MM, Math.min(MOST_TEXT_MM, roomMm - sampleMm - 1.5));
        double textWidth = lettering.widthMm(words, Weight.REGULAR, TEXT_MM);
        if (xMm > 0 && xMm + sampleMm + 1.5 + textWidth > roomMm) {
            row();
        }
        items.addAll(sample.apply(new Point(xMm, yMm)));
        Point at = new Point(xMm + sampleMm + 1.5, yMm + ROW_MM / 2 + TEXT_MM / 2);
        items.add(
                Item.of(Layer.CONNECTORS, lettering.text(words, at, TEXT_MM, Anchor.START, Weight.REGULAR, Ink.TEXT)));
        xMm += sampleMm + 1.5 + textWidth + GAP_MM;
    }

    private void row() {
        if (xMm > 0) {
            xMm = 0;
            yMm += ROW_MM;
        }
    }
}
