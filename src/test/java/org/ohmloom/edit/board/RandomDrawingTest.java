package org.ohmloom.edit.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.Campaign;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.MoveOnBoard;
import org.ohmloom.edit.Session;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;
import org.ohmloom.words.Text;

/** Many things drawn, moved, copied and taken out at random, a thousand in the full campaign; undone and redone they leave the same bytes. */
class RandomDrawingTest {

    private static final int EDITS = Campaign.count(250, 1000);
    private static final int LARGEST = 220;

    private enum Kind {
        COMPONENT,
        CONNECTOR,
        BREAKOUT,
        GROUND,
        SEGMENT,
        WIRE,
        SPLICE,
        PASTE,
        MOVE,
        ALIGN,
        MIRROR,
        TURN,
        ZONE,
        HANG,
        TAKE_OUT
    }

    private final Map<Kind, Integer> counts = new EnumMap<>(Kind.class);

    @Test
    void undoneAndRedoneTheFileHasTheSameBytes() throws HarnessFileException {
        Random random = new Random(20261130);
        Harness start = DraftingTest.example("star-ground");
        Session session = new Session(start, Optional.empty());
        List<Harness> states = new ArrayList<>(List.of(start));
        while (states.size() <= EDITS) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            if (session.current().elements().count() > LARGEST) {
                kind = Kind.TAKE_OUT;
            }
            Harness before = session.current();
            Optional<Edit> edit = edit(kind, before, random);
            if (edit.isPresent()) {
                session.apply(edit.get());
                if (session.current() != before) {
                    states.add(session.current());
                    counts.merge(kind, 1, Integer::sum);
                }
            }
        }
        for (Kind kind : Kind.values()) {
            assertTrue(counts.getOrDefault(kind, 0) > 0, kind + " came up " + counts.get(kind) + " times");
        }
        String end = HarnessText.write(session.current());
        for (int k = EDITS - 1; k >= 0; k--) {
            session.undo();
            assertSame(states.get(k), session.current());
        }
        assertTrue(session.undoLabel().isEmpty());
        assertEquals(HarnessText.write(start), HarnessText.write(session.current()));
        for (int k = 0; k < EDITS; k++) {
            session.redo();
        }
        assertEquals(end, HarnessText.write(session.current()));
        assertEquals(session.current(), HarnessText.read(end, Path.of("redone.harness.json")));
    }

    private static Optional<Edit> edit(Kind kind, Harness now, Random random) {
        Drafting draft = new Drafting(now);
        List<String> some = some(now, random);
        return switch (kind) {
            case COMPONENT -> Optional.of(
                    draft.component(any(List.of(StartDevice.values()), random).orElseThrow(), where(now, random))
                            .edit());
            case CONNECTOR -> Optional.of(
                    draft.connector(1 + random.nextInt(6), where(now, random)).edit());
            case BREAKOUT -> Optional.of(draft.breakout(spot(random)).edit());
            case GROUND -> Optional.of(draft.ground(where(now, random)).edit());
            case SEGMENT -> segment(now, draft, random);
            case WIRE -> Optional.of(
                    draft.wire(end(now, random), end(now, random)).edit());
            case SPLICE -> any(now.wires().all(), random)
                    .map(wire -> InsertSplice.on(now, wire.id(), Optional.empty(), random.nextDouble())
                            .edit());
            case PASTE -> Clip.of(now, some, now.layout())
                    .map(clip -> PasteClip.of(now, clip, 5, 5).edit());
            case MOVE -> Optional.of(move(arrangement(now, some).moved(random.nextInt(9), random.nextInt(9))));
            case ALIGN -> Optional.of(move(arrangement(now, some)
                    .aligned(any(List.of(Arrangement.Side.values()), random).orElseThrow())));
            case MIRROR -> Optional.of(move(arrangement(now, some).mirrored(random.nextBoolean())));
            case TURN -> Optional.of(move(arrangement(now, some).turned(random.nextBoolean())));
            case ZONE -> Optional.of(
                    new PaintZone(some, random.nextBoolean() ? any(now.zones().ids(), random) : Optional.empty()));
            case HANG -> any(now.breakouts().ids(), random).map(at -> new HangAt(Set.copyOf(some), at));
            case TAKE_OUT -> Optional.of(new TakeOut(now.elements()
                    .filter(each -> some.contains(each.id().value()))
                    .map(Element::id)
                    .toList()));
        };
    }

    private static Edit move(SortedMap<String, Position> positions) {
        return new MoveOnBoard(Text.of("Move"), positions);
    }

    private static Optional<Edit> segment(Harness now, Drafting draft, Random random) {
        Where from = where(now, random);
        Where to = where(now, random);
        return from.equals(to)
                ? Optional.empty()
                : Optional.of(draft.segment(from, to, 0.1 + random.nextDouble()).edit());
    }

    private static Where where(Harness now, Random random) {
        Optional<BreakoutId> at = any(now.breakouts().ids(), random);
        return at.isPresent() && random.nextBoolean() ? new Where.At(at.get()) : new Where.InTheOpen(spot(random));
    }

    private static Position spot(Random random) {
        return new Position(random.nextInt(300), random.nextInt(200));
    }

    private static WireEnd end(Harness now, Random random) {
        Optional<Connector> connector = any(now.connectors().all(), random);
        if (connector.isPresent() && random.nextBoolean()) {
            String cavity =
                    any(connector.get().cavities(), random).orElseThrow().name();
            return new WireEnd.AtCavity(connector.get().id(), cavity);
        }
        return any(now.grounds().ids(), random)
                .<WireEnd>map(WireEnd.AtGround::new)
                .orElse(new WireEnd.Loose());
    }

    private static Arrangement arrangement(Harness now, List<String> some) {
        return new Arrangement(some.stream()
                .map(id -> new Footprint(
                        Set.of(id), now.layout().getOrDefault(id, new Position(id.hashCode() % 50, 7)), 20, 8))
                .toList());
    }

    private static List<String> some(Harness now, Random random) {
        List<String> ids = new ArrayList<>(now.elements()
                .filter(each -> Clip.isDrawn(each) && !(each instanceof Wire && random.nextBoolean()))
                .map(each -> each.id().value())
                .toList());
        Collections.shuffle(ids, random);
        return ids.subList(0, Math.min(ids.size(), 1 + random.nextInt(4)));
    }

    private static <T> Optional<T> any(Collection<T> all, Random random) {
        return all.stream().skip(all.isEmpty() ? 0 : random.nextInt(all.size())).findFirst();
    }
}
