package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;

/** Which cards hang at which breakout, and which have no place yet. */
final class Stations {

    private final Harness harness;
    private final CardMaker maker;
    private final Map<BreakoutId, List<Card>> placed = new LinkedHashMap<>();
    private final List<Card> unplaced = new ArrayList<>();

    Stations(Harness harness, Ties ties, CardMaker maker) {
        this.harness = harness;
        this.maker = maker;
        harness.components().all().forEach(this::component);
        harness.connectors().all().stream()
                .filter(connector -> connector.component().isEmpty() && !ties.pairs(connector))
                .filter(connector -> mate(connector).isEmpty() || isFirst(connector))
                .forEach(connector -> put(
                        connector.at().or(() -> mate(connector).flatMap(Connector::at)),
                        maker.connector(connector, mate(connector))));
        for (GroundPoint ground : harness.grounds().all()) {
            put(ground.at(), maker.ground(ground));
        }
        for (Splice splice : harness.splices().all()) {
            if (!Spot.alongSegment(splice)) {
                put(splice.place().map(place -> ((Place.AtBreakout) place).breakout()), maker.splice(splice));
            }
        }
    }

    /** One card for each place that a component has connectors or terminals of its own in. */
    private void component(Component component) {
        List<Connector> connectors = harness.connectors().all().stream()
                .filter(connector ->
                        connector.component().filter(component.id()::equals).isPresent())
                .toList();
        Set<Optional<BreakoutId>> places = new LinkedHashSet<>();
        List<Tab> terminals = maker.terminals(component);
        Optional<BreakoutId> own = Spot.place(harness, component.id());
        if (!terminals.isEmpty() || component.at().isPresent()) {
            places.add(own);
        }
        connectors.forEach(connector -> places.add(connector.at()));
        if (places.isEmpty()) {
            places.add(Optional.empty());
        }
        for (Optional<BreakoutId> place : places) {
            put(
                    place,
                    maker.component(
                            component,
                            connectors.stream()
                                    .filter(connector -> connector.at().equals(place))
                                    .toList(),
                            place.equals(own) ? terminals : List.of()));
        }
    }

    private Optional<Connector> mate(Connector connector) {
        return harness.mate(connector);
    }

    private boolean isFirst(Connector connector) {
        return mate(connector)
                .filter(mate -> mate.id().compareTo(connector.id()) > 0)
                .isPresent();
    }

    private void put(Optional<BreakoutId> place, Card card) {
        place.map(each -> placed.computeIfAbsent(each, key -> new ArrayList<>()))
                .orElse(unplaced)
                .add(card);
    }

    List<Card> at(BreakoutId breakout) {
        return placed.getOrDefault(breakout, List.of());
    }

    List<Card> unplaced() {
        return unplaced;
    }

    /** Breakouts to be drawn: those of segments and those with something at them. */
    SortedSet<BreakoutId> breakouts() {
        SortedSet<BreakoutId> all = new TreeSet<>(harness.breakouts().ids());
        all.addAll(placed.keySet());
        return all;
    }

    /** Breakouts at which a battery or another source hangs. */
    SortedSet<BreakoutId> sources() {
        SortedSet<BreakoutId> sources = new TreeSet<>();
        harness.components().all().stream()
                .filter(component -> component.device().isSource())
                .forEach(component -> Spot.place(harness, component.id()).ifPresent(sources::add));
        return sources;
    }

    /** Breakouts at which a battery hangs; those of other sources where there is none. */
    SortedSet<BreakoutId> batteries() {
        SortedSet<BreakoutId> batteries = new TreeSet<>();
        harness.components().all().stream()
                .filter(component -> component.device() instanceof Battery)
                .forEach(component -> Spot.place(harness, component.id()).ifPresent(batteries::add));
        return batteries.isEmpty() ? sources() : batteries;
    }

    CardMaker maker() {
        return maker;
    }
}
