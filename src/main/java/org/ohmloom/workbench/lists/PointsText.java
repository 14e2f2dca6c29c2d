package org.ohmloom.workbench.lists;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisPath;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** Several points in one cell, with semicolons between: the paths of a chassis body, the current limits of a contact. */
final class PointsText {

    private static final Pattern PATH = Pattern.compile("(\\S+)\\s+(?:to|-|–)\\s+(\\S+)\\s+(.+)");
    private static final Pattern LIMIT = Pattern.compile("(.+?)\\s+(?:at|@)\\s+(.+)");

    private PointsText() {}

    private static String word(String key, Object... values) {
        return Words.of("lists").get(key, values);
    }

    /** Paths of a chassis body: {@code G1 to G2 2 mΩ}. */
    static String paths(ChassisBody body) {
        return body.paths().stream()
                .map(path -> word(
                        "path", path.from(), path.to(), TypedNumbers.exact(Unit.MILLIOHM.fromCanonical(path.ohms()))))
                .collect(Collectors.joining("; "));
    }

    /** Puts other paths into chassis bodies. A bare number is mΩ. */
    static Edit paths(Harness harness, List<ChassisBody> bodies, String typed) {
        List<Edit> edits = bodies.stream()
                .map(body -> {
                    List<ChassisPath> paths = each(typed, PATH, "no-path", parts -> path(harness, body, parts));
                    return (Edit) ChangeElements.tried(
                            Words.of("lists").text("set-paths", body.id()),
                            body,
                            old -> new ChassisBody(old.id(), old.name(), old.isolated(), paths, old.rule()));
                })
                .toList();
        return TypedNumbers.together(Words.of("lists").text("set-paths-of", bodies.size()), edits);
    }

    private static ChassisPath path(Harness harness, ChassisBody body, Matcher parts) {
        return new ChassisPath(
                ground(harness, body, parts.group(1)),
                ground(harness, body, parts.group(2)),
                TypedNumbers.needed(parts.group(3), Unit.MILLIOHM, word("a-resistance")));
    }

    private static GroundPointId ground(Harness harness, ChassisBody body, String typed) {
        return harness.grounds().all().stream()
                .filter(each -> each.body().equals(body.id()))
                .map(GroundPoint::id)
                .filter(id -> id.value().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(word("no-ground-of-body", typed, body.id())));
    }

    /** Current limits of a contact: {@code 24 A at 20 °C}. */
    static String limits(ContactPart contact) {
        return contact.limits().stream()
                .map(limit -> word(
                        "current-limit",
                        TypedNumbers.exact(limit.limitAmps()),
                        TypedNumbers.exact(limit.ambientCelsius())))
                .collect(Collectors.joining("; "));
    }

    /** The limits a text means, coolest first; bare numbers are A and °C. */
    static List<ContactLimit> limits(String typed) {
        List<ContactLimit> limits = each(
                typed,
                LIMIT,
                "no-limit",
                parts -> new ContactLimit(
                        TypedNumbers.needed(parts.group(2), Unit.DEGREE_CELSIUS, word("a-temperature")),
                        TypedNumbers.needed(parts.group(1), Unit.AMP, word("a-current"))));
        return limits.stream()
                .sorted(Comparator.comparingDouble(ContactLimit::ambientCelsius))
                .toList();
    }

    private static <T> List<T> each(String typed, Pattern pattern, String wrong, Function<Matcher, T> make) {
        return Arrays.stream(typed.split(";"))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .map(part -> {
                    Matcher parts = pattern.matcher(part);
                    if (!parts.matches()) {
                        throw new IllegalArgumentException(word(wrong, part));
                    }
                    return make.apply(parts);
                })
                .toList();
    }
}
