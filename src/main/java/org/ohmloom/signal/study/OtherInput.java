package org.ohmloom.signal.study;

import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.plan.PlanMending;
import org.ohmloom.signal.unit.SensorNeeds;

/** Another input of the same unit for a sensor that is planned and not wired yet. */
final class OtherInput {

    private OtherInput() {}

    /** Moves a sensor to the first free input by which it is read as wanted; empty without one. */
    static Optional<Edit> of(Harness harness, SensorChannel now, Predicate<SensorChannel> wanted) {
        return planned(now).flatMap(channel -> new PlanMending(harness)
                .moving(
                        now.unit().id(),
                        now.device(),
                        channel,
                        pin -> wanted.test(now.readAt(pin.setUpAs(SensorNeeds.signalRole(now.sensor()))))));
    }

    /** Why there is none, as a sentence. */
    static String why(SensorChannel now) {
        if (now.wired()) {
            return "It is wired to " + now.at() + " already; an input that suits it takes another wire.";
        }
        if (planned(now).filter(Channel::locked).isPresent()) {
            return "It is locked to " + now.at() + "; unlock it to let it go to another input.";
        }
        return "No free input of " + now.unit().id() + " suits it better.";
    }

    private static Optional<Channel> planned(SensorChannel now) {
        return now.device()
                .channelsAt(now.pin().name())
                .filter(channel -> channel.component().equals(now.component().id()))
                .findFirst();
    }
}
