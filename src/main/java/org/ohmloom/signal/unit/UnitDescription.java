package org.ohmloom.signal.unit;

import static org.ohmloom.units.Require.notBlank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.words.Text;

/**
 * A control unit or expansion module as its data sheet describes it: to be put into a harness as often as needed.
 *
 * @param name       short name, as it is asked for
 * @param title      what it is, in words
 * @param source     where its figures come from
 * @param unit       what it is electrically
 * @param connectors cavities of each of its connectors and the pins in them, in order; a cavity without a pin has an empty text
 */
public record UnitDescription(
        String name, String title, String source, ControlUnit unit, Map<String, Map<String, String>> connectors) {

    public UnitDescription {
        notBlank(name, "name of a control unit");
        notBlank(title, "title of control unit %s", name);
        notBlank(source, "source of control unit %s", name);
        connectors = Collections.unmodifiableMap(new LinkedHashMap<>(connectors));
    }

    /**
     * Puts it into a harness with its connectors, as one step.
     *
     * @param id   identity it gets there
     * @param name what people call it there
     * @param at   where it is reached, if that is known
     */
    public Edit into(Harness harness, ComponentId id, String name, Optional<BreakoutId> at) {
        FreshIds fresh = new FreshIds(harness);
        List<Element> elements = new ArrayList<>();
        elements.add(new Component(
                id, name, unit, Optional.empty(), Optional.empty(), at, Optional.empty(), false, Optional.empty()));
        connectors.forEach((label, pins) -> elements.add(new Connector(
                new ConnectorId(fresh.next("X")),
                name + ", " + label,
                Optional.of(id),
                Optional.empty(),
                at,
                pins.entrySet().stream()
                        .map(each -> new Cavity(
                                each.getKey(),
                                Optional.of(each.getValue()).filter(pin -> !pin.isEmpty()),
                                Optional.empty(),
                                Optional.empty(),
                                false))
                        .toList(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                grid(pins))));
        Text label = SignalTexts.text("put-in", name);
        return new Compound(label, List.of(new PutElements(label, elements)));
    }

    /** Two rows, as far as nothing else is known. */
    private static Optional<CavityGrid> grid(Map<String, String> pins) {
        int columns = (pins.size() + 1) / 2;
        return Optional.of(new CavityGrid(CavityGrid.Side.WIRE_SIDE, columns, List.copyOf(pins.keySet())));
    }
}
