package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.Optional;

/**
 * What a control unit reads or switches at a pin: the plan of its pins, whether wires are there already or not.
 *
 * @param name      what the unit calls it, unique there
 * @param pin       name of the input or output
 * @param component the sensor that is read, or the load or relay that is switched
 * @param supplyPin name of the reference supply that feeds the sensor, if one of this unit does
 * @param returnPin name of the pin the sensor returns to, if one of this unit
 * @param locked    true when a person chose the pins and a plan must keep them
 */
public record Channel(
        String name,
        String pin,
        ComponentId component,
        Optional<String> supplyPin,
        Optional<String> returnPin,
        boolean locked) {

    public Channel {
        notBlank(name, "name of a channel");
        notBlank(pin, "pin of channel %s", name);
        supplyPin.ifPresent(value -> notBlank(value, "supply pin of channel %s", name));
        returnPin.ifPresent(value -> notBlank(value, "return pin of channel %s", name));
    }

    /** This channel at other pins. */
    public Channel withPins(String itsPin, Optional<String> itsSupply, Optional<String> itsReturn) {
        return new Channel(name, itsPin, component, itsSupply, itsReturn, locked);
    }

    /** This channel under another name. */
    public Channel withName(String changed) {
        return new Channel(changed, pin, component, supplyPin, returnPin, locked);
    }

    /** This channel with its pins kept by a plan, or not. */
    public Channel locked(boolean changed) {
        return new Channel(name, pin, component, supplyPin, returnPin, changed);
    }
}
