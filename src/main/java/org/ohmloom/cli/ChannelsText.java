package org.ohmloom.cli;

import java.io.PrintWriter;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.units.Formats;

/** A plan of channels as text. */
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
            found.parts()
                    .forEach(part -> out.println("  " + Formats.number(part.costPoints())
                            + (part.costPoints() == 1 ? " point: " : " points: ") + part.reason()));
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
}
