package org.ohmloom.model;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/** Checks that every reference in a harness leads to an element and that no identity is used twice. */
final class References {

    private final Harness harness;

    private References(Harness harness) {
        this.harness = harness;
    }

    /**
     * Refuses a harness with a reference that leads nowhere or an identity used twice.
     *
     * @throws BrokenReferenceException for the first reference that leads nowhere
     * @throws IllegalArgumentException when two elements have one identity
     */
    static void requireWhole(Harness harness) {
        Set<String> seen = new HashSet<>();
        harness.elements().forEach(element -> {
            if (!seen.add(element.id().value())) {
                throw new UnfitException(
                        "the id '%s' is used by two elements; ids are unique across all kinds", element.id());
            }
        });
        new References(harness).check();
    }

    private void check() {
        harness.rules().returnRules().intended().forEach(parallel -> {
            parallel.wires().forEach(id -> exists("rules/returns/intended/wires", id, harness.wires(), "wire"));
            parallel.straps().forEach(id -> exists("rules/returns/intended/straps", id, harness.straps(), "strap"));
        });
        checkFabrication(harness.rules().fabricationRules());
        harness.contacts().all().forEach(this::checkContact);
        harness.breakouts().all().forEach(b -> assembly("breakouts/" + b.id(), b.assembly()));
        harness.segments().all().forEach(this::checkSegment);
        harness.components().all().forEach(this::checkComponent);
        harness.connectors().all().forEach(this::checkConnector);
        harness.splices().all().forEach(this::checkSplice);
        harness.bodies().all().forEach(this::checkBody);
        harness.grounds().all().forEach(this::checkGround);
        harness.straps().all().forEach(this::checkStrap);
        harness.cables().all().forEach(c -> {
            part("cables/" + c.id() + "/part", c.part());
            assembly("cables/" + c.id(), c.assembly());
        });
        harness.wires().all().forEach(this::checkWire);
        harness.states().all().forEach(this::checkState);
        harness.loadGroups().all().forEach(group -> group.members()
                .forEach(id -> component("loadGroups/" + group.id() + "/members", id)));
        harness.sequences().all().forEach(sequence -> sequence.steps()
                .forEach(step -> exists(
                        "sequences/" + sequence.id() + "/steps/state",
                        step.state(),
                        harness.states(),
                        "operating state")));
        harness.buses().all().forEach(this::checkBus);
    }

    private void checkBus(DataBus bus) {
        String place = "buses/" + bus.id();
        for (DataBus.Node node : bus.nodes()) {
            component(place + "/nodes/unit", node.unit());
            terminal(place + "/nodes/high", node.unit(), node.high());
            terminal(place + "/nodes/low", node.unit(), node.low());
        }
        for (DataBus.Termination termination : bus.terminations()) {
            end(place + "/terminations/high", termination.high());
            end(place + "/terminations/low", termination.low());
            part(place + "/terminations/part", termination.part());
        }
        bus.messages().forEach(message -> component(place + "/messages/sender", message.sender()));
    }

    private void checkFabrication(FabricationRules rules) {
        String place = "rules/fabrication";
        rules.connectors()
                .forEach(each ->
                        exists(place + "/connectors/connector", each.connector(), harness.connectors(), "connector"));
        rules.fixedSplices().forEach(id -> exists(place + "/fixedSplices", id, harness.splices(), "splice"));
        for (RoutingRule rule : rules.routing()) {
            rule.wires().forEach(id -> exists(place + "/routing/wires", id, harness.wires(), "wire"));
            if (rule instanceof RoutingRule.AvoidZone avoid) {
                exists(place + "/routing/avoidZone", avoid.avoidZone(), harness.zones(), "zone");
            } else if (rule instanceof RoutingRule.Through through) {
                exists(place + "/routing/through", through.through(), harness.breakouts(), "breakout");
            }
        }
    }

    private void checkContact(ContactPart contact) {
        String place = "contacts/" + contact.id();
        part(place + "/part", contact.part());
        part(place + "/tool", contact.tool());
        contact.seal().ifPresent(seal -> part(place + "/seal/part", Optional.of(seal.part())));
    }

    private void checkSegment(BundleSegment segment) {
        String place = "segments/" + segment.id();
        breakout(place + "/from", Optional.of(segment.from()));
        breakout(place + "/to", Optional.of(segment.to()));
        zone(place, segment.zone());
        segment.covering().ifPresent(covering -> part(place + "/covering/part", covering.part()));
        assembly(place, segment.assembly());
    }

    private void checkComponent(Component component) {
        String place = "components/" + component.id();
        part(place + "/part", component.part());
        zone(place, component.zone());
        breakout(place + "/at", component.at());
        if (component.device() instanceof Alternator alternator) {
            alternator
                    .model()
                    .flatMap(AlternatorModel::sense)
                    .ifPresent(sense -> end(place + "/device/model/sense", sense));
        }
        if (component.device() instanceof ControlUnit unit) {
            unit.channels().forEach(each -> component(place + "/device/channels/component", each.component()));
        }
        component.caseGround().ifPresent(ground -> ground(place + "/caseGround/ground", ground.ground()));
        assembly(place, component.assembly());
    }

    private void checkConnector(Connector connector) {
        String place = "connectors/" + connector.id();
        connector.component().ifPresent(id -> component(place + "/component", id));
        connector.mate().ifPresent(id -> exists(place + "/mate", id, harness.connectors(), "connector"));
        breakout(place + "/at", connector.at());
        part(place + "/part", connector.part());
        part(place + "/lock", connector.lock());
        part(place + "/backshell", connector.backshell());
        zone(place, connector.zone());
        assembly(place, connector.assembly());
        for (Cavity cavity : connector.cavities()) {
            String within = place + "/cavities/" + cavity.name();
            cavity.contact().ifPresent(id -> exists(within + "/contact", id, harness.contacts(), "contact"));
            part(within + "/plug", cavity.plug());
            cavity.terminal()
                    .ifPresent(terminal ->
                            connector.component().ifPresent(id -> terminal(within + "/terminal", id, terminal)));
        }
    }

    private void checkSplice(Splice splice) {
        String place = "splices/" + splice.id();
        splice.place().ifPresent(where -> {
            if (where instanceof Place.AtBreakout at) {
                breakout(place + "/place/breakout", Optional.of(at.breakout()));
            } else if (where instanceof Place.OnSegment on) {
                exists(place + "/place/segment", on.segment(), harness.segments(), "segment");
            }
        });
        part(place + "/part", splice.part());
        assembly(place, splice.assembly());
    }

    private void checkBody(ChassisBody body) {
        for (ChassisPath path : body.paths()) {
            ground("bodies/" + body.id() + "/paths/from", path.from());
            ground("bodies/" + body.id() + "/paths/to", path.to());
        }
    }

    private void checkGround(GroundPoint ground) {
        String place = "grounds/" + ground.id();
        exists(place + "/body", ground.body(), harness.bodies(), "chassis body");
        breakout(place + "/at", ground.at());
        zone(place, ground.zone());
        part(place + "/part", ground.part());
        assembly(place, ground.assembly());
    }

    private void checkStrap(Strap strap) {
        ground("straps/" + strap.id() + "/from", strap.from());
        ground("straps/" + strap.id() + "/to", strap.to());
        part("straps/" + strap.id() + "/part", strap.part());
        assembly("straps/" + strap.id(), strap.assembly());
    }

    private void checkWire(Wire wire) {
        String place = "wires/" + wire.id();
        end(place + "/from", wire.from());
        end(place + "/to", wire.to());
        wire.cable().ifPresent(id -> exists(place + "/cable", id, harness.cables(), "cable"));
        assembly(place, wire.assembly());
    }

    private void checkState(OperatingState state) {
        String place = "states/" + state.id();
        state.sources().keySet().forEach(id -> component(place + "/sources", id));
        state.components().keySet().forEach(id -> component(place + "/components", id));
        state.outputs().keySet().forEach(output -> {
            component(place + "/outputs", output.unit());
            terminal(place + "/outputs", output.unit(), output.pin());
        });
    }

    private void end(String place, WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            exists(place + "/connector", at.connector(), harness.connectors(), "connector");
            List<String> names = harness.connectors().get(at.connector()).cavities().stream()
                    .map(Cavity::name)
                    .toList();
            named(place + "/cavity", at.cavity(), names, Refusals.text("cavity of connector %s", at.connector()));
        } else if (end instanceof WireEnd.AtTerminal at) {
            component(place + "/component", at.component());
            terminal(place + "/terminal", at.component(), at.terminal());
        } else if (end instanceof WireEnd.AtSplice at) {
            exists(place + "/splice", at.splice(), harness.splices(), "splice");
        } else if (end instanceof WireEnd.AtGround at) {
            ground(place + "/ground", at.ground());
        }
    }

    private void part(String place, Optional<PartId> id) {
        id.ifPresent(value -> exists(place, value, harness.parts(), "part"));
    }

    private void zone(String place, Optional<ZoneId> id) {
        id.ifPresent(value -> exists(place + "/zone", value, harness.zones(), "zone"));
    }

    private void breakout(String place, Optional<BreakoutId> id) {
        id.ifPresent(value -> exists(place, value, harness.breakouts(), "breakout"));
    }

    private void assembly(String place, Optional<AssemblyId> id) {
        id.ifPresent(value -> exists(place + "/assembly", value, harness.assemblies(), "assembly"));
    }

    private void component(String place, ComponentId id) {
        exists(place, id, harness.components(), "component");
    }

    private void ground(String place, GroundPointId id) {
        exists(place, id, harness.grounds(), "ground point");
    }

    private void terminal(String place, ComponentId component, String terminal) {
        component(place, component);
        named(
                place,
                terminal,
                harness.components().get(component).terminals(),
                Refusals.text("terminal of component %s", component));
    }

    private <I extends ElementId> void exists(String place, I id, Register<I, ?> register, String kind) {
        if (!register.has(id)) {
            List<String> names = register.ids().stream().map(ElementId::value).toList();
            throw new BrokenReferenceException(place, id.value(), Refusals.text(kind), names);
        }
    }

    private static void named(String place, String name, Collection<String> names, Text kind) {
        if (!names.contains(name)) {
            throw new BrokenReferenceException(place, name, kind, names);
        }
    }
}
