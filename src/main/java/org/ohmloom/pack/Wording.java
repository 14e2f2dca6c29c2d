package org.ohmloom.pack;

import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.draw.CoveringWords;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Covering;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Place;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** What the pack calls things, the same on every document. */
final class Wording {
    /** A part number that nobody has entered yet. */
    static final String NOT_CHOSEN = "not chosen";

    private final Harness harness;

    Wording(Harness harness) {
        this.harness = harness;
    }

    /** Name of what a wire end is joined to, empty for a loose end. */
    String joinedTo(WireEnd end) {
        if (end instanceof WireEnd.AtCavity cavity) {
            return harness.connectors().get(cavity.connector()).name();
        }
        if (end instanceof WireEnd.AtTerminal terminal) {
            return harness.components().get(terminal.component()).name();
        }
        if (end instanceof WireEnd.AtSplice splice) {
            return harness.splices().get(splice.splice()).name();
        }
        if (end instanceof WireEnd.AtGround ground) {
            return harness.grounds().get(ground.ground()).name();
        }
        return "";
    }

    /** A wire end as it is written: "X1.3"; a loose end stands out. */
    static Cell end(WireEnd end) {
        return end instanceof WireEnd.Loose ? Cell.missing(end.text()) : Cell.text(end.text());
    }

    /** A wire as it is called: its id, and that it is in the vehicle already. */
    static String wire(Wire wire) {
        return wire.id() + (wire.existing() ? " (existing)" : "");
    }

    /** A conductor size as it is printed: "2.5 mm²", "14 AWG". */
    static String size(Gauge gauge) {
        return printed(gauge.text());
    }

    /** A sentence with its units as they are printed. */
    static String printed(String sentence) {
        return sentence.replace("mm2", "mm²").replace("I2t", "I²t").replace("A2s", "A²s");
    }

    /** A text with its units as they are printed; where that changes it, in English. */
    static Text printed(Text text) {
        String english = text.english();
        return printed(english).equals(english) ? text : Text.of(printed(english));
    }

    /** The size of a wire, or that it is not chosen. */
    static Cell size(Wire wire) {
        return wire.gauge().map(gauge -> Cell.text(size(gauge))).orElseGet(() -> Cell.missing(NOT_CHOSEN));
    }

    /** The insulation colour of a wire, or that it is not chosen. */
    static Cell colour(Wire wire) {
        return wire.colour().map(Cell::colour).orElseGet(() -> Cell.missing(NOT_CHOSEN));
    }

    /** Insulation type of a wire: its own, otherwise the harness's. */
    String insulation(Wire wire) {
        return wire.insulation().orElse(harness.rules().insulation());
    }

    /** What a wire carries. */
    static String signalClass(Wire wire) {
        return SignalLook.of(wire.signalClass()).word().english();
    }

    /** A part number, or that it is not chosen. */
    static Cell part(Optional<PartId> part) {
        return part.map(id -> Cell.text(id.value())).orElseGet(() -> Cell.missing(NOT_CHOSEN));
    }

    /** A part in words: "EX-1 (Example, two-way housing)". */
    String described(PartId id) {
        Part part = harness.parts().get(id);
        return id + " (" + part.maker() + ", " + printed(part.description()) + ")";
    }

    /** An assembly in words, empty without one. */
    String assembly(Optional<AssemblyId> assembly) {
        return assembly.map(harness.assemblies()::get)
                .map(each -> each.number() + " " + each.name())
                .orElse("");
    }

    /** How the wire of a cable lies: "twisted, shielded"; empty for a single wire. */
    String lay(Wire wire) {
        return wire.cable()
                .map(harness.cables()::get)
                .map(cable -> (cable.kind() == Cable.Kind.TWISTED_PAIR ? "twisted" : "multicore")
                        + (cable.shielded() ? ", shielded" : ""))
                .orElse("");
    }

    /** Cut length of a wire, mm: entered, or its way and allowances. */
    static OptionalDouble lengthMm(Wire wire, Routes routes) {
        OptionalDouble metres = routes.lengthMetres(wire);
        return metres.isPresent()
                ? OptionalDouble.of(Unit.MILLIMETRE.fromCanonical(metres.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** A place on the physical harness. */
    String place(Place place) {
        if (place instanceof Place.OnSegment along) {
            BundleSegment segment = harness.segments().get(along.segment());
            return Formats.metres(along.distanceMetres()) + " along " + segment.id() + " from " + segment.from();
        }
        Place.AtBreakout at = (Place.AtBreakout) place;
        return at.breakout() + " " + harness.breakouts().get(at.breakout()).name();
    }

    /** What a covering is, its kind named once: "conduit 10 mm nominal", "19 mm cloth tape". */
    static String covering(Covering covering) {
        return CoveringWords.sized(covering);
    }

    /** Ids in a row: "W1, W2". */
    static String ids(Collection<? extends ElementId> ids) {
        return ids.stream().map(ElementId::value).collect(Collectors.joining(", "));
    }

    /** "1 wire", "3 wires". */
    static String count(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
