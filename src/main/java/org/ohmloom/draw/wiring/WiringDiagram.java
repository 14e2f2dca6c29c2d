package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Legend;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SheetForm;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;

/**
 * The wiring diagram of a harness on paper: every wire once, in its circuit, from the sources on the left over protective devices,
 * switches and splices to the loads and back over the returns to the right; with its number, size, colour and current. Immutable.
 */
public final class WiringDiagram {

    private static final String TYPE = "Wiring diagram";
    private static final List<String> NOTES = List.of(
            "Not to scale; current usually runs from the left to the right. Lines that cross are not joined.",
            "On each wire: number and size above, colour (IEC 60757) and RMS current below; a size in brackets is not"
                    + " chosen yet.",
            "A small block is a contact of a connector (connector.cavity), a small circle a stud or screw, an upright"
                    + " bar a splice.",
            "A dashed line is a way shown shortened: it is whole on the sheet and in the field named.");

    private static final List<String> EVERYWHERE = List.of(
            "Not to scale; current usually runs from the left to the right. On each wire: number and size above,"
                    + " colour and RMS current below.");

    private final List<Scene> sheets;
    private final List<Title> titles;
    private final List<Row> rows;

    /**
     * Where a circuit is drawn.
     *
     * @param title its name
     * @param sheet sheet it begins on, from 1
     */
    public record Title(String title, int sheet) {}

    /**
     * A wire on the diagram.
     *
     * @param wire    the wire
     * @param circuit heading it is drawn under
     * @param sheet   sheet it is on, from 1
     * @param zone    field of that sheet's frame, if the paper has fields
     * @param size    its size as written
     * @param amps    its current in the worst state that lasts, A, if it was worked out
     * @param state   that state
     */
    public record Row(
            Wire wire,
            String circuit,
            int sheet,
            Optional<String> zone,
            String size,
            Optional<Double> amps,
            Optional<StateId> state) {}

    private WiringDiagram(List<Scene> sheets, List<Title> titles, List<Row> rows) {
        this.sheets = List.copyOf(sheets);
        this.titles = List.copyOf(titles);
        this.rows = List.copyOf(rows);
    }

    /** The diagram of a harness; without results no current is shown, and no size but the wires' own. */
    public static WiringDiagram of(Harness harness, Optional<Analysis> analysis, Paper paper, SceneFonts fonts) {
        return of(harness, analysis, harness, paper, fonts);
    }

    /**
     * The diagram of a part of a harness.
     *
     * @param whole the harness whose operating states the currents belong to
     */
    public static WiringDiagram of(
            Harness harness, Optional<Analysis> analysis, Harness whole, Paper paper, SceneFonts fonts) {
        Lettering lettering = new Lettering(fonts);
        SheetForm form = new SheetForm(harness.titleBlock(), NOTES, EVERYWHERE, paper, lettering);
        WireWords words = new WireWords(analysis, whole, lettering);
        Headings headings = new Headings(lettering);
        double wide = form.area(true).widthMm();
        Foot foot = new Foot(Legend.items(harness, true, false, false, lettering, wide), words, lettering, wide);
        double key = foot.heightMm(harness.wires().all());
        double firstRoom = form.area(true).heightMm() - key;
        double room = form.area(false).heightMm() - key;
        Wiring wiring = new Wiring(harness);
        List<CircuitLayout> layouts = new Fitting(wiring, headings, words, room - Shelves.HEAD_MM).all();
        Shelves shelves = shelves(layouts, wide, firstRoom, room);
        if (!shelves.usesFirst()) {
            layouts = new Fitting(wiring, headings, words, firstRoom - Shelves.HEAD_MM).all();
            shelves = shelves(layouts, wide, firstRoom, room);
        }
        List<PlacedStrip> placed =
                shelves.placed(form.area(true).leftMm(), form.area(true).topMm());
        SheetDrawing drawing = new SheetDrawing(form, placed, headings, words);
        int count = Math.max(1, shelves.count());
        List<Scene> sheets = new ArrayList<>();
        for (int sheet = 1; sheet <= count; sheet++) {
            sheets.add(form.sheet(drawing.items(sheet, foot), TYPE, sheet, count));
        }
        Map<String, Integer> first = new LinkedHashMap<>();
        placed.forEach(
                each -> each.strip().layout().circuit().names().forEach(name -> first.putIfAbsent(name, each.sheet())));
        List<Title> titles = new ArrayList<>();
        first.forEach((title, sheet) -> titles.add(new Title(WiringCircuit.capital(title), sheet)));
        return new WiringDiagram(sheets, titles, rows(layouts, drawing.places(), words));
    }

    private static Shelves shelves(List<CircuitLayout> layouts, double wide, double firstRoom, double room) {
        Shelves shelves = new Shelves(wide, firstRoom, room);
        layouts.forEach(layout -> shelves.put(Strip.of(layout, wide)));
        return shelves;
    }

    private static List<Row> rows(List<CircuitLayout> layouts, Places places, WireWords words) {
        List<Row> rows = new ArrayList<>();
        for (CircuitLayout layout : layouts) {
            for (Wire wire : layout.circuit().wires()) {
                Optional<Places.Place> place = places.of(wire.id());
                rows.add(new Row(
                        wire,
                        layout.circuit().title(),
                        place.map(Places.Place::sheet).orElse(0),
                        place.flatMap(Places.Place::zone),
                        words.size(wire),
                        words.amps(wire),
                        words.state(wire)));
            }
        }
        return rows;
    }

    /** The sheets in order, at least one. */
    public List<Scene> sheets() {
        return sheets;
    }

    /** Circuits in the order they are drawn. */
    public List<Title> titles() {
        return titles;
    }

    /** Every wire once, circuit by circuit. */
    public List<Row> rows() {
        return rows;
    }
}
