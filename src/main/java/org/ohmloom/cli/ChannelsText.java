package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.signal.pins.Claim;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.pins.Slot;
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
            if (plan.channels().values().stream().allMatch(List::isEmpty)) {
                out.println("There are no channels to plan: no control unit has a sensor, load or relay to serve.");
                return;
            }
            out.println();
            out.println("Cost " + Formats.number(found.costPoints()) + " points, "
                    + (found.proven()
                            ? "proven the least"
                            : "none costs less than " + Formats.number(found.boundPoints()) + ", so at most "
                                    + Formats.number(found.gapPoints()) + " could be saved")
                    + ".");
            found.parts()
                    .forEach(part -> out.println("  " + Formats.number(part.costPoints())
                            + (part.costPoints() == 1 ? " point: " : " points: ") + part.reason()));
        } else if (plan.answer() instanceof PinPlan.Impossible impossible) {
            out.println("There is no plan.");
            impossible.competitions().forEach(each -> {
                String claims = each.claims().stream().map(Claim::id).collect(Collectors.joining(", "));
                out.println(
                        each.slots().isEmpty()
                                ? "  No pin there is serves " + claims + "."
                                : "  " + claims + " compete for " + each.capacity()
                                        + (each.capacity() == 1 ? " place: " : " places: ")
                                        + each.slots().stream().map(Slot::id).collect(Collectors.joining(", ")));
            });
            impossible.currents().forEach(each -> out.println("  " + each));
            out.println("What would make one possible:");
            impossible.helps().forEach(each -> out.println("  " + each));
        } else {
            out.println("No plan was found in the part of them looked at; lock some channels to their pins.");
        }
    }
}
