package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Plugs a connector into a component, into another connector, or into nothing. Two connectors name each other, and one that was
 * plugged in before is left free. A cavity meets the terminal of its name, or in the order of the list, where none is said.
 *
 * @param connector the connector
 * @param component what it plugs into, if a component
 * @param mate      what it plugs into, if a connector
 */
public record MateConnector(ConnectorId connector, Optional<ComponentId> component, Optional<ConnectorId> mate)
        implements Edit {

    @Override
    public Text label() {
        return component
                .map(ComponentId::value)
                .or(() -> mate.map(ConnectorId::value))
                .map(other -> Labels.text("plug-into", connector, other))
                .orElseGet(() -> Labels.text("unplug", connector));
    }

    @Override
    public Harness apply(Harness before) {
        List<Element> changed = new ArrayList<>();
        for (Connector other : before.connectors().all()) {
            boolean wasMate = other.mate().filter(connector::equals).isPresent();
            boolean isMate = mate.filter(other.id()::equals).isPresent();
            boolean mateOfMate = other.mate().isPresent() && other.mate().equals(mate);
            if (other.id().equals(connector)) {
                changed.add(with(other, component, mate, cavities(before, other)));
            } else if (isMate) {
                changed.add(with(other, Optional.empty(), Optional.of(connector), freed(other)));
            } else if (wasMate || mateOfMate) {
                changed.add(with(other, other.component(), Optional.empty(), other.cavities()));
            }
        }
        return before.withAll(changed);
    }

    private List<Cavity> cavities(Harness harness, Connector now) {
        if (component.isEmpty()) {
            return freed(now);
        }
        List<String> terminals = harness.components().get(component.get()).terminals();
        boolean same = now.cavities().stream().allMatch(cavity -> terminals.contains(cavity.name()));
        List<Cavity> cavities = new ArrayList<>();
        for (int k = 0; k < now.cavities().size(); k++) {
            Cavity cavity = now.cavities().get(k);
            Optional<String> terminal = cavity.terminal()
                    .filter(terminals::contains)
                    .or(() -> same ? Optional.of(cavity.name()) : Optional.empty());
            if (terminal.isEmpty() && now.cavities().size() == terminals.size()) {
                terminal = Optional.of(terminals.get(k));
            }
            cavities.add(meeting(cavity, terminal));
        }
        return cavities;
    }

    private static List<Cavity> freed(Connector connector) {
        return connector.cavities().stream()
                .map(cavity -> meeting(cavity, Optional.empty()))
                .toList();
    }

    private static Cavity meeting(Cavity cavity, Optional<String> terminal) {
        return new Cavity(cavity.name(), terminal, cavity.contact(), cavity.plug(), cavity.doubleCrimp());
    }

    private static Connector with(
            Connector was, Optional<ComponentId> component, Optional<ConnectorId> mate, List<Cavity> cavities) {
        return new Connector(
                was.id(),
                was.name(),
                component,
                mate,
                was.at(),
                cavities,
                was.part(),
                was.lock(),
                was.backshell(),
                was.limitCelsius(),
                was.zone(),
                was.existing(),
                was.assembly(),
                was.grid());
    }
}
