package org.ohmloom.edit.board;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.Renaming;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Place;
import org.ohmloom.model.Position;
import org.ohmloom.model.Splice;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.ZoneId;

/**
 * Part of a harness by itself, to be copied: a whole small harness, so that its file format serves for the clipboard. With
 * what is selected come the connectors of components, the breakouts things hang at, segments, wires and straps that run wholly
 * between what is there, and the parts, contacts, zones and chassis bodies they name. A wire that leads elsewhere ends loose.
 */
public final class Clip {

    private final Harness harness;
    private final Set<String> kept = new HashSet<>();

    private Clip(Harness harness, Collection<String> selected) {
        this.harness = harness;
        Set<String> known = new HashSet<>();
        harness.elements().forEach(element -> known.add(element.id().value()));
        selected.stream().filter(known::contains).forEach(kept::add);
    }

    /**
     * The clip of some elements; empty when none of them can be copied.
     *
     * @param selected ids of what is copied
     * @param places   where things stand on the board, by id
     */
    public static Optional<Harness> of(
            Harness harness, Collection<String> selected, SortedMap<String, Position> places) {
        Clip clip = new Clip(harness, selected);
        Set<String> chosen = Set.copyOf(clip.kept);
        clip.addPlaces();
        clip.addBetween(chosen);
        clip.addNamed();
        List<ElementId> gone = harness.elements()
                .map(Element::id)
                .filter(id -> !clip.kept.contains(id.value()))
                .toList();
        Harness cut = gone.isEmpty() ? harness : new TakeOut(gone).apply(harness);
        SortedMap<String, Position> layout = new TreeMap<>(places);
        layout.keySet().retainAll(clip.kept);
        return cut.elements().noneMatch(Clip::isDrawn)
                ? Optional.empty()
                : Optional.of(cut.withLayout(layout).withUnknownKeys(UnknownKeys.NONE));
    }

    /** Whether an element is something drawn on the board, not only named by such. */
    static boolean isDrawn(Element element) {
        return element instanceof Breakout
                || element instanceof BundleSegment
                || element instanceof Component
                || element instanceof Connector
                || element instanceof Splice
                || element instanceof GroundPoint
                || element instanceof Wire;
    }

    private void addPlaces() {
        for (Connector connector : harness.connectors().all()) {
            if (connector.component().filter(id -> has(id)).isPresent()) {
                add(connector.id());
            }
            if (has(connector.id())) {
                connector.at().ifPresent(this::add);
            }
        }
        harness.components().all().stream().filter(each -> has(each.id())).forEach(each -> each.at()
                .ifPresent(this::add));
        harness.grounds().all().stream().filter(each -> has(each.id())).forEach(each -> each.at()
                .ifPresent(this::add));
        harness.segments().all().stream().filter(each -> has(each.id())).forEach(each -> {
            add(each.from());
            add(each.to());
        });
        harness.splices().all().stream().filter(each -> has(each.id())).forEach(each -> breakout(each)
                .ifPresent(this::add));
    }

    private void addBetween(Set<String> chosen) {
        harness.segments().all().stream()
                .filter(each -> has(each.from()) && has(each.to()))
                .forEach(each -> add(each.id()));
        for (Splice splice : harness.splices().all()) {
            boolean along = splice.place()
                    .filter(place -> place instanceof Place.OnSegment on && has(on.segment()))
                    .isPresent();
            boolean there = breakout(splice)
                    .map(BreakoutId::value)
                    .filter(chosen::contains)
                    .isPresent();
            if (along || there) {
                add(splice.id());
            }
        }
        harness.straps().all().stream()
                .filter(each -> has(each.from()) && has(each.to()))
                .forEach(each -> add(each.id()));
        harness.wires().all().stream()
                .filter(each -> reaches(each.from()) && reaches(each.to()))
                .forEach(each -> add(each.id()));
        harness.cables().all().stream()
                .filter(cable -> harness.wires().all().stream()
                        .filter(wire -> wire.cable().filter(cable.id()::equals).isPresent())
                        .allMatch(wire -> has(wire.id())))
                .filter(cable -> harness.wires().all().stream()
                        .anyMatch(
                                wire -> wire.cable().filter(cable.id()::equals).isPresent()))
                .forEach(cable -> add(cable.id()));
    }

    /** What the kept elements name and cannot be understood without; contacts name parts in their turn. */
    private void addNamed() {
        for (int round = 0; round < 2; round++) {
            harness.elements().filter(each -> has(each.id())).toList().forEach(each -> Renaming.mentioned(each).stream()
                    .filter(id -> id instanceof PartId
                            || id instanceof ContactId
                            || id instanceof ZoneId
                            || id instanceof ChassisBodyId
                            || id instanceof AssemblyId)
                    .forEach(this::add));
        }
    }

    private boolean reaches(WireEnd end) {
        return end instanceof WireEnd.AtCavity cavity && has(cavity.connector())
                || end instanceof WireEnd.AtTerminal terminal && has(terminal.component())
                || end instanceof WireEnd.AtSplice splice && has(splice.splice())
                || end instanceof WireEnd.AtGround ground && has(ground.ground());
    }

    private static Optional<BreakoutId> breakout(Splice splice) {
        return splice.place()
                .flatMap(place -> place instanceof Place.AtBreakout at ? Optional.of(at.breakout()) : Optional.empty());
    }

    private boolean has(ElementId id) {
        return kept.contains(id.value());
    }

    private void add(ElementId id) {
        kept.add(id.value());
    }
}
