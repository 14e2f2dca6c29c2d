package org.ohmloom.draw.wiring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.model.WireId;

/** On which sheet and in which of its fields things are drawn. */
final class Places {

    /** Sheets told one by one; more are told as "and more". */
    private static final int MOST = 3;

    /**
     * A place.
     *
     * @param sheet number of the sheet, from 1
     * @param zone  field of its frame; empty on paper without fields
     */
    record Place(int sheet, Optional<String> zone) {
        String text() {
            return "sheet " + sheet + zone.map(field -> " " + field).orElse("");
        }
    }

    private final boolean known;
    private final String digits;
    private final Map<WireId, Place> wires = new LinkedHashMap<>();
    private final Map<String, TreeSet<Integer>> symbols = new TreeMap<>();

    private Places(boolean known, int mostSheets) {
        this.known = known;
        this.digits = "8".repeat(String.valueOf(mostSheets).length());
    }

    /** Places that will be known later; texts are as wide as any will be on so many sheets. */
    static Places unknown(int mostSheets) {
        return new Places(false, mostSheets);
    }

    static Places empty() {
        return new Places(true, 0);
    }

    void wire(WireId wire, Place place) {
        wires.put(wire, place);
    }

    void symbol(String key, int sheet) {
        symbols.computeIfAbsent(key, each -> new TreeSet<>()).add(sheet);
    }

    Optional<Place> of(WireId wire) {
        return Optional.ofNullable(wires.get(wire));
    }

    /** A remark with its place, as wide as it may get. */
    String text(Remark remark) {
        return text(remark, 0);
    }

    /** A remark on a sheet. */
    String text(Remark remark, int sheet) {
        if (remark.wire().isPresent()) {
            WireId wire = remark.wire().get();
            Optional<Place> place =
                    known ? of(wire) : Optional.of(new Place(Integer.parseInt(digits), Optional.of("M88")));
            return remark.words()
                    + wire
                    + place.map(there -> ", " + there.text()).orElse("");
        }
        return remark.symbol()
                .map(symbol -> others(symbol, sheet))
                .map(others -> others.isEmpty() ? "" : remark.words() + " " + others)
                .orElse(remark.words());
    }

    private String others(String symbol, int sheet) {
        if (!known) {
            return "sheets " + String.join(", ", digits, digits, digits) + ", …";
        }
        List<Integer> others = symbols.getOrDefault(symbol, new TreeSet<>()).stream()
                .filter(each -> each != sheet)
                .toList();
        if (others.isEmpty()) {
            return "";
        }
        return (others.size() == 1 ? "sheet " : "sheets ")
                + others.stream().limit(MOST).map(String::valueOf).collect(Collectors.joining(", "))
                + (others.size() > MOST ? ", …" : "");
    }
}
