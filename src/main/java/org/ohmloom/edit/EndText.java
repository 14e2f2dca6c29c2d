package org.ohmloom.edit;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NearestText;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * What a person writes for an end of a wire, {@code X1.3}, {@code BAT1.+}, {@code S1}, {@code G1} or {@code loose}, for a place on
 * the harness, {@code P4} or {@code B2 at 0.3 m}, and for any element by its identity. Case does not matter where it leaves no
 * doubt.
 */
public final class EndText {

    private static final Pattern ON_SEGMENT = Pattern.compile("(\\S+)\\s+(?:at\\s+)?(\\S.*)");

    private EndText() {}

    /**
     * The end a text means.
     *
     * @throws IllegalArgumentException when there is no such place in the harness; the message says what would be right
     */
    public static WireEnd end(Harness harness, String typed) {
        String text = typed.strip();
        if (text.isEmpty() || text.equalsIgnoreCase("loose")) {
            return new WireEnd.Loose();
        }
        int dot = text.indexOf('.');
        String owner = dot < 0 ? text : text.substring(0, dot);
        Element found = element(harness, owner);
        if (dot < 0) {
            if (found.id() instanceof SpliceId splice) {
                return new WireEnd.AtSplice(splice);
            }
            if (found.id() instanceof GroundPointId ground) {
                return new WireEnd.AtGround(ground);
            }
            if (found instanceof Connector || found instanceof Component) {
                throw new UnfitException(
                        "'%s' needs the cavity or terminal after a dot: one of %s",
                        text, String.join(", ", places(found)));
            }
        }
        String inside = text.substring(dot + 1);
        if (dot < 0 || !(found instanceof Connector || found instanceof Component)) {
            throw new UnfitException(
                    "no wire ends at '%s'; write a cavity as X1.3, a terminal as BAT1.+, a splice, a ground point or loose",
                    text);
        }
        String place = matching(
                inside,
                places(found),
                Refusals.text(found instanceof Connector ? "cavity of %s" : "terminal of %s", owner));
        return found instanceof Connector connector
                ? new WireEnd.AtCavity(connector.id(), place)
                : new WireEnd.AtTerminal(((Component) found).id(), place);
    }

    private static List<String> places(Element found) {
        return found instanceof Connector connector
                ? connector.cavities().stream().map(Cavity::name).toList()
                : ((Component) found).terminals();
    }

    /** A place as a person writes it. */
    static String of(Place place) {
        if (place instanceof Place.OnSegment on) {
            return on.segment() + " at " + ExactText.of(on.distanceMetres(), Unit.METRE) + " m";
        }
        return ((Place.AtBreakout) place).breakout().value();
    }

    /** The place a text means. */
    static Place place(Harness harness, String text) {
        Matcher on = ON_SEGMENT.matcher(text);
        if (on.matches()) {
            SegmentId segment = (SegmentId) named(harness, SegmentId.class, on.group(1));
            return new Place.OnSegment(
                    segment, QuantityParser.parse(on.group(2), Unit.METRE).canonical());
        }
        return new Place.AtBreakout((BreakoutId) named(harness, BreakoutId.class, text));
    }

    /**
     * The identity of a kind that a text means.
     *
     * @throws IllegalArgumentException when the harness has none like it
     */
    static ElementId named(Harness harness, Class<?> kind, String text) {
        List<ElementId> all = harness.registers().stream()
                .flatMap(register -> register.ids().stream())
                .map(id -> (ElementId) id)
                .filter(kind::isInstance)
                .toList();
        String name = matching(text, all.stream().map(ElementId::value).toList(), Refusals.text(word(kind)));
        return all.stream().filter(id -> id.value().equals(name)).findFirst().orElseThrow();
    }

    private static String word(Class<?> kind) {
        String name = kind.getSimpleName().replaceAll("Id$", "");
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static Element element(Harness harness, String text) {
        String name = matching(
                text,
                harness.elements().map(element -> element.id().value()).toList(),
                Refusals.text("connector, component, splice or ground point"));
        return harness.element(name).orElseThrow();
    }

    private static String matching(String text, Collection<String> names, Text kind) {
        if (names.contains(text)) {
            return text;
        }
        List<String> alike = names.stream().filter(text::equalsIgnoreCase).toList();
        if (alike.size() == 1) {
            return alike.get(0);
        }
        throw new UnfitException("there is no %s '%s'%s", kind, text, NearestText.questionOrNone(text, names));
    }
}
