package org.ohmloom.draw.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Overlaps;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Words;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** What holds for the pages of any wiring diagram. */
public final class WiringPages {

    private static final double TOUCH_MM = 0.2;

    private WiringPages() {}

    /** Everything there, nothing upon anything, all within the frame. */
    public static void assertSound(Harness harness, WiringDiagram diagram, Paper paper, String place) {
        assertEquals(List.of(), wrong(harness, diagram, paper, place));
    }

    /** What is missing or too much, what lies upon something, and what leaves the frame. */
    static List<String> wrong(Harness harness, WiringDiagram diagram, Paper paper, String place) {
        List<String> wrong = new ArrayList<>();
        Map<String, List<String>> wanted = wanted(harness);
        Map<String, List<String>> written = written(harness, diagram);
        wanted.forEach((wire, texts) -> {
            if (!texts.equals(written.getOrDefault(wire, List.of()))) {
                wrong.add("wanted " + texts + ", was " + written.getOrDefault(wire, List.of()));
            }
        });
        written.keySet().stream()
                .filter(wire -> !wanted.containsKey(wire))
                .forEach(wire -> wrong.add("no wire of the harness is " + wire));
        for (Scene sheet : diagram.sheets()) {
            wrong.addAll(Overlaps.texts(sheet));
            wrong.addAll(outside(sheet, paper));
            wrong.addAll(throughSymbols(sheet));
            wrong.addAll(uponEachOther(sheet));
            wrong.addAll(throughWriting(sheet));
        }
        return wrong.stream().map(each -> place + ": " + each).toList();
    }

    /** The words on a sheet. */
    static List<String> words(Scene sheet) {
        return sheet.items().stream()
                .filter(item -> item.mark() instanceof Text)
                .map(item -> ((Text) item.mark()).text())
                .toList();
    }

    /** Number and size of each wire as the model has them, each once. */
    private static Map<String, List<String>> wanted(Harness harness) {
        Map<String, List<String>> wanted = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            String cable = wire.cable().map(id -> " " + id).orElse("");
            String size = wire.gauge().map(Words::size).orElse("no size") + cable;
            wanted.put(wire.id().value(), List.of(wire.id().value(), size));
        }
        return wanted;
    }

    private static Map<String, List<String>> written(Harness harness, WiringDiagram diagram) {
        Map<String, List<String>> written = new TreeMap<>();
        for (Scene sheet : diagram.sheets()) {
            for (Item item : sheet.items()) {
                if (item.layer() == Layer.NUMBERS
                        && item.mark() instanceof Text text
                        && item.element().isPresent()) {
                    String id = item.element().get();
                    boolean about = text.text().equals(id)
                            || text.text()
                                    .equals(harness.wires()
                                                    .find(new WireId(id))
                                                    .flatMap(Wire::gauge)
                                                    .map(Words::size)
                                                    .orElse("no size")
                                            + harness.wires()
                                                    .find(new WireId(id))
                                                    .flatMap(Wire::cable)
                                                    .map(cable -> " " + cable)
                                                    .orElse(""));
                    if (about) {
                        written.computeIfAbsent(id, each -> new ArrayList<>()).add(text.text());
                    }
                }
            }
        }
        return written;
    }

    /** Everything but the frame's own strip lies inside the drawing space. */
    private static List<String> outside(Scene sheet, Paper paper) {
        Extent frame = paper.drawingSpace();
        return sheet.items().stream()
                .filter(item -> item.layer() != Layer.SHEET)
                .filter(item -> !frame.contains(item.mark().bounds()))
                .map(item -> item.mark().dump())
                .toList();
    }

    /** Wires that run through the box of a symbol. */
    private static List<String> throughSymbols(Scene sheet) {
        List<Extent> boxes = sheet.items().stream()
                .filter(item -> item.layer() == Layer.CONNECTORS && item.mark() instanceof Box)
                .map(item -> ((Box) item.mark()).extent())
                .filter(extent -> extent.widthMm() > 7)
                .toList();
        List<String> found = new ArrayList<>();
        for (Stretch stretch : stretches(sheet)) {
            for (Extent box : boxes) {
                if (stretch.extent().overlaps(box.grown(-TOUCH_MM))) {
                    found.add(stretch.wire() + " through " + box);
                }
            }
        }
        return found;
    }

    /** Wires that run through something written. */
    private static List<String> throughWriting(Scene sheet) {
        List<Text> texts = sheet.items().stream()
                .filter(item -> item.layer() != Layer.SHEET && item.mark() instanceof Text)
                .map(item -> (Text) item.mark())
                .toList();
        List<String> found = new ArrayList<>();
        List<Extent> letters =
                texts.stream().map(text -> text.bounds().grown(-TOUCH_MM)).toList();
        for (Stretch stretch : stretches(sheet)) {
            for (int k = 0; k < texts.size(); k++) {
                Text text = texts.get(k);
                if (stretch.extent().overlaps(letters.get(k))) {
                    found.add(stretch.wire() + " through " + text.dump());
                }
            }
        }
        return found;
    }

    private record Stretch(String wire, Extent extent) {
        boolean isLevel() {
            return extent.heightMm() < extent.widthMm();
        }
    }

    private static List<Stretch> stretches(Scene sheet) {
        List<Stretch> stretches = new ArrayList<>();
        int number = 0;
        for (Item item : sheet.items()) {
            number++;
            if (item.layer() == Layer.WIRES && item.mark() instanceof Line line) {
                List<Point> points = line.points();
                for (int k = 1; k < points.size(); k++) {
                    Extent extent = Extent.around(List.of(points.get(k - 1), points.get(k)))
                            .grown(0.01);
                    stretches.add(new Stretch(item.element().orElse("way") + " " + number, extent));
                }
            }
        }
        return stretches;
    }

    /** Two wires that share a part of their way: crossing is allowed, lying on one another is not. */
    private static List<String> uponEachOther(Scene sheet) {
        List<Stretch> all = stretches(sheet).stream()
                .sorted(Comparator.comparingDouble(stretch -> stretch.extent().leftMm()))
                .toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Stretch one = all.get(i);
            double right = one.extent().rightMm();
            for (int j = i + 1; j < all.size() && all.get(j).extent().leftMm() < right; j++) {
                Stretch two = all.get(j);
                if (!one.wire().equals(two.wire())
                        && one.isLevel() == two.isLevel()
                        && one.extent().overlaps(two.extent())) {
                    found.add(one.wire() + " on " + two.wire() + " at " + one.extent());
                }
            }
        }
        return found;
    }
}
