package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.traffic.BusSignal;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The messages of a data bus a person enters: by hand, or as the packing proposes them. */
final class BusMessages {

    private final Words words;
    private final Supplier<List<PackedMessage>> proposed;
    private final IntSupplier bitsOfValue;
    private final IntSupplier usualBits;
    private final TypedRows rows;

    /**
     * Messages.
     *
     * @param proposed    messages the packing makes of the channels left
     * @param bitsOfValue bits of a channel's value
     * @param usualBits   bits of the bus's identifiers
     */
    BusMessages(
            Words words,
            List<DataBus.Sent> before,
            Supplier<List<PackedMessage>> proposed,
            IntSupplier bitsOfValue,
            IntSupplier usualBits) {
        this.words = words;
        this.proposed = proposed;
        this.bitsOfValue = bitsOfValue;
        this.usualBits = usualBits;
        this.rows = new TypedRows(
                words,
                "bus-messages",
                words.get("bus.messages"),
                List.of(
                        words.get("bus.message"),
                        words.get("bus.sender"),
                        words.get("bus.identifier"),
                        words.get("bus.messages.bits"),
                        words.get("bus.period"),
                        words.get("bus.values"),
                        words.get("bus.bytes"),
                        words.get("bus.deadline"),
                        words.get("bus.messages.jitter")));
        rows.widths(140, 70, 110, 60, 80, 260, 60, 80, 80);
        rows.choices(3, List.of(String.valueOf(DataBus.SHORT_BITS), String.valueOf(DataBus.LONG_BITS)));
        rows.button("bus.messages.propose", this::propose);
        rows.button("bus.messages.add", this::add);
        rows.rowButtons(false);
        rows.fill(before.stream().map(BusMessages::row).toList());
    }

    TypedRows table() {
        return rows;
    }

    /** Offers the units that are nodes by now. */
    void senders(List<DataBus.Node> nodes) {
        rows.choices(1, nodes.stream().map(node -> node.unit().value()).toList());
    }

    private static List<String> row(DataBus.Sent sent) {
        return List.of(
                sent.name(),
                sent.sender().value(),
                BusText.identifier(sent.identifier(), sent.identifierBits()),
                String.valueOf(sent.identifierBits()),
                milliseconds(OptionalDouble.of(sent.periodSeconds())),
                String.join(", ", sent.signals()),
                String.valueOf(sent.dataBytes()),
                milliseconds(sent.deadlineSeconds()),
                milliseconds(sent.jitterSeconds()));
    }

    private static String milliseconds(OptionalDouble seconds) {
        return seconds.isPresent()
                ? TypedNumbers.exact(Math.round(Unit.MILLISECOND.fromCanonical(seconds.getAsDouble()) * 1e6) / 1e6)
                        + " ms"
                : "";
    }

    /** Takes over what the packing makes of the channels that no message carries yet. */
    private void propose() {
        List<List<String>> all = new ArrayList<>(rows.rows());
        for (PackedMessage each : proposed.get()) {
            if (!each.signals().isEmpty()) {
                all.add(List.of(
                        fresh(all),
                        each.sender().value(),
                        each.identifierText(),
                        String.valueOf(each.message().format().identifierBits()),
                        milliseconds(OptionalDouble.of(each.message().periodSeconds())),
                        String.join(
                                ", ",
                                each.signals().stream().map(BusSignal::name).toList()),
                        String.valueOf(each.message().dataBytes()),
                        "",
                        ""));
            }
        }
        rows.fill(all);
    }

    private void add() {
        List<List<String>> now = rows.rows();
        int next = now.stream()
                        .map(row -> row.get(2))
                        .mapToInt(text -> text.isEmpty() ? -1 : BusText.whole(words, text, words.get("bus.identifier")))
                        .max()
                        .orElse(-1)
                + 1;
        String sender = now.isEmpty() ? "" : now.get(now.size() - 1).get(1);
        rows.addRow(
                fresh(now),
                sender,
                BusText.identifier(next, usualBits.getAsInt()),
                String.valueOf(usualBits.getAsInt()),
                "100 ms",
                "",
                "8",
                "",
                "");
    }

    private static String fresh(List<List<String>> rows) {
        int number = 1;
        while (isNamed(rows, "M" + number)) {
            number++;
        }
        return "M" + number;
    }

    private static boolean isNamed(List<List<String>> rows, String name) {
        return rows.stream().anyMatch(row -> row.get(0).equals(name));
    }

    /**
     * The messages typed; bytes left empty are as many as the values need.
     *
     * @throws IllegalArgumentException when one does not fit; one sentence says what would be right
     */
    List<DataBus.Sent> read(List<DataBus.Node> nodes) {
        List<DataBus.Sent> messages = new ArrayList<>();
        for (List<String> row : rows.rows()) {
            if (row.stream().allMatch(String::isEmpty)) {
                continue;
            }
            ComponentId sender = nodes.stream()
                    .map(DataBus.Node::unit)
                    .filter(each -> each.value().equals(row.get(1)))
                    .findFirst()
                    .orElseThrow(() ->
                            new IllegalArgumentException(words.get("bus.messages.no-sender", row.get(0), row.get(1))));
            List<String> values = Arrays.stream(row.get(5).split(","))
                    .map(String::strip)
                    .filter(each -> !each.isEmpty())
                    .toList();
            int bytes = row.get(6).isEmpty()
                    ? (bitsOfValue.getAsInt() * values.size() + Byte.SIZE - 1) / Byte.SIZE
                    : BusText.whole(words, row.get(6), words.get("bus.bytes"));
            messages.add(new DataBus.Sent(
                    row.get(0),
                    sender,
                    BusText.whole(words, row.get(2), words.get("bus.identifier")),
                    row.get(3).isEmpty()
                            ? usualBits.getAsInt()
                            : BusText.whole(words, row.get(3), words.get("bus.messages.bits")),
                    bytes,
                    TypedNumbers.needed(row.get(4), Unit.MILLISECOND, words.get("bus.period")),
                    TypedNumbers.optional(row.get(8), Unit.MILLISECOND),
                    TypedNumbers.optional(row.get(7), Unit.MILLISECOND),
                    values));
        }
        return messages;
    }
}
