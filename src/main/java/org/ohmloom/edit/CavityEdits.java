package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.words.UnfitException;

/** What is typed about the cavities of connectors. Every method refuses what does not fit with one line for the person. */
public final class CavityEdits {

    private CavityEdits() {}

    /** Another terminal that cavities meet; nothing for none. */
    public static Edit terminal(Harness harness, List<WireEnd.AtCavity> cavities, String typed) {
        Optional<String> terminal = words(typed);
        for (WireEnd.AtCavity at : cavities) {
            List<String> terminals = harness.connectors()
                    .get(at.connector())
                    .component()
                    .map(id -> harness.components().get(id).terminals())
                    .orElse(List.of());
            if (terminal.isPresent() && !terminals.contains(terminal.get())) {
                throw terminals.isEmpty()
                        ? new UnfitException(
                                "%s plugs into no component; a cavity meets a terminal of the one it plugs into",
                                at.connector())
                        : new UnfitException(
                                "there is no terminal '%s'; there are %s",
                                terminal.get(), String.join(", ", terminals));
            }
        }
        return each(
                "terminal",
                cavities,
                now -> new Cavity(now.name(), terminal, now.contact(), now.plug(), now.doubleCrimp()));
    }

    /** Another kind of contact; nothing for none. */
    public static Edit contact(Harness harness, List<WireEnd.AtCavity> cavities, String typed) {
        Optional<ContactId> contact =
                words(typed).map(text -> (ContactId) EndText.named(harness, ContactId.class, text));
        return each(
                "contact",
                cavities,
                now -> new Cavity(now.name(), now.terminal(), contact, now.plug(), now.doubleCrimp()));
    }

    /** Another plug; nothing for none. */
    public static Edit plug(Harness harness, List<WireEnd.AtCavity> cavities, String typed) {
        Optional<PartId> plug = words(typed).map(text -> (PartId) EndText.named(harness, PartId.class, text));
        return each("plug", cavities, now -> PlugCavities.with(now, plug));
    }

    /** Whether two wires in one contact are meant. */
    public static Edit doubleCrimp(List<WireEnd.AtCavity> cavities, boolean meant) {
        return each(
                "double crimp",
                cavities,
                now -> new Cavity(now.name(), now.terminal(), now.contact(), now.plug(), meant));
    }

    /**
     * The names of all cavities of a connector, with commas between, or a count of them: {@code 1, 2, A} or {@code 12}. Those that
     * stay keep what they have; one with a wire cannot go; a new one meets the terminal of its name.
     */
    public static Edit names(Harness harness, ConnectorId connector, String typed) {
        Connector now = harness.connectors().get(connector);
        List<String> names = names(typed);
        for (CavityUse use : CavityUse.of(harness, now)) {
            if (!names.contains(use.cavity().name()) && !use.ends().isEmpty()) {
                throw new UnfitException(
                        "a wire sits in cavity %s of %s; move it first",
                        use.cavity().name(), connector);
            }
        }
        return ChangeElements.tried(Labels.text("set-cavities", connector), now, was -> {
            List<Cavity> cavities = new ArrayList<>();
            names.forEach(name -> cavities.add(was.cavity(name)
                    .orElse(new Cavity(
                            name, terminalNamed(harness, was, name), Optional.empty(), Optional.empty(), false))));
            return with(was, cavities);
        });
    }

    /** The terminal a new cavity meets: that of its name, of the component the connector plugs into, if no other cavity meets it. */
    private static Optional<String> terminalNamed(Harness harness, Connector connector, String name) {
        return connector
                .component()
                .filter(id -> harness.components().get(id).terminals().contains(name))
                .filter(id -> connector.cavities().stream()
                        .noneMatch(
                                cavity -> cavity.terminal().filter(name::equals).isPresent()))
                .map(id -> name);
    }

    private static List<String> names(String typed) {
        String text = typed.strip();
        if (text.matches("\\d{1,3}") && Integer.parseInt(text) > 0) {
            List<String> names = new ArrayList<>();
            for (int k = 1; k <= Integer.parseInt(text); k++) {
                names.add(String.valueOf(k));
            }
            return names;
        }
        List<String> names = Arrays.stream(text.split("[,;]"))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
        if (names.isEmpty()) {
            throw new UnfitException("write how many cavities there are, or their names as 1, 2, A");
        }
        return names;
    }

    /** A grid that holds other cavities than these is no longer theirs. */
    private static Connector with(Connector was, List<Cavity> cavities) {
        List<String> names = cavities.stream().map(Cavity::name).toList();
        Optional<CavityGrid> grid = was.grid().filter(each -> {
            List<String> places =
                    each.places().stream().filter(place -> !place.isEmpty()).toList();
            return places.size() == names.size() && places.containsAll(names);
        });
        return new Connector(
                was.id(),
                was.name(),
                was.component(),
                was.mate(),
                was.at(),
                cavities,
                was.part(),
                was.lock(),
                was.backshell(),
                was.limitCelsius(),
                was.zone(),
                was.existing(),
                was.assembly(),
                grid);
    }

    /**
     * What a connector plugs into: a component, another connector, or nothing. Of two connectors each names the other; cavities of
     * one that meets other terminals meet none.
     */
    public static Edit mate(Harness harness, ConnectorId connector, String typed) {
        Optional<String> text = words(typed);
        Optional<ComponentId> component = Optional.empty();
        Optional<ConnectorId> mate = Optional.empty();
        if (text.isPresent()) {
            boolean plug = harness.connectors().ids().stream()
                    .anyMatch(id -> id.value().equalsIgnoreCase(text.get()));
            if (plug) {
                mate = Optional.of((ConnectorId) EndText.named(harness, ConnectorId.class, text.get()));
            } else {
                component = Optional.of((ComponentId) EndText.named(harness, ComponentId.class, text.get()));
            }
        }
        if (mate.filter(connector::equals).isPresent()) {
            throw new UnfitException("%s cannot mate with itself", connector);
        }
        return new MateConnector(connector, component, mate);
    }

    private static Optional<String> words(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(typed.strip());
    }

    private static Edit each(String what, List<WireEnd.AtCavity> cavities, UnaryOperator<Cavity> change) {
        List<Edit> edits = cavities.stream()
                .map(at -> (Edit) ChangeElements.of(
                        Labels.text("set-of", what, at.text()),
                        List.of(at.connector()),
                        Connector.class,
                        connector -> connector
                                .cavity(at.cavity())
                                .map(cavity -> connector.withCavity(change.apply(cavity)))
                                .orElse(connector)))
                .toList();
        return edits.size() == 1
                ? edits.get(0)
                : new Compound(Labels.text("set-of-cavities", what, edits.size()), edits);
    }
}
