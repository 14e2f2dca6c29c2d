package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Formats;

/** What joins a symbol of a circuit to what is drawn with other circuits. */
final class Boundary {

    /** Other wires that get a reference each; more than these are told by their sheets. */
    private static final int MOST = 4;

    /** Protective devices named on a shortened way. */
    private static final int MOST_NAMED = 3;

    private final Symbol symbol;
    private final Symbols symbols;
    private final Supply supply;
    private final CircuitLinks links;
    private final List<Wire> here;
    private final List<Wire> elsewhere;

    Boundary(Symbol symbol, Wiring wiring, CircuitLinks links) {
        this.symbol = symbol;
        this.symbols = wiring.symbols();
        this.supply = wiring.supply();
        this.links = links;
        List<Wire> all = wiring.wiresAt(symbol.key());
        this.here = all.stream().filter(links::draws).toList();
        this.elsewhere = symbol.kind() == Symbol.Kind.CONNECTOR
                ? all.stream()
                        .filter(wire -> !links.draws(wire) && facesOne(wire))
                        .toList()
                : all.stream().filter(wire -> !links.draws(wire)).toList();
    }

    void add() {
        Set<Wire> told = new LinkedHashSet<>();
        switch (symbol.kind()) {
            case GROUND -> {
                groundReturn();
                straps();
            }
            case BAR, UNIT -> {
                feed(told);
                goesBack(told);
            }
            case SOURCE, LOOSE, REFERENCE -> {}
            case DEVICE, LOAD, CONNECTOR, SPLICE -> each(told);
        }
        if (elsewhere.stream().anyMatch(wire -> !told.contains(wire))) {
            links.remark(symbol.key(), Remark.sheetsOf(symbol.key()));
        }
    }

    private Landing landing(Wire wire) {
        Landing from = symbols.from(wire);
        return from.symbol().equals(symbol.key()) ? from : symbols.to(wire);
    }

    private Landing other(Wire wire) {
        Landing from = symbols.from(wire);
        return from.symbol().equals(symbol.key()) ? symbols.to(wire) : from;
    }

    private boolean arrives(Wire wire) {
        Landing last = supply.runsForward(wire) ? symbols.to(wire) : symbols.from(wire);
        return last.symbol().equals(symbol.key());
    }

    /** Whether the mate of a wire's cavity has a wire of this circuit. */
    private boolean facesOne(Wire wire) {
        String terminal = landing(wire).terminal();
        return symbol.ways().stream()
                        .filter(way -> way.from().equals(terminal) || way.to().equals(terminal))
                        .anyMatch(way -> here.stream()
                                .map(this::landing)
                                .anyMatch(at -> at.terminal().equals(way.from())
                                        || at.terminal().equals(way.to())))
                || here.stream().anyMatch(own -> landing(own).terminal().equals(terminal));
    }

    private void feed(Set<Wire> told) {
        for (Wire wire : here) {
            boolean fed = wire.signalClass() != SignalClass.RETURN && !arrives(wire);
            Optional<Wire> first = fed ? supply.feeder(landing(wire).place()) : Optional.empty();
            if (first.isPresent() && elsewhere.contains(first.get()) && told.add(first.get())) {
                links.reference(landing(first.get()), new Reference(from(first.get()), true));
            }
        }
    }

    private void goesBack(Set<Wire> told) {
        for (Wire wire : here) {
            boolean back = arrives(wire) || wire.signalClass() == SignalClass.REFERENCE_RETURN;
            Optional<Wire> next =
                    back ? supply.returnChain(landing(wire).place()).stream().findFirst() : Optional.empty();
            if (next.isPresent() && elsewhere.contains(next.get()) && told.add(next.get())) {
                links.reference(landing(next.get()), new Reference(to(next.get()), false));
            }
        }
    }

    private void groundReturn() {
        List<Wire> chain = supply.returnChain(Landing.place(symbol.key(), ""));
        Optional<String> pole = supply.pole(Landing.place(symbol.key(), ""), false);
        if (pole.isPresent() && !chain.isEmpty() && chain.stream().noneMatch(links::draws)) {
            links.remark(symbol.key(), Remark.plain("to " + pole.get()));
            links.remark(symbol.key(), Remark.at("", chain.get(0).id()));
        }
    }

    /** Bonding straps of a ground point. */
    private void straps() {
        for (Strap strap : symbols.harness().straps().all()) {
            String from = strap.from().value();
            String to = strap.to().value();
            if (from.equals(symbol.key()) || to.equals(symbol.key())) {
                String other = from.equals(symbol.key()) ? to : from;
                links.remark(symbol.key(), Remark.plain("strap " + strap.id() + " to " + other));
            }
        }
    }

    private void each(Set<Wire> told) {
        List<Wire> sorted =
                new ArrayList<>(elsewhere.stream().filter(this::arrives).toList());
        elsewhere.stream().filter(wire -> !arrives(wire)).forEach(sorted::add);
        for (Wire wire : sorted) {
            if (told.size() < MOST) {
                told.add(wire);
                boolean onLeft = arrives(wire);
                links.reference(landing(wire), new Reference(onLeft ? from(wire) : to(wire), onLeft));
            }
        }
    }

    private List<Remark> from(Wire wire) {
        List<Wire> chain = supply.feedChain(landing(wire).place());
        Optional<String> pole = supply.pole(landing(wire).place(), true);
        boolean power = wire.signalClass() == SignalClass.FEED || wire.signalClass() == SignalClass.SWITCHED_OUTPUT;
        boolean fed = power && pole.isPresent() && chain.contains(wire);
        List<Remark> lines = new ArrayList<>();
        if (fed) {
            lines.add(Remark.plain("from " + pole.get()));
            protection(chain).ifPresent(words -> lines.add(Remark.plain("by " + words)));
        } else {
            lines.add(Remark.plain("from " + name(wire)));
        }
        lines.add(Remark.at("", wire.id()));
        return lines;
    }

    private List<Remark> to(Wire wire) {
        List<Wire> chain = supply.returnChain(landing(wire).place());
        Optional<String> pole = supply.pole(landing(wire).place(), false);
        boolean back = wire.signalClass() == SignalClass.RETURN && pole.isPresent() && chain.contains(wire);
        return List.of(Remark.plain("to " + (back ? pole.get() : name(wire))), Remark.at("", wire.id()));
    }

    private String name(Wire wire) {
        Landing other = other(wire);
        String title = symbols.get(other.symbol()).title();
        return other.label().isEmpty()
                ? title.isEmpty() ? "a loose end" : title
                : other.plugged() ? title + ", " + other.label() : title + "." + other.label();
    }

    /** The protective devices on a way, the nearest to the source first. */
    private Optional<String> protection(List<Wire> chain) {
        Set<String> devices = new LinkedHashSet<>();
        for (int k = chain.size() - 1; k >= 0; k--) {
            Wire wire = chain.get(k);
            for (Landing end : List.of(symbols.from(wire), symbols.to(wire))) {
                symbols.harness()
                        .components()
                        .find(new ComponentId(symbols.get(end.symbol()).element()))
                        .filter(component -> component.device() instanceof ProtectiveDevice
                                && !component.id().value().equals(symbol.element()))
                        .ifPresent(component -> devices.add(named(component)));
            }
        }
        List<String> all = List.copyOf(devices);
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", all.subList(Math.max(0, all.size() - MOST_NAMED), all.size())));
    }

    private static String named(Component component) {
        ProtectiveDevice device = (ProtectiveDevice) component.device();
        return component.id() + " " + Formats.amps(device.ratingAmps());
    }
}
