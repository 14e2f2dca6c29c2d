package org.ohmloom.size.protection;

import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;

/** What switches, relays and outputs resist while they conduct. */
final class ClosedOhms {

    /** An output that states no resistance, ohm. Common practice, no source. */
    private static final double FALLBACK_OHMS = 0.05;

    private ClosedOhms() {}

    /** The law of a device's branch when it conducts; its own law when it conducts by itself. */
    static Law of(Harness harness, Branch branch) {
        if (branch.law() instanceof Law.CoilOperated contact) {
            return new Law.Resistance(contact.ohms());
        }
        if (!(branch.law() instanceof Law.Open) || branch.element().isEmpty()) {
            return branch.law();
        }
        return branch.element()
                .filter(ComponentId.class::isInstance)
                .flatMap(id -> harness.components().find((ComponentId) id))
                .<Law>map(component -> new Law.Resistance(ohms(component.device(), branch)))
                .orElse(branch.law());
    }

    private static double ohms(Device device, Branch branch) {
        if (device instanceof Switch hand) {
            return hand.contactOhms();
        }
        if (device instanceof Relay relay) {
            return relay.contactOhms();
        }
        if (device instanceof SolidStateOutput output) {
            return output.onOhms();
        }
        if (device instanceof ControlUnit unit) {
            String id = branch.id().value();
            return unit.pins().stream()
                    .filter(pin -> id.endsWith("." + pin.name()))
                    .map(Pin::onOhms)
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .findFirst()
                    .orElse(FALLBACK_OHMS);
        }
        return FALLBACK_OHMS;
    }
}
