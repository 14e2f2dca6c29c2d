package org.ohmloom.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ContactLimits;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Pin;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.words.Text;

/**
 * The continuous current a branch may carry.
 *
 * @param amps     the limit, A: of a wire its derated ampacity, of a contact its maker's limit at its ambient, of a device
 *                 its rating
 * @param words    what it is the limit of: {@code wire W1}, {@code contact X1.3}, {@code F1}
 * @param subjects ids of what is at fault when it is exceeded
 * @param source   where the limit comes from
 */
public record BranchLimit(double amps, Text words, List<String> subjects, Text source) {

    public BranchLimit {
        subjects = List.copyOf(subjects);
    }

    /** The limits of all branches that have one. */
    static Map<BranchId, BranchLimit> of(Evidence evidence) {
        Map<BranchId, BranchLimit> limits = new HashMap<>();
        for (WireRating rating : evidence.ratings().values()) {
            String wire = rating.wire().id().value();
            rating.ampacity().ifPresent(ampacity -> limits.put(new BranchId(wire), wire(rating, ampacity)));
        }
        contacts(evidence, limits);
        for (Branch branch : evidence.drawn().branches().values()) {
            device(evidence, branch).ifPresent(device -> deviceAmps(branch, device.device())
                    .ifPresent(amps -> limits.put(
                            branch.id(),
                            new BranchLimit(
                                    amps,
                                    Text.of(branch.id()),
                                    List.of(device.id().value()),
                                    RuleInfo.TEXTS.text("any.limit-entered")))));
        }
        return limits;
    }

    private static BranchLimit wire(WireRating rating, Ampacity ampacity) {
        String id = rating.wire().id().value();
        return new BranchLimit(
                ampacity.limitAmps(),
                Text.of(id + " (" + rating.gauge().text() + ")"),
                List.of(id),
                Text.of(ampacity.base().citation().text()));
    }

    private static void contacts(Evidence evidence, Map<BranchId, BranchLimit> limits) {
        Map<String, BranchId> own = new HashMap<>();
        for (Branch branch : evidence.drawn().branches().values()) {
            if (branch.kind() == BranchKind.CONTACT) {
                for (String cavity : branch.id().value().split("~")) {
                    own.put(cavity, branch.id());
                }
            }
        }
        for (CavityWires.Occupied occupied : CavityWires.of(evidence.harness())) {
            Optional<ContactPart> contact = occupied.contact(evidence.harness());
            BranchId branch = own.get(occupied.text());
            if (contact.isEmpty() || branch == null) {
                continue;
            }
            OptionalDouble amps =
                    ContactLimits.amps(contact.get(), evidence.harness().ambientCelsius(occupied.connector()));
            amps.ifPresent(limit -> limits.merge(
                    branch,
                    new BranchLimit(
                            limit,
                            RuleInfo.TEXTS.text("any.contact", contact.get().id(), occupied.text()),
                            List.of(occupied.connector().id().value()),
                            RuleInfo.TEXTS.text("any.contact-limit")),
                    (one, other) -> other.amps < one.amps ? other : one));
        }
    }

    private static Optional<Component> device(Evidence evidence, Branch branch) {
        return branch.element()
                .filter(ComponentId.class::isInstance)
                .flatMap(id -> evidence.harness().components().find((ComponentId) id));
    }

    private static OptionalDouble deviceAmps(Branch branch, Device device) {
        if (branch.kind().part() != BranchKind.Part.DEVICE) {
            return OptionalDouble.empty();
        }
        if (device instanceof ProtectiveDevice protective) {
            return OptionalDouble.of(protective.ratingAmps());
        }
        if (device instanceof Switch hand) {
            return OptionalDouble.of(hand.limitAmps());
        }
        if (device instanceof Relay relay) {
            return OptionalDouble.of(relay.limitAmps());
        }
        if (device instanceof SolidStateOutput output) {
            return OptionalDouble.of(output.limitAmps());
        }
        if (device instanceof BatteryIsolator isolator) {
            return OptionalDouble.of(isolator.limitAmps());
        }
        if (device instanceof Diode diode) {
            return OptionalDouble.of(diode.limitAmps());
        }
        if (device instanceof ControlUnit unit && branch.kind() == BranchKind.OUTPUT_PIN) {
            String name = branch.id().value();
            return unit.pins().stream()
                    .filter(pin -> name.endsWith("." + pin.name()))
                    .findFirst()
                    .map(Pin::limitAmps)
                    .orElse(OptionalDouble.empty());
        }
        return OptionalDouble.empty();
    }
}
