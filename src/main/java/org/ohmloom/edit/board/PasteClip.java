package org.ohmloom.edit.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.Labels;
import org.ohmloom.edit.MoveOnBoard;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.Renaming;
import org.ohmloom.model.Cable;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.Strap;
import org.ohmloom.words.Text;

/**
 * Lays a clip into a harness. Things drawn get identities and names that are free there; parts, contacts, zones and assemblies
 * the harness has already serve as they are, and a chassis body of the same identity and name is the same body.
 */
public final class PasteClip {

    private final Harness into;
    private final FreshIds fresh;
    private final FreshNames freshNames;
    private final Map<String, String> ids = new HashMap<>();
    private final List<Element> pasted = new ArrayList<>();

    private PasteClip(Harness into) {
        this.into = into;
        this.fresh = new FreshIds(into);
        this.freshNames = new FreshNames(into);
    }

    /**
     * The edit that pastes a clip.
     *
     * @param clip a clip, or any harness
     * @param dxMm how far from where it was copied, to the right, mm
     * @param dyMm downwards, mm
     */
    public static Drawn of(Harness into, Harness clip, double dxMm, double dyMm) {
        PasteClip paste = new PasteClip(into);
        clip.parts().all().forEach(paste::supporting);
        clip.contacts().all().forEach(paste::supporting);
        clip.assemblies().all().forEach(paste::supporting);
        clip.zones().all().forEach(paste::supporting);
        List<Element> drawn = paste.drawn(clip);
        SortedMap<String, Position> positions = new TreeMap<>();
        clip.layout()
                .forEach((id, at) ->
                        positions.put(paste.ids.getOrDefault(id, id), new Position(at.xMm() + dxMm, at.yMm() + dyMm)));
        List<String> selected = drawn.stream()
                .filter(Clip::isDrawn)
                .map(each -> each.id().value())
                .toList();
        Text label = Labels.text("paste", Labels.subjects(selected, "things"));
        return new Drawn(
                new Compound(label, List.of(new PutElements(label, paste.pasted), new MoveOnBoard(label, positions))),
                selected);
    }

    /** Takes the same thing of the harness, or brings it along. */
    private void supporting(Element element) {
        Element renamed = new Renaming(ids, Map.of()).of(element);
        Optional<Element> same = into.elements()
                .filter(each -> each.getClass() == element.getClass())
                .filter(each -> each.equals(under(renamed, each.id().value())))
                .findFirst();
        if (same.isPresent()) {
            ids.put(element.id().value(), same.get().id().value());
        } else {
            String id = fresh.like(element.id().value());
            ids.put(element.id().value(), id);
            pasted.add(under(renamed, id));
        }
    }

    private static Element under(Element element, String id) {
        return new Renaming(Map.of(element.id().value(), id), Map.of()).of(element);
    }

    private List<Element> drawn(Harness clip) {
        Map<String, String> names = new HashMap<>();
        List<Element> all = new ArrayList<>();
        for (Element element : clip.elements().toList()) {
            if (!isPasted(element)) {
                continue;
            }
            ids.put(element.id().value(), fresh.like(element.id().value()));
            Renaming.name(element)
                    .ifPresent(name -> names.put(element.id().value(), freshNames.like(element.getClass(), name)));
            all.add(element);
        }
        Renaming renaming = new Renaming(ids, names);
        List<Element> renamed = all.stream().map(renaming::of).toList();
        pasted.addAll(renamed);
        return renamed;
    }

    private boolean isPasted(Element element) {
        return Clip.isDrawn(element)
                || element instanceof Strap
                || element instanceof Cable
                || element instanceof ChassisBody body && !isHere(body);
    }

    private boolean isHere(ChassisBody body) {
        return into.bodies()
                .find(body.id())
                .filter(here -> here.name().equals(body.name()))
                .isPresent();
    }
}
