package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.words.Text;

/** One column of a {@link ReturnPicture}: a place whose voltage is shown as a height. */
public sealed interface ReturnColumn permits Basin, Gauge {

    /** Id of the element it belongs to. */
    String element();

    /** Its identity as written below it. */
    String label();

    /** What people call it; may be empty. */
    String name();

    /** Second line below it: its current, or what it is measured against. */
    Text second();

    /** Heading it shares with its neighbours; may be empty. */
    Text group();

    /** Name of the state it is shown in; empty when all are shown in one. */
    String state();

    /** Its height, mean, V. */
    double volts();

    /** How far it swings about that, V, 0 or more. */
    double rippleVolts();

    /** Most it may be away from its reference, V. */
    OptionalDouble limitVolts();

    /** All of it in a sentence. */
    Text description();

    /** Whether it is beyond its limit. */
    default boolean isOver() {
        return limitVolts().isPresent()
                && Math.abs(volts()) + rippleVolts() > limitVolts().getAsDouble() * (1 + 1e-9);
    }

    /** Identity and name. */
    default String called() {
        return name().isEmpty() || name().equals(label()) ? label() : label() + " " + name();
    }

    /** A sentence of some parts that goes on with whether it is beyond its limit and with its state. */
    default Text sentence(List<Text> parts) {
        List<Text> all = new ArrayList<>(parts);
        if (isOver()) {
            all.add(ChartTexts.text("beyond-limit"));
        }
        if (!state().isEmpty()) {
            all.add(ChartTexts.text("in-state", state()));
        }
        return Text.joined("; ", all);
    }
}
