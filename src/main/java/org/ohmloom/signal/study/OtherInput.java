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

    /** Why there is none. */
    static CalibrationMending.Why why(SensorChannel now) {
        if (now.wired()) {
            return CalibrationMending.Why.WIRED;
        }
        return planned(now).filter(Channel::locked).isPresent()
                ? CalibrationMending.Why.LOCKED
                : CalibrationMending.Why.NO_INPUT;
    }

    private static Optional<Channel> planned(SensorChannel now) {
        return now.device()
                .channelsAt(now.pin().name())
                .filter(channel -> channel.component().equals(now.component().id()))
                .findFirst();
    }
}
