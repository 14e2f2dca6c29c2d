package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * A data bus of two lines (classical CAN, ISO 11898-1 and ISO 11898-2): who is on it, where it is terminated and what is sent on it.
 * Its wires are those that join the pins of its nodes.
 *
 * @param id             identity
 * @param name           what people call it
 * @param bitsPerSecond  bit rate, bit/s, more than 0
 * @param identifierBits bits of the identifiers of messages made from channels, 11 or 29
 * @param limits         set of limits in the tables that its wiring is held against; empty means the first one
 * @param nodes          who is on it
 * @param terminations   resistors across its lines
 * @param packing        how channels are put into messages; empty means the usual way
 * @param messages       messages as a person or a data sheet gives them; the packing makes messages of what channels are left
 */
public record DataBus(
        BusId id,
        String name,
        double bitsPerSecond,
        int identifierBits,
        Optional<String> limits,
        List<Node> nodes,
        List<Termination> terminations,
        Optional<Packing> packing,
        List<Sent> messages)
        implements Element {

    /** Bits of the two lengths of identifier. */
    public static final int SHORT_BITS = 11, LONG_BITS = 29;

    public DataBus {
        notBlank(name, "name of data bus %s", id);
        positive(bitsPerSecond, "bit rate of data bus %s", id);
        length(identifierBits, Refusals.text("identifiers of data bus %s", id));
        limits.ifPresent(value -> notBlank(value, "limits of data bus %s", id));
        nodes = List.copyOf(nodes);
        terminations = List.copyOf(terminations);
        messages = List.copyOf(messages);
        that(nodes.stream().distinct().count() == nodes.size(), "data bus %s names a node twice", id);
        List<String> names = messages.stream().map(Sent::name).toList();
        that(names.stream().distinct().count() == names.size(), "messages of data bus %s repeat: %s", id, names);
        int bits = packing.orElse(Packing.USUAL).valueBits();
        messages.forEach(each -> that(
                bits * each.signals().size() <= Byte.SIZE * each.dataBytes(),
                "message %s of data bus %s has %s bytes, too few for %s values of %s bits",
                each.name(),
                id,
                each.dataBytes(),
                each.signals().size(),
                bits));
    }

    /** A bus of which only its nodes are known. */
    public static DataBus of(BusId id, String name, double bitsPerSecond, int identifierBits, List<Node> nodes) {
        return new DataBus(
                id,
                name,
                bitsPerSecond,
                identifierBits,
                Optional.empty(),
                nodes,
                List.of(),
                Optional.empty(),
                List.of());
    }

    /** This bus at another bit rate, bit/s, more than 0. */
    public DataBus atRate(double changed) {
        return new DataBus(id, name, changed, identifierBits, limits, nodes, terminations, packing, messages);
    }

    /** This bus with other nodes. */
    public DataBus joining(List<Node> changed) {
        return new DataBus(id, name, bitsPerSecond, identifierBits, limits, changed, terminations, packing, messages);
    }

    /** This bus with other terminations. */
    public DataBus terminated(List<Termination> changed) {
        return new DataBus(id, name, bitsPerSecond, identifierBits, limits, nodes, changed, packing, messages);
    }

    /** This bus with other messages. */
    public DataBus sending(List<Sent> changed) {
        return new DataBus(id, name, bitsPerSecond, identifierBits, limits, nodes, terminations, packing, changed);
    }

    /** This bus with a message of its own under another identifier of the same length. */
    public DataBus sendingUnder(String message, int identifier) {
        List<Sent> changed = messages.stream()
                .map(each -> each.name().equals(message) ? each.withIdentifier(identifier) : each)
                .toList();
        return sending(changed);
    }

    private static void length(int bits, Text name) {
        that(
                bits == SHORT_BITS || bits == LONG_BITS,
                "%s have %s or %s bits, not %s",
                name,
                SHORT_BITS,
                LONG_BITS,
                bits);
    }

    /**
     * A control unit on the bus.
     *
     * @param unit    the unit
     * @param high    its pin for the high line
     * @param low     its pin for the low line, another one
     * @param address source address of a unit that sends by SAE J1939, 0 to 253; empty means one is given in order
     */
    public record Node(ComponentId unit, String high, String low, Optional<Integer> address) {

        /** Highest source address (SAE J1939-21; 254 and 255 have meanings of their own), from memory. */
        public static final int HIGHEST_ADDRESS = 253;

        public Node {
            notBlank(high, "high pin of node %s", unit);
            notBlank(low, "low pin of node %s", unit);
            that(!high.equals(low), "node %s has the same pin '%s' for both lines", unit, high);
            address.ifPresent(value -> within(value, 0, HIGHEST_ADDRESS, "source address of node %s", unit));
        }

        /** A node without an address of its own. */
        public static Node of(ComponentId unit, String high, String low) {
            return new Node(unit, high, low, Optional.empty());
        }
    }

    /**
     * A resistor across the lines: in a plug, in a splice, or inside a unit between its pins.
     *
     * @param ohms resistance, ohm, more than 0
     * @param high where it joins the high line
     * @param low  where it joins the low line
     * @param part entry of the parts list; empty inside a unit
     */
    public record Termination(double ohms, WireEnd high, WireEnd low, Optional<PartId> part) {
        public Termination {
            positive(ohms, "resistance of a termination");
        }

        /** The component whose inner resistor it is, switched on between its pins; empty for a part, and between others' points. */
        public Optional<ComponentId> insideUnit() {
            return part.isEmpty()
                            && high instanceof WireEnd.AtTerminal one
                            && low instanceof WireEnd.AtTerminal other
                            && one.component().equals(other.component())
                    ? Optional.of(one.component())
                    : Optional.empty();
        }

        /** A resistor inside a node of a bus, across its pins. */
        public static Termination inside(double ohms, Node node) {
            return new Termination(
                    ohms,
                    new WireEnd.AtTerminal(node.unit(), node.high()),
                    new WireEnd.AtTerminal(node.unit(), node.low()),
                    Optional.empty());
        }

        /** Where it is, in words. */
        public String text() {
            return high.text() + " and " + low.text();
        }
    }

    /**
     * How channels are put into messages.
     *
     * @param signalBits      bits of a channel's value, 1 to 64; empty means 16
     * @param signalsPerFrame most channels of one message, 1 to 64; empty means as many as fit into 8 bytes
     * @param firstIdentifier identifier of the first message of 11 bits, 0 or more; empty means one usual for own messages
     * @param jitterSeconds   how late a unit may be with putting a message up, s, 0 or more; empty means 0
     */
    public record Packing(
            Optional<Integer> signalBits,
            Optional<Integer> signalsPerFrame,
            Optional<Integer> firstIdentifier,
            OptionalDouble jitterSeconds) {

        /** Bits of a channel's value where none are entered. */
        public static final int USUAL_BITS = 16;

        /** Nothing said. */
        public static final Packing USUAL =
                new Packing(Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());

        public Packing {
            signalBits.ifPresent(value -> within(value, 1, 64, "bits of a channel"));
            signalsPerFrame.ifPresent(value -> within(value, 1, 64, "channels of a message"));
            firstIdentifier.ifPresent(value -> within(value, 0, (1 << SHORT_BITS) - 1, "first identifier"));
            jitterSeconds.ifPresent(value -> notNegative(value, "jitter of messages"));
        }

        /** Bits of a channel's value, entered or usual. */
        public int valueBits() {
            return signalBits.orElse(USUAL_BITS);
        }
    }

    /**
     * A message that a unit sends by itself, again and again.
     *
     * @param name            what people call it
     * @param sender          unit that sends it
     * @param identifier      its identifier
     * @param identifierBits  bits of its identifier, 11 or 29
     * @param dataBytes       bytes of data, 0 to 8
     * @param periodSeconds   time from one sending to the next, s, more than 0
     * @param jitterSeconds   how late it may be ready to send, s, 0 or more; empty means 0
     * @param deadlineSeconds time in which it must have arrived, s, more than 0; empty means its period
     * @param signals         names of channels of its sender whose values it carries, the first in the first bits
     */
    public record Sent(
            String name,
            ComponentId sender,
            int identifier,
            int identifierBits,
            int dataBytes,
            double periodSeconds,
            OptionalDouble jitterSeconds,
            OptionalDouble deadlineSeconds,
            List<String> signals) {

        /** Most bytes of data in a classical frame. */
        public static final int MOST_BYTES = 8;

        /** A message that carries no channels. */
        public Sent(
                String name,
                ComponentId sender,
                int identifier,
                int identifierBits,
                int dataBytes,
                double periodSeconds,
                OptionalDouble jitterSeconds,
                OptionalDouble deadlineSeconds) {
            this(
                    name,
                    sender,
                    identifier,
                    identifierBits,
                    dataBytes,
                    periodSeconds,
                    jitterSeconds,
                    deadlineSeconds,
                    List.of());
        }

        /** This message with a channel under another name. */
        public Sent renaming(String channel, String changed) {
            return carrying(signals.stream()
                    .map(each -> each.equals(channel) ? changed : each)
                    .toList());
        }

        /** This message with other channels in it. */
        public Sent carrying(List<String> changed) {
            return new Sent(
                    name,
                    sender,
                    identifier,
                    identifierBits,
                    dataBytes,
                    periodSeconds,
                    jitterSeconds,
                    deadlineSeconds,
                    changed);
        }

        private Sent withIdentifier(int changed) {
            return new Sent(
                    name,
                    sender,
                    changed,
                    identifierBits,
                    dataBytes,
                    periodSeconds,
                    jitterSeconds,
                    deadlineSeconds,
                    signals);
        }

        public Sent {
            notBlank(name, "name of a message");
            length(identifierBits, Refusals.text("identifiers of message %s", name));
            within(identifier, 0, (1 << identifierBits) - 1, "identifier of message %s", name);
            within(dataBytes, 0, MOST_BYTES, "bytes of message %s", name);
            positive(periodSeconds, "period of message %s", name);
            jitterSeconds.ifPresent(value -> notNegative(value, "jitter of message %s", name));
            deadlineSeconds.ifPresent(value -> positive(value, "deadline of message %s", name));
            signals = List.copyOf(signals);
            that(signals.stream().distinct().count() == signals.size(), "message %s carries a channel twice", name);
        }
    }
}
