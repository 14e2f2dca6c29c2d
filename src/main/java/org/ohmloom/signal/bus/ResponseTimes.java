package org.ohmloom.signal.bus;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.LongUnaryOperator;

/**
 * Worst-case response times of the messages of one bus, by the revised analysis of Davis, Burns, Bril and Lukkien, "Controller
 * Area Network (CAN) schedulability analysis: refuted, revisited and revised", Real-Time Systems 35, 2007, section 4 (from memory).
 *
 * <p>A frame that has begun is never broken off, so a message first waits for the longest frame of lower priority, B. While
 * frames of its priority or a higher one keep the bus busy for t = B + sum ceil((t + J) / T) C, Q = ceil((t + J) / T) of its own
 * fall due; the q-th waits for w = B + q C + sum over higher priorities of ceil((w + J + bit time) / T) C and has arrived
 * J + w - q T + C after the begin of its period; the largest of these is the response time. The time is counted in whole
 * picoseconds, frames rounded up, so no rounding can make a response too short.
 *
 * @param bitsPerSecond bit rate
 * @param messages      timing of each message, first priority first
 */
public record ResponseTimes(double bitsPerSecond, List<MessageTiming> messages) {

    private static final double PICOSECONDS = 1e12;

    /** Busy periods longer than so many instances of one message are taken as endless: the bus is then full for all purposes. */
    private static final long MOST_INSTANCES = 100_000;

    public ResponseTimes {
        messages = List.copyOf(messages);
    }

    /** One message with its times in picoseconds. */
    private record Row(Message message, long frame, long period, long jitter) {}

    /**
     * Works them out.
     *
     * @param messages      the messages of one bus, in any order; no two may have one identifier
     * @param bitsPerSecond bit rate, more than 0
     * @throws IllegalArgumentException when two messages have the same identifier and format
     */
    public static ResponseTimes of(List<Message> messages, double bitsPerSecond) {
        positive(bitsPerSecond, "bit rate");
        List<Row> rows = messages.stream()
                .sorted(Comparator.comparingLong(Message::arbitration))
                .map(message -> new Row(
                        message,
                        upwards(message.longestSeconds(bitsPerSecond)),
                        Math.max(1, (long) Math.floor(message.periodSeconds() * PICOSECONDS)),
                        upwards(message.jitterSeconds())))
                .toList();
        for (int k = 1; k < rows.size(); k++) {
            that(
                    rows.get(k - 1).message().arbitration()
                            != rows.get(k).message().arbitration(),
                    "messages %s and %s have the same identifier",
                    rows.get(k - 1).message().id(),
                    rows.get(k).message().id());
        }
        List<MessageTiming> timings = new ArrayList<>();
        for (int rank = 0; rank < rows.size(); rank++) {
            timings.add(timing(rows, rank, upwards(1 / bitsPerSecond)));
        }
        return new ResponseTimes(bitsPerSecond, timings);
    }

    /** Share of its time the bus is busy when every frame is as long as it can be: sum of C / T. */
    public double utilisation() {
        return messages.stream()
                .mapToDouble(each -> each.frameSeconds() / each.message().periodSeconds())
                .sum();
    }

    private static MessageTiming timing(List<Row> rows, int rank, long bit) {
        Row row = rows.get(rank);
        List<Row> higher = rows.subList(0, rank);
        long blocking = rows.subList(rank + 1, rows.size()).stream()
                .mapToLong(Row::frame)
                .max()
                .orElse(0);
        return new MessageTiming(
                row.message(), seconds(row.frame()), seconds(blocking), response(row, higher, blocking, bit));
    }

    private static OptionalDouble response(Row row, List<Row> higher, long blocking, long bit) {
        double load =
                load(row) + higher.stream().mapToDouble(ResponseTimes::load).sum();
        if (load >= 1) {
            return OptionalDouble.empty();
        }
        List<Row> sharing = new ArrayList<>(higher);
        sharing.add(row);
        long most = MOST_INSTANCES * row.period();
        long busy = settle(row.frame(), most, time -> blocking + demand(sharing, time));
        if (busy >= most) {
            return OptionalDouble.empty();
        }
        long instances = instances(busy + row.jitter(), row.period());
        long worst = 0;
        long waiting = 0;
        for (long q = 0; q < instances; q++) {
            long own = blocking + q * row.frame();
            waiting = settle(Math.max(waiting, own), Long.MAX_VALUE, time -> own + demand(higher, time + bit));
            worst = Math.max(worst, row.jitter() + waiting - q * row.period() + row.frame());
        }
        return OptionalDouble.of(seconds(worst));
    }

    private static long settle(long start, long most, LongUnaryOperator step) {
        long time = start;
        long next = step.applyAsLong(time);
        while (next > time && next < most) {
            time = next;
            next = step.applyAsLong(time);
        }
        return next;
    }

    private static long demand(List<Row> rows, long time) {
        long sum = 0;
        for (Row row : rows) {
            sum += instances(time + row.jitter(), row.period()) * row.frame();
        }
        return sum;
    }

    private static long instances(long time, long period) {
        return Math.floorDiv(time + period - 1, period);
    }

    private static double load(Row row) {
        return (double) row.frame() / row.period();
    }

    /** Whole picoseconds, rounded up but for what is within rounding of a whole one. */
    private static long upwards(double seconds) {
        return (long) Math.ceil(seconds * PICOSECONDS * (1 - 1e-15));
    }

    private static double seconds(long picoseconds) {
        return picoseconds / PICOSECONDS;
    }
}
