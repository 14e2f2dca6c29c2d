package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * A control unit, expansion module or remote node on a data bus: its pins are its terminals.
 *
 * @param pins                  pins in order, names unique
 * @param drawAmps              current the unit itself takes from its supply pins to its ground pins, A, 0 or more
 * @param groundToSensorReturnOhms resistance inside between supply ground and sensor return, ohm; empty when isolated
 * @param groundToCaseOhms         resistance inside between supply ground and case, ohm; empty when isolated
 * @param minimumVolts             least supply voltage it works at, V, more than 0, if known
 * @param inputFarads              capacitance at its supply, F, more than 0, if known
 * @param inputOhms                resistance in series with that capacitance, ohm, more than 0, if known
 * @param nameCharacters           most characters of a channel's name in the unit, 1 or more, if it is limited
 * @param groups                   pins that share a limit of current
 * @param channels                 what it reads and switches at which pin: the plan of its pins; names unique
 */
public record ControlUnit(
        List<Pin> pins,
        double drawAmps,
        OptionalDouble groundToSensorReturnOhms,
        OptionalDouble groundToCaseOhms,
        OptionalDouble minimumVolts,
        OptionalDouble inputFarads,
        OptionalDouble inputOhms,
        Optional<Integer> nameCharacters,
        List<PinGroup> groups,
        List<Channel> channels)
        implements Device {

    public ControlUnit {
        pins = List.copyOf(pins);
        notNegative(drawAmps, "supply current of a control unit");
        groundToSensorReturnOhms.ifPresent(value -> positive(value, "ground to sensor return resistance"));
        groundToCaseOhms.ifPresent(value -> positive(value, "ground to case resistance"));
        minimumVolts.ifPresent(value -> positive(value, "least voltage of a control unit"));
        inputFarads.ifPresent(value -> positive(value, "input capacitance of a control unit"));
        inputOhms.ifPresent(value -> positive(value, "input resistance of a control unit"));
        that(!pins.isEmpty(), "a control unit needs at least one pin");
        List<String> names = pins.stream().map(Pin::name).toList();
        that(names.stream().distinct().count() == names.size(), "pin names repeat: %s", names);
        nameCharacters.ifPresent(value -> positive(value, "most characters of a channel's name"));
        groups = List.copyOf(groups);
        channels = List.copyOf(channels);
        groups.forEach(group ->
                group.pins().forEach(pin -> requirePin(names, pin, Refusals.text("group of pins %s", group.name()))));
        Set<String> taken = new HashSet<>();
        for (Channel channel : channels) {
            that(taken.add(channel.name()), "two channels of a control unit are named '%s'", channel.name());
            requirePin(names, channel.pin(), Refusals.text("channel %s", channel.name()));
            channel.supplyPin().ifPresent(pin -> requirePin(names, pin, Refusals.text("channel %s", channel.name())));
            channel.returnPin().ifPresent(pin -> requirePin(names, pin, Refusals.text("channel %s", channel.name())));
        }
    }

    private static void requirePin(List<String> names, String pin, Text what) {
        that(
                names.contains(pin),
                "%s names the pin '%s', which the unit does not have%s",
                what,
                pin,
                NearestText.question(pin, names));
    }

    /** A control unit without groups of pins and without a plan of its pins. */
    public ControlUnit(
            List<Pin> pins,
            double drawAmps,
            OptionalDouble groundToSensorReturnOhms,
            OptionalDouble groundToCaseOhms,
            OptionalDouble minimumVolts,
            OptionalDouble inputFarads,
            OptionalDouble inputOhms) {
        this(
                pins,
                drawAmps,
                groundToSensorReturnOhms,
                groundToCaseOhms,
                minimumVolts,
                inputFarads,
                inputOhms,
                Optional.empty(),
                List.of(),
                List.of());
    }

    /** A control unit of which nothing is known about its supply input. */
    public ControlUnit(
            List<Pin> pins, double drawAmps, OptionalDouble groundToSensorReturnOhms, OptionalDouble groundToCaseOhms) {
        this(
                pins,
                drawAmps,
                groundToSensorReturnOhms,
                groundToCaseOhms,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** This unit with other pins. */
    public ControlUnit withPins(List<Pin> changed) {
        return withPlan(changed, channels);
    }

    /** This unit with other channels. */
    public ControlUnit withChannels(List<Channel> changed) {
        return withPlan(pins, changed);
    }

    /** This unit with other pins and channels, changed together. */
    public ControlUnit withPlan(List<Pin> changedPins, List<Channel> changedChannels) {
        return new ControlUnit(
                changedPins,
                drawAmps,
                groundToSensorReturnOhms,
                groundToCaseOhms,
                minimumVolts,
                inputFarads,
                inputOhms,
                nameCharacters,
                groups,
                changedChannels);
    }

    /** Channels at a pin, as input, output, supply or return. */
    public Stream<Channel> channelsAt(String pin) {
        return channels.stream()
                .filter(each -> each.pin().equals(pin)
                        || each.supplyPin().filter(pin::equals).isPresent()
                        || each.returnPin().filter(pin::equals).isPresent());
    }

    /** The pin of that name. */
    public Optional<Pin> pin(String name) {
        return pins.stream().filter(pin -> pin.name().equals(name)).findFirst();
    }

    /** Pins that have the role, in order. */
    public Stream<Pin> pinsOf(PinRole role) {
        return pins.stream().filter(pin -> pin.role() == role);
    }

    @Override
    public List<String> terminals() {
        return pins.stream().map(Pin::name).toList();
    }
}
