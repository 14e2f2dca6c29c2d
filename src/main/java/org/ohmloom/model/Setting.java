package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.within;

import java.util.Optional;

/**
 * How an operating state sets a switch, an output or a load.
 *
 * @param on           whether it is on
 * @param dutyFraction share of the time it conducts, more than 0 and at most 1, when on; 1 is continuous
 * @param position     which position of a switch with several; empty means the first
 * @param starting     whether a motor stands still at its start current
 */
public record Setting(boolean on, double dutyFraction, Optional<String> position, boolean starting) {

    /** On all the time. */
    public static final Setting ON = new Setting(true, 1, Optional.empty(), false);

    /** Off. */
    public static final Setting OFF = new Setting(false, 1, Optional.empty(), false);

    public Setting {
        within(dutyFraction, Double.MIN_NORMAL, 1, "duty fraction");
        position.ifPresent(value -> notBlank(value, "position of a switch"));
    }

    /** On for a share of the time, more than 0 and at most 1. */
    public static Setting duty(double dutyFraction) {
        return new Setting(true, dutyFraction, Optional.empty(), false);
    }

    /** On in a named position. */
    public static Setting at(String position) {
        return new Setting(true, 1, Optional.of(position), false);
    }

    /** On with the motor at standstill. */
    public static Setting start() {
        return new Setting(true, 1, Optional.empty(), true);
    }
}
