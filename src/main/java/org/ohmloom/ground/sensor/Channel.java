package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import org.ohmloom.words.Text;

/** A sensor with the input that reads it: what the unit takes a value for. */
interface Channel {

    /** True values to look at: both ends and the middle where the error is straight between, more where it is not. */
    List<Double> values();

    /** What the unit reads at a true value, in the unit of {@link #unit()}. */
    double reading(double value, Conditions conditions);

    /** The circuit of the signal at a true value. */
    InputCircuit circuit(double value, Conditions conditions);

    /** Unit of the readings. */
    String unit();

    /** The formula of an error with its numbers. */
    Text formula(Disturbance disturbance, double value, Conditions before, Conditions after);

    /** Most error at a value by the channel's own nature; empty where the measurement says it. */
    default Optional<Limit> limit(double value, Conditions ideal) {
        return Optional.empty();
    }

    /** Why the reading is of no use, if it is. */
    default Optional<Text> unusable(double value, Conditions actual) {
        return Optional.empty();
    }

    /** Change of the reading for one volt at the pin at a value, by the input alone; without sign. */
    double perVoltAtPin(double value, Conditions at);

    /**
     * A limit.
     *
     * @param error most error
     * @param from  where it comes from
     */
    record Limit(double error, Text from) {}
}
