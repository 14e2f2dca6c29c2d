package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * Measured resistances that take the place of calculated ones, by the readings that say so. Immutable.
 * <p>A wire's own reading counts as it is. A reading of a path counts where one wire is the whole net: the contacts at its ends, at
 * their listed resistance, come off, so that wire and contacts together are what was measured. Of several readings of one thing the
 * largest counts, so that no drop is told too small; several built harnesses of one design differ.
 */
public final class MeasuredOhms {

    /** Nothing measured. */
    public static final MeasuredOhms NONE =
            new MeasuredOhms(Collections.emptySortedMap(), Collections.emptySortedMap(), Collections.emptySortedMap());

    /** Joints of a splice that a reading across it passes. */
    private static final int SPLICE_JOINTS = 2;

    /**
     * One resistance that stands in for a calculated one.
     *
     * @param reading where it comes from
     * @param ohms    of the wire or joint alone, at the temperature of the reading, ohm, more than 0
     */
    public record Taken(Reading reading, double ohms) {}

    private final SortedMap<WireId, List<Taken>> wires;
    private final SortedMap<String, Taken> joints;
    private final SortedMap<ReadingId, Text> unused;

    private MeasuredOhms(
            SortedMap<WireId, List<Taken>> wires, SortedMap<String, Taken> joints, SortedMap<ReadingId, Text> unused) {
        this.wires = wires;
        this.joints = joints;
        this.unused = unused;
    }

    /** What the readings of a harness measured. */
    public static MeasuredOhms of(Harness harness) {
        List<Reading> taken =
                harness.readings().all().stream().filter(Reading::replaces).toList();
        return taken.isEmpty() ? NONE : of(harness, taken);
    }

    private static MeasuredOhms of(Harness harness, List<Reading> readings) {
        MeasuredOhms found = new MeasuredOhms(new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
        Map<String, List<Wire>> places = new HashMap<>();
        harness.wires().all().stream().filter(wire -> !wire.existing()).forEach(wire -> wire.ends()
                .forEach(end -> places.computeIfAbsent(ProbePlace.of(wire, end), key -> new ArrayList<>())
                        .add(wire)));
        for (Reading reading : readings) {
            Measured measured = reading.measured();
            if (measured instanceof Measured.OfWire of) {
                found.wire(harness, reading, of);
            } else if (measured instanceof Measured.Path path) {
                found.path(harness, reading, path, places);
            } else if (measured instanceof Measured.OfJoint joint) {
                found.joint(harness, reading, joint);
            }
        }
        return found;
    }

    private void wire(Harness harness, Reading reading, Measured.OfWire of) {
        harness.wires().all().stream()
                .filter(wire -> wire.id().value().equals(of.wire()))
                .findFirst()
                .ifPresentOrElse(
                        wire -> take(reading, wire, of.wireOhms()),
                        () -> unused.put(reading.id(), NetworkTexts.text("unused.no-wire", of.wire())));
    }

    private void path(Harness harness, Reading reading, Measured.Path path, Map<String, List<Wire>> places) {
        List<Wire> from = places.getOrDefault(path.from(), List.of());
        List<Wire> to = places.getOrDefault(path.to(), List.of());
        if (from.isEmpty() || to.isEmpty()) {
            unused.put(reading.id(), NetworkTexts.text("unused.no-end", from.isEmpty() ? path.from() : path.to()));
            return;
        }
        Wire wire = from.get(0);
        boolean whole = from.size() == 1 && from.equals(to) && !atSplice(wire);
        if (!whole) {
            unused.put(reading.id(), NetworkTexts.text("unused.several-wires", path.place()));
            return;
        }
        double contacts = wire.ends().stream()
                .mapToDouble(end ->
                        harness.contact(end).map(ContactPart::contactOhms).orElse(0.0))
                .sum();
        take(reading, wire, path.pathOhms() - contacts);
    }

    private static boolean atSplice(Wire wire) {
        return wire.ends().stream().anyMatch(WireEnd.AtSplice.class::isInstance);
    }

    private void take(Reading reading, Wire wire, double ohms) {
        if (ohms > 0) {
            wires.computeIfAbsent(wire.id(), key -> new ArrayList<>()).add(new Taken(reading, ohms));
        } else {
            unused.put(reading.id(), NetworkTexts.text("unused.nothing-left"));
        }
    }

    private void joint(Harness harness, Reading reading, Measured.OfJoint of) {
        if (of.jointOhms() <= 0) {
            unused.put(reading.id(), NetworkTexts.text("unused.nothing-measured"));
            return;
        }
        String joint = of.joint();
        boolean splice = has(harness.splices().all(), joint);
        if (splice
                || has(harness.grounds().all(), joint)
                || has(harness.straps().all(), joint)
                || isCavity(harness, joint)) {
            joints.merge(
                    joint,
                    new Taken(reading, splice ? of.jointOhms() / SPLICE_JOINTS : of.jointOhms()),
                    (one, other) -> other.ohms() > one.ohms() ? other : one);
        } else {
            unused.put(reading.id(), NetworkTexts.text("unused.no-joint", joint));
        }
    }

    private static boolean has(Collection<? extends Element> elements, String id) {
        return elements.stream().anyMatch(element -> element.id().value().equals(id));
    }

    private static boolean isCavity(Harness harness, String joint) {
        return harness.connectors().all().stream()
                .anyMatch(connector -> joint.startsWith(connector.id() + ".")
                        && connector
                                .cavity(joint.substring(connector.id().value().length() + 1))
                                .isPresent());
    }

    /** What was measured of a wire, each by its reading; empty where nothing was. */
    public List<Taken> wire(WireId wire) {
        return List.copyOf(wires.getOrDefault(wire, List.of()));
    }

    /** The wires with a measured resistance, in the order of their ids. */
    public List<WireId> wires() {
        return List.copyOf(wires.keySet());
    }

    /** What was measured of a joint: of a ground point, strap or splice by its id, of a contact by its cavity. */
    public Optional<Taken> joint(String place) {
        return Optional.ofNullable(joints.get(place));
    }

    /** The joints with a measured resistance. */
    public SortedMap<String, Taken> joints() {
        return Collections.unmodifiableSortedMap(joints);
    }

    /** The measured resistance of a joint, or the given one where none was measured, ohm. */
    public double jointOhms(String place, double otherwise) {
        return joint(place).map(Taken::ohms).orElse(otherwise);
    }

    /** Readings that say they replace a resistance and cannot, each with why. */
    public SortedMap<ReadingId, Text> unused() {
        return Collections.unmodifiableSortedMap(unused);
    }

    /** Temperature of the conductors at a reading, deg C; 20 where it does not say. */
    public static double celsius(Reading reading) {
        OptionalDouble said = reading.conductorCelsius();
        return said.orElse(20);
    }
}
