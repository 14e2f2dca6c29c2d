package org.ohmloom.edit.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Labels;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Position;
import org.ohmloom.model.Splice;
import org.ohmloom.words.Text;

/**
 * Hangs things at a breakout. A component goes with its connectors when it is named itself; positions of its own that a thing had
 * at its old breakout go.
 *
 * @param ids      ids of components, connectors, ground points and splices; others do not count
 * @param breakout the breakout
 */
public record HangAt(Set<String> ids, BreakoutId breakout) implements Edit {

    public HangAt {
        ids = Set.copyOf(ids);
    }

    @Override
    public Text label() {
        return Labels.text("hang", Labels.subjects(ids, "things"), breakout);
    }

    @Override
    public Harness apply(Harness before) {
        List<Element> changed = new ArrayList<>();
        Optional<BreakoutId> at = Optional.of(breakout);
        for (Connector each : before.connectors().all()) {
            boolean with =
                    each.component().filter(id -> ids.contains(id.value())).isPresent();
            if (with || ids.contains(each.id().value())) {
                changed.add(hung(each, at));
            }
        }
        for (Component each : before.components().all()) {
            boolean plugged = before.connectors().all().stream()
                    .anyMatch(plug -> plug.component().filter(each.id()::equals).isPresent());
            if (ids.contains(each.id().value()) && (each.at().isPresent() || !plugged)) {
                changed.add(hung(each, at));
            }
        }
        before.grounds().all().stream()
                .filter(each -> ids.contains(each.id().value()))
                .forEach(each -> changed.add(hung(each, at)));
        for (Splice each : before.splices().all()) {
            if (ids.contains(each.id().value())) {
                changed.add(each.withPlace(new Place.AtBreakout(breakout)));
            }
        }
        Harness after = before.withAll(changed);
        if (after == before) {
            return before;
        }
        SortedMap<String, Position> layout = new TreeMap<>(after.layout());
        changed.forEach(each -> layout.remove(each.id().value()));
        return layout.size() == after.layout().size() ? after : after.withLayout(layout);
    }

    private static Element hung(Connector each, Optional<BreakoutId> at) {
        return new Connector(
                each.id(),
                each.name(),
                each.component(),
                each.mate(),
                at,
                each.cavities(),
                each.part(),
                each.lock(),
                each.backshell(),
                each.limitCelsius(),
                each.zone(),
                each.existing(),
                each.assembly(),
                each.grid());
    }

    private static Element hung(Component each, Optional<BreakoutId> at) {
        return new Component(
                each.id(),
                each.name(),
                each.device(),
                each.part(),
                each.zone(),
                at,
                each.caseGround(),
                each.existing(),
                each.assembly());
    }

    private static Element hung(GroundPoint each, Optional<BreakoutId> at) {
        return new GroundPoint(
                each.id(),
                each.name(),
                each.body(),
                each.jointOhms(),
                at,
                each.zone(),
                each.part(),
                each.existing(),
                each.assembly(),
                each.studs(),
                each.studMm(),
                each.torque());
    }
}
