package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Load;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.Note;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Reading;
import org.ohmloom.model.Splice;
import org.ohmloom.model.StateSequence;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Requirement;
import org.ohmloom.solve.EnergyBalance;
import org.ohmloom.units.Formats;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.inspect.Inspection.Grid;
import org.ohmloom.workbench.inspect.Inspection.Prose;
import org.ohmloom.workbench.inspect.Inspection.Reason;
import org.ohmloom.workbench.inspect.Inspection.Reasons;
import org.ohmloom.workbench.inspect.Inspection.Section;
import org.ohmloom.workbench.lists.GroupEdits;
import org.ohmloom.workbench.lists.SequenceEdits;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.SettingWords;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Looks a thing over: all its fields, its numbers in every state, and why its size was chosen. */
final class Inspector {
    private static final Words WORDS = Words.of("inspector");

    private final Readout readout;
    private final RecordFacts facts;

    Inspector(Readout readout) {
        this.readout = readout;
        this.facts = new RecordFacts(readout.units());
    }

    private ShownUnits units() {
        return readout.units();
    }

    private String size(Wire wire) {
        return wire.gauge().map(units()::size).orElse("–");
    }

    /** What there is to know about an element; empty when the harness has none of that id. */
    Optional<Inspection> of(String id) {
        return readout.harness().element(id).map(this::inspect);
    }

    private Inspection inspect(Element element) {
        if (element instanceof Wire wire) {
            return wire(wire);
        }
        if (element instanceof Component component) {
            return component(component);
        }
        if (element instanceof Connector connector) {
            return connector(connector);
        }
        if (element instanceof GroundPoint ground) {
            return junction(
                    element, ground.name(), WORDS.get("inspector.ground-point"), new WireEnd.AtGround(ground.id()));
        }
        if (element instanceof Splice splice) {
            Inspection joint =
                    junction(element, splice.name(), WORDS.get("inspector.splice"), new WireEnd.AtSplice(splice.id()));
            List<Section> sections = new ArrayList<>(joint.sections());
            SpliceFacts.of(readout, splice.id()).ifPresent(sections::add);
            return new Inspection(joint.title(), joint.subtitle(), sections);
        }
        if (element instanceof BundleSegment segment) {
            return segment(segment);
        }
        return other(element);
    }

    private Inspection wire(Wire wire) {
        List<Section> sections = new ArrayList<>();
        readout.rating(wire.id())
                .ifPresent(rating -> sections.add(new Facts(WORDS.get("inspector.at-worst"), worst(rating))));
        ProtectionFacts.ofWire(readout, wire.id()).ifPresent(sections::add);
        readout.choice(wire.id()).ifPresent(choice -> sections.add(reasons(choice)));
        CutFacts.of(readout, wire.id()).ifPresent(sections::add);
        ReadingFacts.of(readout, wire.id().value()).ifPresent(sections::add);
        sections.add(StateGrids.branch(readout, new BranchId(wire.id().value())));
        sections.add(Facts.entered(WORDS.get("inspector.fields"), facts.of(wire)));
        String size = wire.gauge()
                .map(units()::size)
                .orElse(readout.rating(wire.id())
                        .map(rating -> WORDS.get("inspector.size-open-serves", units().size(rating.gauge())))
                        .orElse(WORDS.get("inspector.size-open")));
        String subtitle = WORDS.get(
                "inspector.wire-to",
                TradeWords.signal(wire.signalClass()),
                size,
                wire.from().text(),
                wire.to().text());
        return new Inspection(wire.id().value(), subtitle, sections);
    }

    private List<Fact> worst(WireRating rating) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                WORDS.get("inspector.state"),
                rating.worstState().map(readout::stateName).orElse("")));
        boolean over = rating.ampacity()
                .filter(limit -> rating.worstAmps() > limit.limitAmps())
                .isPresent();
        facts.add(new Fact(
                WORDS.get("inspector.current-rms"), Formats.amps(rating.worstAmps()), over ? Tone.ERROR : Tone.PLAIN));
        if (rating.hasShortPeak()) {
            String state = rating.peakState().map(readout::stateName).orElse("");
            facts.add(Fact.of(
                    WORDS.get("inspector.short-peak"),
                    WORDS.get("inspector.in-state", Formats.amps(rating.peakAmps()), state)));
        }
        facts.add(Fact.of(
                WORDS.get("inspector.may-carry"),
                rating.ampacity().map(limit -> Formats.amps(limit.limitAmps())).orElse("")));
        facts.add(Fact.of(WORDS.get("inspector.drop"), Formats.volts(rating.worstDropVolts())));
        facts.add(Fact.of(WORDS.get("inspector.heat"), Formats.watts(rating.worstWatts())));
        facts.add(Fact.of(WORDS.get("inspector.temperature"), units().celsius(rating.celsius())));
        facts.add(Fact.of(
                WORDS.get("inspector.insulation-stands"),
                rating.ampacity()
                        .map(limit -> units().celsius(limit.limitCelsius()))
                        .orElse("")));
        rating.ampacity().ifPresent(limit -> limit.comparison()
                .ifPresent(comparison -> facts.addAll(MethodFacts.of(comparison, limit.limitAmps()))));
        facts.addAll(MethodFacts.warming(rating.temperature()));
        facts.add(Fact.of(WORDS.get("inspector.resistance"), Formats.ohms(rating.ohms())));
        rating.resistance().ifPresent(row -> facts.add(Fact.of(WORDS.get("inspector.resistance-from"), row.text())));
        rating.ampacity().ifPresent(limit -> facts.addAll(ampacity(limit)));
        return facts;
    }

    private List<Fact> ampacity(Ampacity limit) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                WORDS.get("inspector.table-value"),
                Formats.amps(limit.base().value()) + ", "
                        + limit.base().citation().text()));
        limit.factors()
                .forEach(factor -> facts.add(Fact.of(
                        WORDS.get("inspector.times", units().number(factor.ratio())),
                        Words.said(factor.name()) + ", " + factor.citation().text())));
        return facts;
    }

    private Reasons reasons(ConductorChoice choice) {
        List<Reason> reasons = choice.requirements().stream()
                .map(each -> reason(each, each.governor() == choice.governing().governor()))
                .toList();
        return new Reasons(
                WORDS.get(
                        "inspector.why",
                        choice.gauge().map(units()::size).orElse(WORDS.get("inspector.no-size-serves"))),
                reasons);
    }

    private Reason reason(Requirement required, boolean governs) {
        String size = required.smallest().map(units()::size).orElse(WORDS.get("inspector.none-serves"));
        return new Reason(
                TradeWords.capital(TradeWords.named(required.governor())) + ": " + size,
                Words.said(required.why()),
                required.citation().text(),
                governs);
    }

    private Inspection component(Component component) {
        List<Section> sections = new ArrayList<>();
        readout.device(component.id()).ifPresent(choice -> {
            String rating = choice.ratingAmps().isPresent()
                    ? Formats.amps(choice.ratingAmps().getAsDouble())
                    : WORDS.get("inspector.no-rating-serves");
            Reason reason = new Reason(
                    rating, Words.said(choice.why()), choice.citation().text(), true);
            sections.add(new Reasons(WORDS.get("inspector.why", rating), List.of(reason)));
        });
        ProtectionFacts.ofDevice(readout, component.id()).ifPresent(sections::add);
        sections.add(
                component.device() instanceof Load
                        ? StateGrids.load(readout, component.id())
                        : StateGrids.component(readout, component.id()));
        List<Fact> facts = new ArrayList<>(this.facts.of((Record) component.device()));
        this.facts.of(component).stream()
                .filter(fact -> facts.stream().noneMatch(known -> known.label().equals(fact.label())))
                .forEach(facts::add);
        sections.add(Facts.entered(WORDS.get("inspector.fields"), facts));
        if (component.device() instanceof ControlUnit unit) {
            List<List<String>> rows = unit.pins().stream()
                    .map(pin -> List.of(pin.name(), TradeWords.named(pin.role()), wiresAt(component, pin.name())))
                    .toList();
            sections.add(new Grid(
                    WORDS.get("inspector.pins"),
                    List.of(WORDS.get("inspector.pin"), WORDS.get("inspector.used-as"), WORDS.get("inspector.wire")),
                    rows));
        }
        String kind = TradeWords.capital(TradeWords.kind(component.device()));
        String subtitle = kind.equals(component.name()) ? kind : component.name() + "\n" + kind;
        return new Inspection(component.id().value(), subtitle, sections);
    }

    private String wiresAt(Component component, String terminal) {
        List<WireEnd> ends = new ArrayList<>(List.of(new WireEnd.AtTerminal(component.id(), terminal)));
        readout.harness().connectors().all().stream()
                .filter(connector ->
                        connector.component().filter(component.id()::equals).isPresent())
                .forEach(connector -> connector.cavities().stream()
                        .filter(cavity ->
                                cavity.terminal().filter(terminal::equals).isPresent())
                        .forEach(cavity -> ends.add(new WireEnd.AtCavity(connector.id(), cavity.name()))));
        return wires(ends);
    }

    private String wires(List<WireEnd> ends) {
        return readout.harness().wires().all().stream()
                .filter(wire -> wire.ends().stream().anyMatch(ends::contains))
                .map(wire -> wire.id().value())
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }

    private Inspection connector(Connector connector) {
        List<List<String>> rows = connector.cavities().stream()
                .map(cavity -> List.of(
                        cavity.name(),
                        cavity.terminal().orElse(""),
                        wires(List.of(new WireEnd.AtCavity(connector.id(), cavity.name()))),
                        cavity.contact()
                                .map(contact -> contact.value())
                                .orElse(cavity.plug().isPresent() ? WORDS.get("inspector.plug") : "")))
                .toList();
        return new Inspection(
                connector.id().value(),
                WORDS.get("inspector.connector", connector.name()),
                List.of(
                        new Grid(
                                WORDS.get("inspector.cavities"),
                                List.of(
                                        WORDS.get("inspector.cavity"),
                                        WORDS.get("inspector.terminal"),
                                        WORDS.get("inspector.wire"),
                                        WORDS.get("inspector.contact")),
                                rows),
                        Facts.entered(WORDS.get("inspector.fields"), facts.of(connector))));
    }

    private Inspection junction(Element element, String name, String kind, WireEnd end) {
        List<List<String>> rows = readout.harness().wires().all().stream()
                .filter(wire -> wire.ends().contains(end))
                .map(wire -> List.of(
                        wire.id().value(),
                        size(wire),
                        readout.rating(wire.id())
                                .map(rating -> Formats.number(rating.worstAmps()))
                                .orElse("")))
                .toList();
        List<Section> sections = new ArrayList<>(
                List.of(StateGrids.point(readout, new PointId(element.id().value()))));
        ReadingFacts.of(readout, element.id().value()).ifPresent(sections::add);
        sections.add(new Grid(
                WORDS.get("inspector.wires"),
                List.of(WORDS.get("inspector.wire"), WORDS.get("inspector.size"), WORDS.get("inspector.worst-a")),
                rows));
        sections.add(Facts.entered(WORDS.get("inspector.fields"), facts.of((Record) element)));
        return new Inspection(element.id().value(), name + "\n" + kind, sections);
    }

    private Inspection segment(BundleSegment segment) {
        List<List<String>> rows = readout.analysis().stream()
                .flatMap(results -> results.routes().byWire().entrySet().stream())
                .filter(entry -> entry.getValue().segments().contains(segment.id()))
                .map(entry -> readout.harness().wires().find(entry.getKey()))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(Wire::id))
                .map(wire -> List.of(
                        wire.id().value(),
                        size(wire),
                        readout.rating(wire.id())
                                .map(rating -> Formats.number(rating.worstAmps()))
                                .orElse("")))
                .toList();
        String count = rows.isEmpty()
                ? WORDS.get("inspector.bundle-segment")
                : WORDS.get("inspector.bundle-segment-2", TradeWords.count(rows.size(), "wire"));
        List<Section> sections = new ArrayList<>();
        readout.analysis()
                .flatMap(results -> results.evidence().bundles().of(segment.id()))
                .ifPresent(section -> sections.addAll(SegmentFacts.of(readout.harness(), section)));
        sections.add(Facts.entered(WORDS.get("inspector.fields"), facts.of(segment)));
        sections.add(new Grid(
                WORDS.get("inspector.wires"),
                List.of(WORDS.get("inspector.wire"), WORDS.get("inspector.size"), WORDS.get("inspector.worst-a")),
                rows));
        return new Inspection(
                segment.id().value(), WORDS.get("inspector.to", count, segment.from(), segment.to()), sections);
    }

    private static Facts power(EnergyBalance energy) {
        return new Facts(
                WORDS.get("inspector.power-mean"),
                List.of(
                        Fact.of(WORDS.get("inspector.sources-give"), Formats.watts(energy.givenWatts())),
                        Fact.of(WORDS.get("inspector.batteries-take"), Formats.watts(energy.chargingWatts())),
                        Fact.of(WORDS.get("inspector.loads-take"), Formats.watts(energy.loadsWatts())),
                        Fact.of(WORDS.get("inspector.lost-in-conductors"), Formats.watts(energy.conductorsWatts())),
                        Fact.of(WORDS.get("inspector.lost-in-devices"), Formats.watts(energy.devicesWatts())),
                        Fact.of(WORDS.get("inspector.unaccounted"), energy.missWords())));
    }

    private Inspection other(Element element) {
        String kind = TradeWords.capital(
                RecordFacts.words(element.getClass().getSimpleName()).toLowerCase(Locale.ROOT));
        List<Section> sections = new ArrayList<>();
        sections.add(Facts.entered(WORDS.get("inspector.fields"), facts.of((Record) element)));
        if (element instanceof OperatingState state) {
            List<List<String>> rows = new ArrayList<>();
            state.sources()
                    .forEach((id, set) -> rows.add(List.of(
                            id.value(),
                            set.on()
                                    ? Words.of("trade").get("setting.source-on")
                                    : Words.of("trade").get("setting.off"))));
            state.components().forEach((id, setting) -> rows.add(List.of(id.value(), SettingWords.of(setting))));
            state.outputs()
                    .forEach((pin, setting) ->
                            rows.add(List.of(pin.unit() + "." + pin.pin(), SettingWords.of(setting))));
            sections.add(new Grid(
                    WORDS.get("inspector.set"),
                    List.of(WORDS.get("inspector.what"), WORDS.get("inspector.how")),
                    rows));
            readout.analysis()
                    .flatMap(results -> results.solution(state.id()))
                    .ifPresent(solution -> sections.add(0, power(EnergyBalance.of(solution))));
            return new Inspection(state.id().value(), WORDS.get("inspector.operating-state", state.name()), sections);
        }
        if (element instanceof LoadGroup group) {
            sections.add(
                    0,
                    new Facts(
                            WORDS.get("inspector.what-may-run"),
                            List.of(
                                    Fact.of(WORDS.get("inspector.rule"), GroupEdits.rule(group)),
                                    Fact.of(WORDS.get("inspector.loads"), GroupEdits.loads(group)))));
        }
        if (element instanceof StateSequence sequence) {
            List<List<String>> steps = sequence.steps().stream()
                    .map(step ->
                            List.of(readout.stateName(step.state()), SequenceEdits.duration(step.durationSeconds())))
                    .toList();
            sections.add(
                    0,
                    new Grid(
                            WORDS.get("inspector.steps"),
                            List.of(WORDS.get("inspector.state"), WORDS.get("inspector.lasts")),
                            steps));
        }
        if (element instanceof Reading reading) {
            ReadingFacts.of(readout, reading.id().value()).ifPresent(judged -> sections.add(0, judged));
        }
        if (element instanceof Note note) {
            sections.add(0, new Prose(WORDS.get("inspector.text"), note.text(), Tone.PLAIN));
        }
        return new Inspection(element.id().value(), kind, sections);
    }
}
