package org.ohmloom.edit.board;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Labels;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ZoneId;
import org.ohmloom.words.Text;

/**
 * Says that things lie in a zone, or in none.
 *
 * @param ids  ids of segments, components, connectors and ground points; others do not count
 * @param zone the zone; empty for the default ambient
 */
public record PaintZone(List<String> ids, Optional<ZoneId> zone) implements Edit {

    public PaintZone {
        ids = List.copyOf(ids);
    }

    @Override
    public Text label() {
        Text what = Labels.subjects(ids, "things");
        return zone.map(id -> Labels.text("into-zone", what, id)).orElseGet(() -> Labels.text("out-of-zone", what));
    }

    @Override
    public Harness apply(Harness before) {
        return before.withAll(before.elements()
                .filter(element -> ids.contains(element.id().value()))
                .map(this::painted)
                .flatMap(Collection::stream)
                .toList());
    }

    private List<Element> painted(Element element) {
        if (element instanceof BundleSegment each) {
            return List.of(new BundleSegment(
                    each.id(),
                    each.from(),
                    each.to(),
                    each.lengthMetres(),
                    zone,
                    each.covering(),
                    each.assembly(),
                    each.layLengthMm()));
        }
        if (element instanceof Component each) {
            return List.of(new Component(
                    each.id(),
                    each.name(),
                    each.device(),
                    each.part(),
                    zone,
                    each.at(),
                    each.caseGround(),
                    each.existing(),
                    each.assembly()));
        }
        if (element instanceof Connector each) {
            return List.of(new Connector(
                    each.id(),
                    each.name(),
                    each.component(),
                    each.mate(),
                    each.at(),
                    each.cavities(),
                    each.part(),
                    each.lock(),
                    each.backshell(),
                    each.limitCelsius(),
                    zone,
                    each.existing(),
                    each.assembly(),
                    each.grid()));
        }
        return element instanceof GroundPoint each
                ? List.of(new GroundPoint(
                        each.id(),
                        each.name(),
                        each.body(),
                        each.jointOhms(),
                        each.at(),
                        zone,
                        each.part(),
                        each.existing(),
                        each.assembly(),
                        each.studs(),
                        each.studMm(),
                        each.torque()))
                : List.of();
    }
}
