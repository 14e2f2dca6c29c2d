package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** A plan of channels as text and as JSON. */
final class ChannelsText {

    private ChannelsText() {}

    static void print(ChannelPlan plan, PrintWriter out) {
        if (plan.answer() instanceof PinPlan.Found found) {
            plan.channels().forEach((unit, channels) -> {
                if (!channels.isEmpty()) {
                    out.println(plan.harness().components().get(unit).name() + " (" + unit + ")");
                    channels.forEach(channel -> out.println("  " + channel.pin() + ": " + channel.name() + " ("
                            + channel.component() + ")"
                            + channel.supplyPin().map(pin -> ", supply " + pin).orElse("")
                            + channel.returnPin().map(pin -> ", return " + pin).orElse("")
                            + (channel.locked() ? ", locked" : "")));
                }
            });
            out.println();
            out.println("Cost " + Formats.number(found.costPoints()) + " points, "
                    + (found.proven()
                            ? "proven the least"
                            : "the least is " + Formats.number(found.boundPoints()) + " or more")
                    + ".");
            found.parts().forEach(part -> out.println("  " + Formats.number(part.costPoints()) + ": " + part.reason()));
        } else if (plan.answer() instanceof PinPlan.Impossible impossible) {
            out.println("There is no plan.");
            impossible
                    .competitions()
                    .forEach(each -> out.println("  "
                            + String.join(
                                    ", ",
                                    each.claims().stream()
                                            .map(claim -> claim.id())
                                            .toList())
                            + " compete for " + each.capacity() + (each.capacity() == 1 ? " place" : " places") + ": "
                            + (each.slots().isEmpty()
                                    ? "no pin"
                                    : String.join(
                                            ", ",
                                            each.slots().stream()
                                                    .map(slot -> slot.id())
                                                    .toList()))));
            impossible.currents().forEach(each -> out.println("  " + each));
            out.println("What would make one possible:");
            impossible.helps().forEach(each -> out.println("  " + each));
        } else {
            out.println("No plan was found in the part of them looked at; lock some channels to their pins.");
        }
    }

    /** The channels: those of the plan, else those the units have. */
    static void write(Harness harness, Map<ComponentId, List<Channel>> byUnit, JsonObjectWriter root) {
        root.array(
                "channels",
                array -> byUnit.forEach((unit, channels) -> channels.forEach(channel -> array.object(item -> {
                    item.put("id", channel.name());
                    item.put("unit", unit.value());
                    item.put("pin", channel.pin());
                    item.put("sensor", channel.component().value());
                    item.put("rateHertz", rateHertz(harness, channel));
                    channel.supplyPin().ifPresent(pin -> item.put("supplyPin", pin));
                    channel.returnPin().ifPresent(pin -> item.put("returnPin", pin));
                }))));
    }

    /** The rate entered, Hz; empty where none is. */
    private static OptionalDouble rateHertz(Harness harness, Channel channel) {
        return harness.components().get(channel.component()).device() instanceof Sensor sensor
                ? sensor.measurement()
                        .flatMap(Measurement::use)
                        .map(Measurement.Use::updateHertz)
                        .orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
    }
}
