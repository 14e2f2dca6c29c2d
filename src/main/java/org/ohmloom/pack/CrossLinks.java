package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Link;
import org.ohmloom.pack.page.Mention;
import org.ohmloom.pack.page.PdfContent;

/**
 * Links between the documents of a pack. A name leads to where its element is described: in the same document, otherwise in
 * the first that describes it, otherwise on the first drawing that shows it. A description leads to the drawing.
 */
final class CrossLinks {
    private final Map<String, String> elementOf = new HashMap<>();
    private final Map<PackDocument, Contents> contents = new TreeMap<>();

    /** What a document says of which element. */
    private record Contents(String file, boolean drawn, List<Mention> mentions, SortedMap<String, Mention> places) {}

    /** Links for a harness; its documents are to be added. */
    CrossLinks(Harness harness) {
        harness.elements().map(element -> element.id().value()).forEach(id -> elementOf.put(id, id));
        for (Wire wire : harness.wires().all()) {
            elementOf.put(Wording.wire(wire), wire.id().value());
            wire.ends().forEach(end -> owner(end).ifPresent(id -> elementOf.put(end.text(), id)));
        }
    }

    private static Optional<String> owner(WireEnd end) {
        if (end instanceof WireEnd.AtCavity cavity) {
            return Optional.of(cavity.connector().value());
        }
        if (end instanceof WireEnd.AtTerminal terminal) {
            return Optional.of(terminal.component().value());
        }
        return Optional.empty();
    }

    /** Adds a report with what its pages name. */
    void addReport(PackDocument document, String file, List<Mention> mentions) {
        List<Mention> known = known(mentions);
        SortedMap<String, Mention> places = new TreeMap<>();
        known.stream().filter(Mention::home).forEach(each -> places.putIfAbsent(each.name(), each));
        contents.put(document, new Contents(file, false, known, places));
    }

    /** Adds a document of drawings, whose texts stand for elements. */
    void addDrawing(PackDocument document, String file, List<Scene> sheets) {
        List<Mention> mentions = new ArrayList<>();
        for (int page = 0; page < sheets.size(); page++) {
            for (Item item : sheets.get(page).items()) {
                if (item.element().isPresent() && item.mark() instanceof Text text) {
                    mentions.add(new Mention(page, text.bounds(), item.element().get(), false));
                }
            }
        }
        List<Mention> known = known(mentions);
        SortedMap<String, Mention> places = new TreeMap<>();
        known.forEach(each -> places.putIfAbsent(each.name(), each));
        contents.put(document, new Contents(file, true, known, places));
    }

    /** Mentions of elements of the harness, by id. */
    private List<Mention> known(List<Mention> mentions) {
        return mentions.stream()
                .filter(each -> elementOf.containsKey(each.name()))
                .map(each -> new Mention(each.page(), each.extent(), elementOf.get(each.name()), each.home()))
                .toList();
    }

    /** The places of a document that links lead to, by name: the id of the element. */
    SortedMap<String, PdfContent.Place> places(PackDocument document) {
        SortedMap<String, PdfContent.Place> places = new TreeMap<>();
        contents.get(document)
                .places()
                .forEach((name, at) -> places.put(
                        name, new PdfContent.Place(at.page(), at.extent().topMm())));
        return places;
    }

    /** The links of a document. */
    List<Link> links(PackDocument document) {
        Contents here = contents.get(document);
        List<Link> links = new ArrayList<>();
        for (Mention mention : here.mentions()) {
            target(here, mention)
                    .map(there -> new Link(
                            mention.page(),
                            mention.extent(),
                            there == here ? Optional.empty() : Optional.of(there.file()),
                            mention.name()))
                    .ifPresent(links::add);
        }
        return links;
    }

    private Optional<Contents> target(Contents here, Mention mention) {
        Optional<Contents> drawn = first(mention.name(), true);
        if (mention.home()) {
            return drawn;
        }
        if (!here.drawn() && here.places().containsKey(mention.name())) {
            return Optional.of(here);
        }
        return first(mention.name(), false).or(() -> drawn.filter(there -> there != here));
    }

    /** The first document that describes an element, or that draws it. */
    private Optional<Contents> first(String element, boolean drawn) {
        return contents.values().stream()
                .filter(each -> each.drawn() == drawn && each.places().containsKey(element))
                .findFirst();
    }
}
