package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.model.WireId;

/** Draws a circuit: cards in columns, every wire a line of its own with its number and size, none upon another. */
final class CircuitDrawing {

    private static final double TRACK_MM = 2.4;
    private static final double AIR_MM = 4;
    private static final double WIRE_MM = 0.45;
    private static final double LABEL_MM = CardMaker.SMALL_MM;
    private static final double BAR_MM = 1.4;

    private final CircuitPlan plan;
    private final Figures figures;
    private final Lettering lettering;
    private final List<Item> items = new ArrayList<>();
    private final List<Double> cuts = new ArrayList<>();
    private final Map<Stance, Extent> places = new LinkedHashMap<>();
    private final Map<WireId, List<Point>> lines = new LinkedHashMap<>();

    CircuitDrawing(CircuitPlan plan, Figures figures, Lettering lettering) {
        this.plan = plan;
        this.figures = figures;
        this.lettering = lettering;
    }

    /** Where it may be cut from top to bottom: before each column but the first, where every wire runs level. */
    List<Double> cuts() {
        return cuts;
    }

    List<Item> items() {
        double x = 0;
        for (int k = 0; k < plan.columns().size(); k++) {
            int number = k;
            List<Stance> column = plan.columns().get(k);
            if (k > 0) {
                cuts.add(x - AIR_MM / 2);
            }
            double width = column.stream().mapToDouble(this::widthMm).max().orElse(0);
            for (Stance stance : column) {
                double own = stance.card().isEmpty() ? width : widthMm(stance);
                double left = x + (width - own) / 2;
                places.put(stance, Extent.at(left, stance.topMm(), own, stance.heightMm()));
                stance.card().ifPresent(card -> card(stance, card));
            }
            List<Hop> hops =
                    plan.hops().stream().filter(hop -> hop.column() == number).toList();
            x += width + channel(hops, x + width);
        }
        plan.hops().stream().map(Hop::link).distinct().forEach(this::wire);
        return items;
    }

    private double widthMm(Stance stance) {
        if (stance.card().isEmpty()) {
            return 0;
        }
        Card card = stance.card().get();
        if (card.kind().symbolMm() > 0) {
            return Math.max(BAR_MM, card.widthMm() - card.kind().symbolMm());
        }
        double ports = portsMm(stance, true) + portsMm(stance, false) + 4;
        return Math.max(card.widthMm() - card.tabWidthMm(), ports);
    }

    private double portsMm(Stance stance, boolean left) {
        return stance.ports(left).stream()
                .mapToDouble(port -> lettering.widthMm(port.label(), Weight.REGULAR, LABEL_MM) + 1.5)
                .max()
                .orElse(0);
    }

    private void card(Stance stance, Card card) {
        Extent place = places.getOrDefault(stance, Extent.at(0, 0, 1, 1));
        boolean bar = card.kind().symbolMm() > 0;
        double y = place.topMm() + CardMaker.PAD_MM + CardMaker.TITLE_MM;
        double x = place.leftMm() + (bar ? 0 : CardMaker.PAD_MM);
        if (bar) {
            bar(stance, card, place);
        } else {
            add(card, new Box(place, 1, Fill.of(Ink.COMPONENT, Ink.COMPONENT_EDGE, 0.3)));
        }
        Text title =
                lettering.text(card.title(), new Point(x, y), CardMaker.TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        add(card, title);
        double after = x + title.widthMm() + 1.5;
        if (!card.remark().isEmpty()) {
            add(
                    card,
                    lettering.fitted(
                            card.remark(),
                            new Point(after, y),
                            LABEL_MM,
                            Math.max(4, place.rightMm() + 0.1 - (bar ? 0 : CardMaker.PAD_MM) - after),
                            Anchor.START,
                            Weight.REGULAR,
                            Ink.SOFT_TEXT));
        }
        for (String line : card.lines()) {
            y += CardMaker.LINE_MM;
            Point at = new Point(x, y);
            add(card, lettering.text(line, at, CardMaker.NAME_MM, Anchor.START, Weight.REGULAR, Ink.TEXT));
        }
        if (!bar) {
            ports(stance, card, place, true);
            ports(stance, card, place, false);
        }
    }

    /** Splices, ground points and loose ends: an upright bar that the wires meet. */
    private void bar(Stance stance, Card card, Extent place) {
        double x = place.centre().xMm();
        double top = place.topMm() + stance.headMm() + 0.6;
        Extent bar = new Extent(x - BAR_MM / 2, top, x + BAR_MM / 2, place.bottomMm() - 0.6);
        Ink ink = card.kind() == Card.Kind.CONTINUATION ? Ink.CAUTION : Ink.SPLICE;
        add(card, new Box(bar, BAR_MM / 2, Fill.of(ink)));
        if (card.kind() == Card.Kind.GROUND) {
            add(card, Line.of(0.35, Ink.EARTH, new Point(x, bar.bottomMm()), new Point(x, bar.bottomMm() + 1.2)));
            for (int k = 0; k < 3; k++) {
                double half = 2.1 - 0.7 * k;
                double y = bar.bottomMm() + 1.2 + 0.9 * k;
                add(card, Line.of(0.35, Ink.EARTH, new Point(x - half, y), new Point(x + half, y)));
            }
        }
        places.put(stance, new Extent(bar.leftMm(), place.topMm(), bar.rightMm(), place.bottomMm()));
    }

    private void ports(Stance stance, Card card, Extent place, boolean left) {
        for (Stance.Port port : stance.ports(left)) {
            if (!port.label().isEmpty()) {
                double y = stance.yMm(port.wire(), port.second(), left) + LABEL_MM / 2;
                double x = left ? place.leftMm() + 1.2 : place.rightMm() - 1.2;
                add(
                        card,
                        lettering.text(
                                port.label(),
                                new Point(x, y),
                                LABEL_MM,
                                left ? Anchor.START : Anchor.END,
                                Weight.REGULAR,
                                Ink.SOFT_TEXT));
            }
        }
    }

    /** The space right of a column: labels first, then upright tracks; gives its width. */
    private double channel(List<Hop> hops, double left) {
        double label = hops.stream()
                .filter(Hop::first)
                .mapToDouble(hop -> lettering.widthMm(label(hop), Weight.REGULAR, LABEL_MM) + 3)
                .max()
                .orElse(0);
        List<List<double[]>> tracks = new ArrayList<>();
        double start = left + AIR_MM + label;
        for (Hop hop : ordered(hops)) {
            double from = hop.fromMm();
            double to = hop.toMm();
            boolean level = !hop.back() && Math.abs(from - to) < 0.05;
            double x = level ? start : start + track(tracks, from, to) * TRACK_MM;
            List<Point> line = lines.computeIfAbsent(hop.link().wire().id(), id -> new ArrayList<>());
            Extent here = places.getOrDefault(hop.from(), Extent.at(left, from, 0, 0));
            line.add(new Point(here.rightMm(), from));
            if (hop.back()) {
                Extent there = places.getOrDefault(hop.to(), here);
                line.add(new Point(x, from));
                line.add(new Point(x, to));
                line.add(new Point(there.rightMm(), to));
            } else if (!level) {
                line.add(new Point(x, from));
                line.add(new Point(x, to));
            }
        }
        for (Hop hop : hops) {
            if (hop.first()) {
                String id = hop.link().wire().id().value();
                Extent here = places.getOrDefault(hop.from(), Extent.at(left, 0, 0, 0));
                double x = Math.max(left, here.rightMm()) + 1.5;
                Text text = lettering.text(
                        label(hop), new Point(x, hop.fromMm() - 0.7), LABEL_MM, Anchor.START, Weight.REGULAR, Ink.TEXT);
                items.add(Item.of(
                        Layer.NUMBERS, text, id, Strands.describe(hop.link().wire(), figures)));
            }
        }
        return AIR_MM + label + tracks.size() * TRACK_MM + AIR_MM;
    }

    /** Going down, the lowest turn first; going up, the highest: so they cross least. */
    private static List<Hop> ordered(List<Hop> hops) {
        List<Hop> ordered = new ArrayList<>();
        hops.stream()
                .filter(hop -> hop.toMm() > hop.fromMm())
                .sorted(Comparator.comparingDouble(Hop::fromMm).reversed())
                .forEach(ordered::add);
        hops.stream()
                .filter(hop -> hop.toMm() <= hop.fromMm())
                .sorted(Comparator.comparingDouble(Hop::fromMm))
                .forEach(ordered::add);
        return ordered;
    }

    private static int track(List<List<double[]>> tracks, double from, double to) {
        double top = Math.min(from, to) - 1;
        double bottom = Math.max(from, to) + 1;
        int number = 0;
        while (number < tracks.size()
                && tracks.get(number).stream().anyMatch(used -> used[0] < bottom && top < used[1])) {
            number++;
        }
        if (number == tracks.size()) {
            tracks.add(new ArrayList<>());
        }
        tracks.get(number).add(new double[] {top, bottom});
        return number;
    }

    private String label(Hop hop) {
        WireId id = hop.link().wire().id();
        return id
                + figures.ofWire(id)
                        .or(() -> figures.gauge(id).map(Words::size))
                        .map(text -> " " + text)
                        .orElse("");
    }

    private void wire(CircuitGraph.Link link) {
        WireId id = link.wire().id();
        List<Point> points = new ArrayList<>(lines.getOrDefault(id, List.of()));
        plan.hops().stream()
                .filter(hop -> hop.link().equals(link)
                        && !hop.back()
                        && hop.to().card().isPresent())
                .forEach(hop -> points.add(new Point(
                        places.getOrDefault(hop.to(), Extent.at(0, 0, 0, 0)).leftMm(), hop.toMm())));
        if (points.size() > 1) {
            SignalLook look = SignalLook.of(link.wire().signalClass());
            Line line = figures.step(id)
                    .map(step -> new Line(points, WIRE_MM * step.widthRatio(), step.ink(), LinePattern.CONTINUOUS))
                    .orElseGet(() -> new Line(points, WIRE_MM, look.ink(), look.pattern()));
            items.add(Item.of(Layer.WIRES, line, id.value(), Strands.describe(link.wire(), figures)));
        }
    }

    private void add(Card card, Mark mark) {
        items.add(Item.of(Layer.CONNECTORS, mark, card.element(), card.description()));
    }
}
