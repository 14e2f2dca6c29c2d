package org.ohmloom.signal.bus.traffic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.FrameFormat;
import org.ohmloom.signal.bus.Message;

/**
 * Puts values into messages (our own rule).
 *
 * <p>Values that an entered message names are in that one. The others of one unit and one rate share messages in the order they come, as many to one as bits and the packing allow. Messages get
 * their identifiers by rate, the fastest first and so with the highest priority; then by the order of the nodes. Of 11 bits they count up
 * from the first one, passing over those that are taken. Of 29 bits they are laid out as SAE J1939-21 has it (from memory): priority,
 * parameter group of the range a maker is free in (65280 and up), source address; the priority is 3 from 50 Hz, 5 from 10 Hz, else 6
 * (common practice, no source).
 */
public final class FramePacking {

    /** First identifier of 11 bits where none is entered: common practice, no source. */
    public static final int USUAL_FIRST_IDENTIFIER = 0x300;

    /** First address of a node without one: SAE J1939, addresses 128 to 247 are free for own use (from memory). */
    public static final int FIRST_ADDRESS = 128;

    private static final int FIRST_GROUP = 0xFF00;
    private static final int GROUPS = 256;
    private static final int FRAME_BITS = 8 * FrameFormat.MOST_BYTES;

    private final DataBus bus;
    private final DataBus.Packing packing;

    private FramePacking(DataBus bus) {
        this.bus = bus;
        this.packing = bus.packing().orElse(DataBus.Packing.USUAL);
    }

    /** A message before it has its identifier. */
    private record Draft(ComponentId sender, double periodSeconds, List<BusSignal> signals) {}

    /** What units and rates share. */
    private record Group(ComponentId sender, double rateHertz) {}

    /** The messages of a bus: those made of the values no entered one carries, the fastest first, and those entered. */
    public static List<PackedMessage> of(DataBus bus, List<BusSignal> signals) {
        return new FramePacking(bus).pack(signals);
    }

    private List<PackedMessage> pack(List<BusSignal> signals) {
        List<PackedMessage> entered =
                bus.messages().stream().map(sent -> entered(sent, signals)).toList();
        List<BusSignal> left = signals.stream()
                .filter(signal ->
                        entered.stream().noneMatch(each -> each.signals().contains(signal)))
                .toList();
        List<PackedMessage> all = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        FrameFormat format = FrameFormat.ofIdentifierBits(bus.identifierBits());
        entered.stream()
                .filter(each -> each.message().format() == format)
                .forEach(each -> taken.add(each.message().identifier()));
        int next = format == FrameFormat.BASE ? packing.firstIdentifier().orElse(USUAL_FIRST_IDENTIFIER) : 0;
        int number = 0;
        for (Draft draft : drafts(left)) {
            int identifier = identifier(format, next, draft);
            while (identifier >= 0 && taken.contains(identifier)) {
                identifier = identifier(format, ++next, draft);
            }
            if (identifier < 0) {
                break;
            }
            next++;
            taken.add(identifier);
            number++;
            while (isEntered("M" + number)) {
                number++;
            }
            all.add(made(draft, format, identifier, number));
        }
        all.addAll(entered);
        return all;
    }

    private boolean isEntered(String name) {
        return bus.messages().stream().anyMatch(each -> each.name().equals(name));
    }

    private List<Draft> drafts(List<BusSignal> signals) {
        Map<Group, List<BusSignal>> groups = new LinkedHashMap<>();
        signals.forEach(
                each -> groups.computeIfAbsent(new Group(each.sender(), each.rateHertz()), key -> new ArrayList<>())
                        .add(each));
        int most = packing.signalsPerFrame().orElse(FRAME_BITS);
        List<Draft> drafts = new ArrayList<>();
        groups.forEach((group, members) -> {
            List<BusSignal> frame = new ArrayList<>();
            int bits = 0;
            for (BusSignal each : members) {
                if (!frame.isEmpty() && (bits + each.bits() > FRAME_BITS || frame.size() >= most)) {
                    drafts.add(new Draft(group.sender(), 1 / group.rateHertz(), List.copyOf(frame)));
                    frame.clear();
                    bits = 0;
                }
                frame.add(each);
                bits += each.bits();
            }
            drafts.add(new Draft(group.sender(), 1 / group.rateHertz(), List.copyOf(frame)));
        });
        List<ComponentId> order = order();
        drafts.sort(Comparator.comparingDouble(Draft::periodSeconds)
                .thenComparingInt(each -> order.indexOf(each.sender())));
        return drafts;
    }

    private List<ComponentId> order() {
        return bus.nodes().stream().map(DataBus.Node::unit).toList();
    }

    /** The identifier of the message in that place; negative when there is no further one. */
    private int identifier(FrameFormat format, int place, Draft draft) {
        if (format == FrameFormat.BASE) {
            return place < 1 << format.identifierBits() ? place : -1;
        }
        double rate = 1 / draft.periodSeconds();
        int priority = rate >= 50 * (1 - 1e-9) ? 3 : rate >= 10 * (1 - 1e-9) ? 5 : 6;
        return place < GROUPS ? priority << 26 | (FIRST_GROUP + place) << 8 | address(draft.sender()) : -1;
    }

    /** Source address of a unit: its own, else the next free one in the order of the nodes. */
    private int address(ComponentId sender) {
        Set<Integer> given = new HashSet<>();
        bus.nodes().forEach(node -> node.address().ifPresent(given::add));
        int next = FIRST_ADDRESS;
        for (DataBus.Node node : bus.nodes()) {
            while (given.contains(next)) {
                next++;
            }
            int own = node.address().isPresent() ? node.address().get() : next++;
            if (node.unit().equals(sender)) {
                return Math.min(own, DataBus.Node.HIGHEST_ADDRESS);
            }
        }
        return DataBus.Node.HIGHEST_ADDRESS;
    }

    private PackedMessage made(Draft draft, FrameFormat format, int identifier, int number) {
        int bits = draft.signals().stream().mapToInt(BusSignal::bits).sum();
        return new PackedMessage(
                new Message(
                        "M" + number,
                        format,
                        identifier,
                        (bits + 7) / 8,
                        draft.periodSeconds(),
                        packing.jitterSeconds().orElse(0),
                        draft.periodSeconds()),
                draft.sender(),
                draft.signals());
    }

    private static PackedMessage entered(DataBus.Sent sent, List<BusSignal> signals) {
        return new PackedMessage(
                new Message(
                        sent.name(),
                        FrameFormat.ofIdentifierBits(sent.identifierBits()),
                        sent.identifier(),
                        sent.dataBytes(),
                        sent.periodSeconds(),
                        sent.jitterSeconds().orElse(0),
                        sent.deadlineSeconds().orElse(sent.periodSeconds())),
                sent.sender(),
                sent.signals().stream()
                        .flatMap(name -> signals.stream()
                                .filter(each -> each.sender().equals(sent.sender())
                                        && each.name().equals(name))
                                .limit(1))
                        .toList());
    }
}
