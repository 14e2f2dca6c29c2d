package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;

/** What stands at the lower side of a sheet: line patterns, and the states the currents belong to. */
final class Foot {

    private static final double TEXT_MM = WireWords.TEXT_MM;
    private static final double LINE_MM = 3.2;
    private static final double GAP_MM = 4;

    private final List<Item> legend;
    private final WireWords words;
    private final Lettering lettering;
    private final double widthMm;

    Foot(List<Item> legend, WireWords words, Lettering lettering, double widthMm) {
        this.legend = legend;
        this.words = words;
        this.lettering = lettering;
        this.widthMm = widthMm;
    }

    private double legendMm() {
        return Extent.union(legend.stream().map(item -> item.mark().bounds()).toList())
                .map(Extent::bottomMm)
                .orElse(0.0);
    }

    /** Its height when all these wires are on one sheet, mm. */
    double heightMm(Collection<Wire> wires) {
        return GAP_MM + legendMm() + lines(states(wires)).size() * LINE_MM;
    }

    /** Worst states of wires; with more than one, currents carry their letter. */
    Set<StateId> states(Collection<Wire> wires) {
        Set<StateId> states = new TreeSet<>();
        wires.forEach(wire -> words.state(wire).ifPresent(states::add));
        return states;
    }

    private List<String> lines(Set<StateId> states) {
        if (states.isEmpty()) {
            return List.of();
        }
        Set<String> named = new LinkedHashSet<>();
        for (StateId state : states) {
            named.add((states.size() > 1 ? words.letter(state) + " " : "") + words.name(state));
        }
        String text = "Currents: RMS in the worst state that lasts: " + String.join("; ", named) + ".";
        return lettering.wrapped(text, Weight.REGULAR, TEXT_MM, widthMm, Integer.MAX_VALUE);
    }

    /** The items at the foot of an area with those wires. */
    List<Item> items(Collection<Wire> wires, Extent area) {
        List<String> lines = lines(states(wires));
        List<Item> items = new ArrayList<>();
        double top = area.bottomMm() - legendMm() - lines.size() * LINE_MM;
        Placement below = Placement.moved(area.leftMm(), top);
        legend.forEach(item -> items.add(item.placed(below)));
        double y = top + legendMm();
        for (String line : lines) {
            y += LINE_MM;
            items.add(new Item(
                    Layer.NUMBERS,
                    lettering.text(
                            line, new Point(area.leftMm(), y - 0.7), TEXT_MM, Anchor.START, Weight.REGULAR, Ink.TEXT),
                    Optional.empty(),
                    Optional.empty()));
        }
        return items;
    }
}
