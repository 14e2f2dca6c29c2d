package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.size.protection.BandAgainstConductor;
import org.ohmloom.size.protection.ContinuousRating;
import org.ohmloom.size.protection.DeviceAllowance;
import org.ohmloom.size.protection.StartPulse;
import org.ohmloom.size.protection.TimeCurrentBand;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.FuseRating;
import org.ohmloom.tables.FuseSeries;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * Chooses the rating of each protective device: the smallest of its series whose continuous-load share (80 % by the
 * tables) in the air where it sits still covers the largest lasting current through it and that rides through the starts
 * behind it, if every sized conductor that relies on it allows that rating and withstands what it lets through in a short circuit. Devices that
 * feed a wire side by side are judged by the sum of their ratings. Wires without a size do not limit it; they are chosen to
 * suit it.
 */
public final class DeviceChooser {

    /** Id of the table rule on the continuous load of a protective device. */
    private static final String CONTINUOUS_LOAD = "continuous-load-blade";

    private final SizingInput input;
    private final SizingFacts facts;
    private final DeviceAllowance allowance;
    private final CitedValue loadPercent;
    private final Map<ComponentId, List<Wire>> relying = new HashMap<>();
    private final StartRide starts;

    /** A chooser on one set of solutions, without starts followed over time: they count as they are entered. */
    public DeviceChooser(SizingInput input) {
        this(input, StartUps.NONE);
    }

    /** A chooser on one set of solutions and the starts followed over time on them. */
    public DeviceChooser(SizingInput input, StartUps startUps) {
        this.input = input;
        this.facts = new SizingFacts(input);
        this.allowance = DeviceAllowance.of(
                input.tables(), input.basis(), input.harness().rules().nominalVolts());
        this.loadPercent = input.tables().fuseDerating(CONTINUOUS_LOAD).value();
        this.starts = new StartRide(facts, startUps);
        for (Wire wire : input.harness().wires().all()) {
            if (wire.gauge().isPresent()) {
                facts.devices(wire).forEach(device -> relying.computeIfAbsent(device, id -> new ArrayList<>())
                        .add(wire));
            }
        }
    }

    /** The choice for every protective device. */
    public SortedMap<ComponentId, DeviceChoice> chooseAll() {
        SortedMap<ComponentId, DeviceChoice> choices = new TreeMap<>();
        for (Component component : input.harness().components().all()) {
            if (component.device() instanceof ProtectiveDevice device) {
                input.poll().run();
                choices.put(component.id(), choose(component.id(), device));
            }
        }
        return Collections.unmodifiableSortedMap(choices);
    }

    /**
     * The choice for those devices only whose present rating does not serve. A fuse is there for its conductor; one that
     * a person chose and that serves is better left alone.
     */
    public SortedMap<ComponentId, DeviceChoice> changes() {
        SortedMap<ComponentId, DeviceChoice> changes = new TreeMap<>(chooseAll());
        changes.keySet().removeIf(this::serves);
        return Collections.unmodifiableSortedMap(changes);
    }

    /** Whether the rating a device has now covers its load and suits every sized conductor that relies on it. */
    public boolean serves(ComponentId id) {
        ProtectiveDevice device =
                facts.device(id).orElseThrow(() -> new IllegalArgumentException(id + " is not a protective device"));
        return device.ratingAmps() >= leastAmps(id, device)
                && rides(id, device, device.ratingAmps())
                && allowed(id, device, device.ratingAmps());
    }

    private DeviceChoice choose(ComponentId id, ProtectiveDevice device) {
        double loadAmps = facts.worst(id).amps();
        Optional<FuseSeries> series = input.tables().fuseSeries(device.series());
        if (loadAmps == 0 || series.isEmpty()) {
            return present(id, device, loadAmps);
        }
        double least = leastAmps(id, device);
        List<Text> why = new ArrayList<>(List.of(load(loadAmps, least, ambientRatio(id, device))));
        Optional<FuseRating> smallest = series.get().ratings().stream()
                .filter(each -> each.ratingAmps() >= least && rides(id, device, each.ratingAmps()))
                .findFirst();
        if (smallest.isEmpty()) {
            start(id, device, least).ifPresent(why::add);
            why.add(SizeTexts.text("device.no-such", device.series()));
            return none(id, loadAmps, why);
        }
        double ratingAmps = smallest.get().ratingAmps();
        boolean fits = allowed(id, device, ratingAmps);
        start(id, device, ratingAmps).ifPresent(why::add);
        why.add(SizeTexts.text(
                fits ? "device.next" : "device.next-too-large", device.series(), Formats.amps(ratingAmps)));
        thinnest(id).ifPresent(why::add);
        return fits
                ? choice(id, OptionalDouble.of(ratingAmps), loadAmps, why, loadPercent.citation())
                : none(id, loadAmps, why);
    }

    /** Nothing to choose from or by: the present rating if it serves. */
    private DeviceChoice present(ComponentId id, ProtectiveDevice device, double loadAmps) {
        List<Text> why = new ArrayList<>();
        if (loadAmps == 0) {
            why.add(SizeTexts.text("ampacity.nothing"));
        } else {
            why.add(load(loadAmps, leastAmps(id, device), ambientRatio(id, device)));
            why.add(SizeTexts.text("device.no-table", device.series()));
        }
        boolean serves = serves(id);
        why.add(SizeTexts.text(serves ? "device.stays" : "device.does-not-serve", Formats.amps(device.ratingAmps())));
        thinnest(id).ifPresent(why::add);
        return serves
                ? new DeviceChoice(
                        id,
                        OptionalDouble.of(device.ratingAmps()),
                        loadAmps,
                        Text.joined("; ", why),
                        allowance.citation())
                : none(id, loadAmps, why);
    }

    private DeviceChoice none(ComponentId id, double loadAmps, List<Text> why) {
        return choice(id, OptionalDouble.empty(), loadAmps, why, allowance.citation());
    }

    /** A choice whose reason ends in its source. */
    private static DeviceChoice choice(
            ComponentId id, OptionalDouble ratingAmps, double loadAmps, List<Text> why, Citation source) {
        why.add(Text.of(source.text()));
        return new DeviceChoice(id, ratingAmps, loadAmps, Text.joined("; ", why), source);
    }

    private Text load(double loadAmps, double leastAmps, double ambientRatio) {
        String load = Formats.amps(loadAmps);
        String share = Formats.percent(loadPercent.value() / 100);
        return ambientRatio < 1
                ? SizeTexts.text(
                        "device.load-in-air", load, share, Formats.percent(ambientRatio), Formats.amps(leastAmps))
                : SizeTexts.text("device.load", load, share, Formats.amps(leastAmps));
    }

    /** What the hardest start asks of a rating, in words; nothing when nothing starts behind it. */
    private Optional<Text> start(ComponentId id, ProtectiveDevice device, double ratingAmps) {
        return starts.worst(id, device, ratingAmps, facts.worst(id).amps(), ambientCelsius(id))
                .map(StartPulse::told);
    }

    private boolean rides(ComponentId id, ProtectiveDevice device, double ratingAmps) {
        return starts.rides(id, device, ratingAmps, facts.worst(id).amps(), ambientCelsius(id));
    }

    private double leastAmps(ComponentId id, ProtectiveDevice device) {
        return ContinuousRating.leastAmps(facts.worst(id).amps(), loadPercent.value() / 100, ambientRatio(id, device));
    }

    private double ambientRatio(ComponentId id, ProtectiveDevice device) {
        return ContinuousRating.of(input.tables(), device.series(), 1, ambientCelsius(id))
                .ambientRatio();
    }

    private double ambientCelsius(ComponentId id) {
        return input.harness()
                .components()
                .find(id)
                .flatMap(Component::zone)
                .map(zone -> input.harness().zones().get(zone).ambientCelsius())
                .orElse(input.harness().rules().ambientCelsius());
    }

    private boolean allowed(ComponentId id, ProtectiveDevice device, double ratingAmps) {
        return relying(id).stream().allMatch(wire -> allowed(id, device, ratingAmps, wire));
    }

    /** Whether a wire allows a rating by the basis, and withstands a short circuit behind it, with the devices beside it. */
    private boolean allowed(ComponentId id, ProtectiveDevice device, double ratingAmps, Wire wire) {
        double together = facts.largestTogetherAmps(
                wire,
                each -> each.equals(id)
                        ? ratingAmps
                        : facts.device(each).map(ProtectiveDevice::ratingAmps).orElse(0.0));
        return allowance.allows(device, ratingAmps, gauge(wire), ampacityAmps(wire))
                && allowance.allows(device, together, gauge(wire), ampacityAmps(wire))
                && stands(device, ratingAmps, wire);
    }

    private boolean stands(ProtectiveDevice device, double ratingAmps, Wire wire) {
        Optional<TimeCurrentBand> band = TimeCurrentBand.of(input.tables(), device.series(), ratingAmps);
        ConductorRow row = facts.row(wire, gauge(wire));
        return band.isEmpty()
                || OpeningDemand.limit(facts, wire, row)
                        .map(limit -> BandAgainstConductor.of(band.get(), limit, Double.POSITIVE_INFINITY, 0)
                                .withstands())
                        .orElse(true);
    }

    private Optional<Text> thinnest(ComponentId id) {
        return relying(id).stream()
                .min(Comparator.comparingDouble(this::ampacityAmps))
                .map(wire -> SizeTexts.text(
                        "device.weakest",
                        wire.id(),
                        gauge(wire).text(),
                        Formats.amps(ampacityAmps(wire)),
                        allowance.text()));
    }

    private List<Wire> relying(ComponentId id) {
        return relying.getOrDefault(id, List.of());
    }

    private double ampacityAmps(Wire wire) {
        return facts.ampacityAmps(wire, gauge(wire));
    }

    private static Gauge gauge(Wire wire) {
        return wire.gauge().orElseThrow();
    }
}
