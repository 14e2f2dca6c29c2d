package org.ohmloom.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Verdict;
import org.ohmloom.graph.FirstDevice;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.size.protection.DeviceProtection;

/**
 * Says what could not be judged because something is not entered, and what was assumed instead. Never silence, but one
 * finding for all elements that miss the same thing.
 * <p>A wire with a loose end carries nothing and is left to {@link WireEndLoose}. What is missing on a wire that carries
 * power is a warning; on signal wires, whose drop and heat hardly matter, a note.
 */
final class NotChecked implements Rule {

    private static final RuleInfo INFO = new RuleInfo("not-checked", Severity.NOTE);

    private static final Set<SignalClass> POWER =
            Set.of(SignalClass.FEED, SignalClass.SWITCHED_OUTPUT, SignalClass.RETURN);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return EnumSet.of(
                StudyPart.PROTECTION,
                StudyPart.OFFSETS,
                StudyPart.LOOPS,
                StudyPart.SENSORS,
                StudyPart.LOST_RETURNS,
                StudyPart.COUPLINGS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Harness harness = evidence.harness();
        if (harness.states().isEmpty()) {
            report.accept(draft(Severity.WARNING, "no-state").build());
        }
        if (harness.components().all().stream()
                .noneMatch(component -> component.device().isSource())) {
            report.accept(draft(Severity.WARNING, "no-source").build());
        }
        wires(evidence, report);
        tell(report, Severity.NOTE, "distance", unknownDistances(evidence));
        tell(report, Severity.NOTE, "never-asked", neverAsked(harness));
        contacts(harness, report);
        protection(evidence, report);
        returns(evidence, report);
        tell(report, Severity.NOTE, "no-bus", onNoBus(harness));
        readings(evidence, report);
        Assumptions.findings(evidence, INFO).forEach(report);
    }

    private static void wires(Evidence evidence, Consumer<Finding> report) {
        Predicate<WireRating> noLength = each ->
                each.lengthMetres().isEmpty() && each.wire().measuredOhms().isEmpty();
        Predicate<WireRating> noAmpacity = each -> each.ampacity().isEmpty();
        Predicate<WireRating> power = each -> POWER.contains(each.wire().signalClass());
        tell(report, Severity.WARNING, "drop", wires(evidence, noLength.and(power)));
        tell(report, Severity.NOTE, "signal-length", wires(evidence, noLength.and(power.negate())));
        tell(report, Severity.NOTE, "size", wires(evidence, WireRating::provisional));
        tell(report, Severity.WARNING, "ampacity", wires(evidence, noAmpacity.and(power)));
        tell(report, Severity.NOTE, "signal-ampacity", wires(evidence, noAmpacity.and(power.negate())));
    }

    private static List<Object> wires(Evidence evidence, Predicate<WireRating> missing) {
        List<Object> wires = new ArrayList<>();
        evidence.ratings().values().stream()
                .filter(rating -> !isLoose(rating.wire()))
                .filter(missing)
                .forEach(rating -> wires.add(rating.wire().id()));
        return wires;
    }

    private static boolean isLoose(Wire wire) {
        return wire.ends().stream().anyMatch(WireEnd.Loose.class::isInstance);
    }

    private static List<Object> unknownDistances(Evidence evidence) {
        Set<Object> devices = new LinkedHashSet<>();
        evidence.upstream().bareFeeds().stream()
                .filter(feed -> evidence.harness()
                                .components()
                                .get(feed.source().component())
                                .device()
                        instanceof Battery)
                .flatMap(feed -> feed.devices().stream())
                .filter(first -> first.way().lengthMetres().isEmpty())
                .map(FirstDevice::device)
                .forEach(devices::add);
        return List.copyOf(devices);
    }

    /** Units with a wire at a bus pin that no data bus names. */
    private static List<Object> onNoBus(Harness harness) {
        Set<Object> named = new LinkedHashSet<>();
        harness.buses().all().forEach(bus -> bus.nodes().forEach(node -> named.add(node.unit())));
        Set<WireEnd> ends = new LinkedHashSet<>();
        harness.wires().all().stream()
                .filter(wire -> wire.signalClass() == SignalClass.DATA_BUS)
                .forEach(wire -> ends.addAll(wire.ends()));
        List<Object> units = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit
                    && !named.contains(component.id())
                    && unit.pinsOf(PinRole.BUS_HIGH)
                            .flatMap(pin -> harness.endsAt(component.id(), pin.name()).stream())
                            .anyMatch(ends::contains)) {
                units.add(component.id());
            }
        }
        return units;
    }

    private static List<Object> neverAsked(Harness harness) {
        List<Object> loads = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Load
                    && !harness.states().isEmpty()
                    && harness.states().all().stream().noneMatch(state -> LoadNotFed.asked(state, component.id())
                            .isPresent())) {
                loads.add(component.id());
            }
        }
        return loads;
    }

    private static void contacts(Harness harness, Consumer<Finding> report) {
        Set<Object> withoutLimit = new LinkedHashSet<>();
        Set<Object> withoutContact = new LinkedHashSet<>();
        for (CavityWires.Occupied occupied : CavityWires.of(harness)) {
            Connector connector = occupied.connector();
            occupied.contact(harness)
                    .ifPresentOrElse(
                            contact -> {
                                if (contact.limits().isEmpty()) {
                                    withoutLimit.add(contact.id());
                                }
                            },
                            () -> withoutContact.add(connector.id()));
        }
        tell(report, Severity.NOTE, "contact-limit", List.copyOf(withoutLimit));
        tell(report, Severity.NOTE, "contact", List.copyOf(withoutContact));
    }

    private static void protection(Evidence evidence, Consumer<Finding> report) {
        tell(report, Severity.NOTE, "opening", devices(evidence, device -> device.band()
                .isEmpty()));
        tell(
                report,
                Severity.NOTE,
                "largest-fault",
                devices(
                        evidence,
                        device -> device.maximumFault().isPresent()
                                && device.breakingAmps().isEmpty()));
        tell(report, Severity.NOTE, "start", List.copyOf(evidence.protection().untimed()));
    }

    /**
     * What the studies of the return paths miss. What merely takes too long stands in the report alone; what is not joined is for
     * the rules on returns that lead nowhere.
     */
    private static void returns(Evidence evidence, Consumer<Finding> report) {
        for (Unjudged each : evidence.returns().unjudged()) {
            if (each.reason() == Unjudged.Reason.NOT_ENTERED) {
                boolean whole = each.subjects().isEmpty();
                int rest = Sentence.MOST_CHARACTERS - each.words().english().length() - 2;
                report.accept(draft(Severity.NOTE, whole ? "problem" : "study")
                        .word("words", each.words())
                        .word("about", Listing.of(each.subjects(), rest))
                        .subjects(each.subjects())
                        .build());
            }
        }
    }

    /** Readings that stand for nothing: what they measured is not there any more, or has no limit. */
    private static void readings(Evidence evidence, Consumer<Finding> report) {
        List<Object> unjudged = new ArrayList<>();
        for (Judgement judgement : evidence.tests().record().judgements()) {
            if (judgement.verdict() == Verdict.NOT_JUDGED && judgement.stands()) {
                unjudged.add(judgement.reading().id());
            }
        }
        tell(report, Severity.NOTE, "readings", unjudged);
        MeasuredOhms.of(evidence.harness())
                .unused()
                .forEach((reading, why) -> report.accept(draft(Severity.NOTE, "replaces")
                        .word("reading", reading)
                        .word("why", why)
                        .subject(reading)
                        .build()));
    }

    private static List<Object> devices(Evidence evidence, Predicate<DeviceProtection> missing) {
        List<Object> devices = new ArrayList<>();
        evidence.protection().devices().values().stream()
                .filter(missing)
                .forEach(device -> devices.add(device.device()));
        return devices;
    }

    private static FindingDraft draft(Severity severity, String sentence) {
        return new FindingDraft(INFO, sentence).severity(severity);
    }

    /** One finding about all of them, where there are any: a sentence with the one place {@code {about}}. */
    private static void tell(Consumer<Finding> report, Severity severity, String sentence, List<Object> about) {
        if (!about.isEmpty()) {
            int rest = RuleInfo.TEXTS.pattern(Locale.ROOT, INFO.key(sentence)).length() - "{about}".length();
            report.accept(draft(severity, sentence)
                    .word("about", Listing.of(about, Sentence.MOST_CHARACTERS - rest))
                    .subjects(about)
                    .build());
        }
    }
}
