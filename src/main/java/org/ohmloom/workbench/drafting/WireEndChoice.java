package org.ohmloom.workbench.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.words.Words;

/**
 * A place a wire can end at.
 *
 * @param end  the place
 * @param text what it is called, what it is of, and which wires end there
 * @param free whether none does yet
 */
record WireEndChoice(WireEnd end, String text, boolean free) {

    @Override
    public String toString() {
        return text;
    }

    /** The places of a thing; none where no wire ends. */
    static List<WireEndChoice> of(Harness harness, String id, Words words) {
        Element found = harness.element(id).orElse(null);
        List<WireEndChoice> all = new ArrayList<>();
        if (found instanceof Connector connector) {
            cavities(harness, connector, words, all);
        } else if (found instanceof Component component) {
            List<Connector> plugged = harness.connectors().all().stream()
                    .filter(each ->
                            each.component().filter(component.id()::equals).isPresent())
                    .toList();
            plugged.forEach(each -> cavities(harness, each, words, all));
            if (plugged.isEmpty()) {
                for (String terminal : component.terminals()) {
                    all.add(choice(
                            harness,
                            new WireEnd.AtTerminal(component.id(), terminal),
                            component.id() + "." + terminal,
                            Optional.empty(),
                            words));
                }
            }
        } else if (found instanceof Splice splice) {
            all.add(choice(harness, new WireEnd.AtSplice(splice.id()), id, Optional.empty(), words));
        } else if (found instanceof GroundPoint ground) {
            all.add(choice(harness, new WireEnd.AtGround(ground.id()), id, Optional.empty(), words));
        }
        return all;
    }

    private static void cavities(Harness harness, Connector connector, Words words, List<WireEndChoice> all) {
        for (Cavity cavity : connector.cavities()) {
            all.add(choice(
                    harness,
                    new WireEnd.AtCavity(connector.id(), cavity.name()),
                    connector.id() + "." + cavity.name(),
                    cavity.terminal(),
                    words));
        }
    }

    private static WireEndChoice choice(
            Harness harness, WireEnd end, String name, Optional<String> terminal, Words words) {
        String wires = harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(end))
                .map(Wire::id)
                .map(Object::toString)
                .collect(Collectors.joining(", "));
        String what = terminal.map(text -> words.get("end.of", name, text)).orElse(name);
        String text = wires.isEmpty() ? words.get("end.free", what) : words.get("end.used", what, wires);
        return new WireEndChoice(end, text, wires.isEmpty());
    }
}
