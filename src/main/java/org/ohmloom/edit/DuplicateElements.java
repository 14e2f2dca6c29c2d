package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * Adds another of each element with the next identity. What can be joined only once is not: a wire begins with loose ends, a
 * connector plugs into nothing.
 */
public final class DuplicateElements {

    private DuplicateElements() {}

    /** The edit that adds another of each. */
    public static PutElements of(Harness harness, List<? extends ElementId> elements) {
        FreshIds ids = new FreshIds(harness);
        List<Element> made = new ArrayList<>();
        for (ElementId id : elements) {
            Element original = harness.element(id.value()).orElseThrow();
            String letters = id.value().replaceFirst("\\d+$", "");
            made.add(freed(copy(original, ids.next(letters.equals(id.value()) ? letters + "-" : letters))));
        }
        return new PutElements(Labels.text("add-another", Labels.subjects(elements, "things")), made);
    }

    private static Element copy(Element original, String id) {
        RecordShape shape = RecordShape.of((Record) original);
        return (Element) shape.with(
                (Record) original,
                shape.place("id"),
                RecordShape.of((Record) original.id()).made(id));
    }

    private static Element freed(Element copy) {
        if (copy instanceof Wire wire) {
            return wire.unmeasured().withEnds(new WireEnd.Loose(), new WireEnd.Loose());
        }
        return copy instanceof Connector connector ? freed(connector) : copy;
    }

    private static Connector freed(Connector connector) {
        List<Cavity> cavities = connector.cavities().stream()
                .map(cavity -> new Cavity(
                        cavity.name(), Optional.empty(), cavity.contact(), cavity.plug(), cavity.doubleCrimp()))
                .toList();
        return new Connector(
                connector.id(),
                connector.name(),
                Optional.empty(),
                Optional.empty(),
                connector.at(),
                cavities,
                connector.part(),
                connector.lock(),
                connector.backshell(),
                connector.limitCelsius(),
                connector.zone(),
                connector.existing(),
                connector.assembly(),
                connector.grid());
    }
}
