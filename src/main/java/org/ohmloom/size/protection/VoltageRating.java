package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.tables.FuseRating;
import org.ohmloom.tables.WireTables;
import org.ohmloom.words.Text;

/**
 * The voltage rating of a part against the highest system voltage where it is.
 *
 * @param element     the component, or the connector for a contact
 * @param part        what is rated, in words: "fuse F1", "contact CT-M in X1.2"
 * @param ratedVolts  highest voltage it is made for, V
 * @param systemVolts highest system voltage there, V
 * @param source      where the rating comes from
 */
public record VoltageRating(String element, Text part, double ratedVolts, double systemVolts, String source) {

    private static final double SAME = 1e-9;

    /** Whether it suits. */
    public boolean suits() {
        return systemVolts <= ratedVolts * (1 + SAME);
    }

    /** Every part whose rating is known; contacts once for each connector. */
    static List<VoltageRating> of(ProtectionInput input, SystemVolts volts) {
        Harness harness = input.harness();
        List<VoltageRating> ratings = new ArrayList<>();
        for (Component component : harness.components().all()) {
            rated(input.tables(), component.device()).ifPresent(rated -> component.terminals().stream()
                    .flatMap(terminal -> input.drawn().index().terminal(component.id(), terminal).stream())
                    .map(volts::at)
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .max()
                    .ifPresent(system -> ratings.add(new VoltageRating(
                            component.id().value(),
                            FaultTexts.text(rated.what, component.id()),
                            rated.volts,
                            system,
                            rated.source))));
        }
        for (Connector connector : harness.connectors().all()) {
            contacts(input, volts, connector).ifPresent(ratings::add);
        }
        return ratings;
    }

    private record Rated(String what, double volts, String source) {}

    /** The rated voltage of a protective device, V: its own, else its type's. */
    static OptionalDouble ofDevice(WireTables tables, ProtectiveDevice device) {
        return rated(tables, device)
                .map(rated -> OptionalDouble.of(rated.volts))
                .orElse(OptionalDouble.empty());
    }

    private static final String ENTERED = "voltage rating as entered in this harness";

    private static Optional<Rated> rated(WireTables tables, Device device) {
        if (device instanceof ProtectiveDevice protective) {
            String what = protective.kind() == ProtectiveDevice.Kind.FUSE ? "rated.fuse" : "rated.breaker";
            Optional<Rated> listed = tables.fuseSeries(protective.series())
                    .flatMap(series -> series.rating(protective.ratingAmps())
                            .or(() -> series.ratings().stream().findFirst()))
                    .map((FuseRating row) ->
                            new Rated(what, row.ratedVolts(), row.citation().text()));
            return entered(what, protective.ratedVolts()).or(() -> listed);
        }
        if (device instanceof Switch hand) {
            return entered("rated.switch", hand.ratedVolts());
        }
        if (device instanceof Relay relay) {
            return entered("rated.relay", relay.ratedVolts());
        }
        return device instanceof SolidStateOutput output
                ? entered("rated.output", output.ratedVolts())
                : Optional.empty();
    }

    private static Optional<Rated> entered(String what, OptionalDouble volts) {
        return volts.isPresent() ? Optional.of(new Rated(what, volts.getAsDouble(), ENTERED)) : Optional.empty();
    }

    /** The lowest rated contact of a connector against the highest voltage in it. */
    private static Optional<VoltageRating> contacts(ProtectionInput input, SystemVolts volts, Connector connector) {
        VoltageRating worst = null;
        for (Cavity cavity : connector.cavities()) {
            OptionalDouble rated = cavity.contact()
                    .flatMap(id -> input.harness().contacts().find(id))
                    .map(contact -> contact.ratedVolts())
                    .orElse(OptionalDouble.empty());
            Optional<PointId> point = input.drawn().index().cavity(connector.id(), cavity.name());
            if (rated.isEmpty() || point.isEmpty()) {
                continue;
            }
            OptionalDouble system = volts.at(point.get());
            if (system.isPresent()
                    && (worst == null
                            || system.getAsDouble() - rated.getAsDouble() > worst.systemVolts - worst.ratedVolts)) {
                worst = new VoltageRating(
                        connector.id().value(),
                        FaultTexts.text(
                                "rated.contact", cavity.contact().orElseThrow(), connector.id() + "." + cavity.name()),
                        rated.getAsDouble(),
                        system.getAsDouble(),
                        ENTERED);
            }
        }
        return Optional.ofNullable(worst);
    }
}
