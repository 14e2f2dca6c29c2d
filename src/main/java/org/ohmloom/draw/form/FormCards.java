package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.draw.CavityView;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** The cards of all places: connectors as their outline from the wire side, terminals, ground points, splices. */
final class FormCards {

    private static final double VIEW_MM = 62;
    private static final double HIGHEST_MM = 150;

    private final Harness harness;
    private final SceneFonts fonts;
    private final Lettering lettering;
    private final Map<WireEnd, List<Wire>> wiresAt = new LinkedHashMap<>();
    private final Map<BreakoutId, List<FormCard>> entries = new LinkedHashMap<>();
    private final Set<String> unplaced = new TreeSet<>();

    FormCards(Harness harness, SceneFonts fonts) {
        this.harness = harness;
        this.fonts = fonts;
        this.lettering = new Lettering(fonts);
        for (Wire wire : harness.wires().all()) {
            wire.ends().forEach(end -> wiresAt.computeIfAbsent(end, each -> new ArrayList<>())
                    .add(wire));
        }
        harness.connectors().all().forEach(each -> put(each.id().value(), harness.breakout(each), connector(each)));
        harness.components().all().forEach(this::terminals);
        harness.grounds().all().forEach(each -> put(each.id().value(), each.at(), ground(each)));
        for (Splice splice : harness.splices().all()) {
            boolean along = splice.place()
                    .filter(place -> place instanceof Place.OnSegment)
                    .isPresent();
            if (!along) {
                put(
                        splice.id().value(),
                        splice.place().map(place -> ((Place.AtBreakout) place).breakout()),
                        splice(splice));
            }
        }
    }

    private void put(String id, Optional<BreakoutId> at, FormCard card) {
        if (at.isPresent()) {
            entries.computeIfAbsent(at.get(), each -> new ArrayList<>()).add(card);
        } else {
            unplaced.add(id);
        }
    }

    /** What has no place on the harness. */
    Set<String> unplaced() {
        return unplaced;
    }

    /** The breakouts with something at them. */
    Set<BreakoutId> places() {
        return new LinkedHashSet<>(entries.keySet());
    }

    /** The card of a breakout, if anything is fitted there: its entries in columns. */
    Optional<FormCard> at(BreakoutId breakout) {
        List<FormCard> all = entries.getOrDefault(breakout, List.of());
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<Item> items = new ArrayList<>();
        double x = 0;
        double y = 0;
        double wide = 0;
        double high = 0;
        for (FormCard each : all) {
            if (y > 0 && y + each.heightMm() > HIGHEST_MM) {
                x += wide + 3;
                y = 0;
                wide = 0;
            }
            Placement place = Placement.moved(x, y);
            each.items().forEach(item -> items.add(item.placed(place)));
            y += each.heightMm();
            wide = Math.max(wide, each.widthMm());
            high = Math.max(high, y);
        }
        return Optional.of(new FormCard(x + wide, high, items));
    }

    /** The end of a segment at which a ring is opened. */
    FormCard opened(BundleSegment segment, BreakoutId joins) {
        CardPen pen = new CardPen(lettering, segment.id().value());
        pen.title(segment.id().value(), "ring opened here");
        pen.line("joins breakout " + joins, Ink.TEXT);
        return pen.card();
    }

    private FormCard connector(Connector connector) {
        CardPen pen = new CardPen(lettering, connector.id().value());
        int count = connector.cavities().size();
        pen.title(connector.id().value(), count + "-way" + (connector.existing() ? ", in the vehicle" : ""));
        pen.line(connector.name(), Ink.TEXT);
        connector
                .component()
                .map(id -> "on " + id + " " + harness.components().get(id).name())
                .or(() -> harness.mate(connector).map(mate -> "mates with " + mate.id()))
                .ifPresent(words -> pen.line(words, Ink.SOFT_TEXT));
        Scene view = CavityView.of(
                        connector,
                        cavity -> wiresAt.getOrDefault(new WireEnd.AtCavity(connector.id(), cavity.name()), List.of()))
                .scene(fonts, VIEW_MM);
        pen.picture(view);
        return pen.card();
    }

    /** A component whose own terminals wires end on: one card where they are reached. */
    private void terminals(Component component) {
        List<String> used = new ArrayList<>();
        wiresAt.forEach((end, wires) -> {
            if (end instanceof WireEnd.AtTerminal at && at.component().equals(component.id())) {
                String names = wires.stream().map(wire -> wire.id().value()).collect(Collectors.joining(", "));
                used.add("terminal " + at.terminal() + ": " + names);
            }
        });
        if (used.isEmpty()) {
            return;
        }
        CardPen pen = new CardPen(lettering, component.id().value());
        pen.title(component.id().value(), "terminals");
        pen.line(component.name(), Ink.TEXT);
        used.forEach(words -> pen.line(words, Ink.SOFT_TEXT));
        Optional<BreakoutId> at = component.at().or(() -> harness.connectors().all().stream()
                .filter(connector ->
                        connector.component().filter(component.id()::equals).isPresent())
                .flatMap(connector -> connector.at().stream())
                .findFirst());
        put(component.id().value(), at, pen.card());
    }

    private FormCard ground(GroundPoint ground) {
        CardPen pen = new CardPen(lettering, ground.id().value());
        pen.earth();
        pen.title(ground.id().value(), "ground point");
        pen.line(ground.name(), Ink.TEXT);
        pen.line("on " + harness.bodies().get(ground.body()).name(), Ink.SOFT_TEXT);
        pen.line(wires(new WireEnd.AtGround(ground.id())), Ink.SOFT_TEXT);
        return pen.card();
    }

    private FormCard splice(Splice splice) {
        CardPen pen = new CardPen(lettering, splice.id().value());
        pen.splice();
        pen.title(splice.id().value(), "splice at the breakout");
        pen.line(splice.name(), Ink.TEXT);
        pen.line(wires(new WireEnd.AtSplice(splice.id())), Ink.SOFT_TEXT);
        return pen.card();
    }

    private String wires(WireEnd end) {
        return wiresAt.getOrDefault(end, List.of()).stream()
                .map(wire -> wire.id().value())
                .collect(Collectors.joining(", "));
    }
}
