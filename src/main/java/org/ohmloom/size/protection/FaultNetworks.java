package org.ohmloom.size.protection;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.FuseOhms;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.FaultCondition;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.words.Text;

/** The two networks faults are solved in: hot and weak for the smallest, cool and strong for the largest. */
final class FaultNetworks {

    /** Time in which the smallest fault must open its device where the harness does not say, s. */
    static final double USUAL_FAULT_SECONDS = 5;

    /** Length of the pulse the largest fault takes from a battery, s. */
    private static final double LARGEST_PULSE_SECONDS = 0.1;

    private final ProtectionInput input;
    private final FaultSources weak;
    private final FaultNetwork hot;
    private final FaultNetwork cool;

    FaultNetworks(ProtectionInput input) {
        this.input = input;
        FaultCondition minimum = input.tables().faultCondition(FaultCondition.MINIMUM);
        FaultCondition maximum = input.tables().faultCondition(FaultCondition.MAXIMUM);
        weak = new FaultSources(input.tables(), minimum, askedSeconds(input));
        FaultSources strong = new FaultSources(input.tables(), maximum, LARGEST_PULSE_SECONDS);
        hot = faults(weak, wire -> minimum.conductorsCelsius().orElse(limitCelsius(wire)));
        cool = faults(strong, wire -> maximum.conductorsCelsius().orElse(limitCelsius(wire)));
    }

    /** Time in which the smallest fault must open its device, s. */
    static double askedSeconds(ProtectionInput input) {
        return input.harness()
                .rules()
                .sizing()
                .map(SizingRules::faultSeconds)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .orElse(USUAL_FAULT_SECONDS);
    }

    private double limitCelsius(Wire wire) {
        return input.tables()
                .findInsulation(wire.insulation().orElse(input.harness().rules().insulation()))
                .map(InsulationType::maximumCelsius)
                .orElse(input.harness().rules().ambientCelsius());
    }

    private FaultNetwork faults(FaultSources sources, ToDoubleFunction<Wire> celsius) {
        ConductorResistance resistance =
                new ConductorResistance(input.tables(), input.basis(), MeasuredOhms.of(input.harness()));
        Network network = NetworkBuilder.build(
                input.harness(),
                OperatingState.of("as-drawn", "as drawn", OperatingState.EngineMode.OFF),
                wire -> Optional.ofNullable(input.ratings().get(wire.id()))
                        .map(WireRating::gauge)
                        .map(gauge -> resistance.ohms(
                                wire, gauge, input.routes().lengthMetres(wire), celsius.applyAsDouble(wire)))
                        .orElse(ConductorResistance.UNKNOWN_LENGTH_OHMS),
                FuseOhms.of(input.tables()));
        return new FaultNetwork(input.harness(), network, input.upstream(), sources, input.cancelled());
    }

    /** For the smallest fault: batteries cold and discharged, conductors at their limit. */
    FaultNetwork hot() {
        return hot;
    }

    /** For the largest fault: batteries full and warm, conductors at 20 C. */
    FaultNetwork cool() {
        return cool;
    }

    /** A source as the smallest fault finds it, in words. */
    Text hotText(ComponentId source) {
        return weak.text(
                source.value(), input.harness().components().get(source).device());
    }
}
