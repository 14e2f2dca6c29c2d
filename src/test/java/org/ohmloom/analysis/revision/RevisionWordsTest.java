package org.ohmloom.analysis.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.review.Severity;
import org.ohmloom.units.FieldUnits;
import org.ohmloom.words.PseudoLanguage;

/** Every word a comparison takes from the names of the model has a key, so that it can be said in any language. */
class RevisionWordsTest {

    private static final Path BUNDLE =
            Path.of("src/main/resources/org/ohmloom/analysis/revision/revision-words.properties");
    private static final Path NUMBERS = Path.of("src/main/java/org/ohmloom/analysis/revision/ResultChanges.java");
    private static final String HEAD =
            """
            # Words of comparisons, taken from the names of the model: kinds of things, their fields, what is in them; and numbers.
            # Written anew by RevisionWordsTest with -Dohmloom.update=true.

            accepted={0}, accepted
            along={0}, {1} along
            """;
    private static final List<String> SAID = List.of(
            "title block",
            "design rules",
            "position on the board",
            "kind",
            "yes",
            "no",
            "new",
            "gone",
            "changed",
            "unknown");

    private final Set<String> words = new TreeSet<>(SAID);
    private final Set<Type> seen = new HashSet<>();

    @Test
    void everyWordOfTheModelStandsInTheBundle() throws IOException {
        collect();
        TreeMap<String, String> entries = new TreeMap<>();
        words.forEach(each -> entries.put(RevisionWords.key(each), each));
        assertEquals(words.size(), entries.size(), "two words have one key");
        StringBuilder written = new StringBuilder(HEAD);
        entries.forEach(
                (key, text) -> written.append(key).append('=').append(text).append('\n'));
        if (Boolean.getBoolean("ohmloom.update")) {
            Files.writeString(BUNDLE, written.toString());
        }
        assertEquals(written.toString(), Files.readString(BUNDLE));
    }

    @Test
    void aWordIsSaidInAnyLanguageAndWhatIsTypedIsNot() {
        assertTrue(RevisionWords.text("control unit").in(PseudoLanguage.LOCALE).startsWith("[çöñţŕöļ ûñîţ"));
        assertEquals("Left lamp", RevisionWords.text("Left lamp").in(PseudoLanguage.LOCALE));
    }

    private void collect() throws IOException {
        for (Class<?> element : Element.class.getPermittedSubclasses()) {
            words.add(ElementChanges.kind(element.asSubclass(Element.class)));
            visit(element);
        }
        for (RecordComponent part : Harness.class.getRecordComponents()) {
            if (part.getType().isRecord()) {
                visit(part.getGenericType());
            }
        }
        visit(Position.class);
        for (Severity severity : Severity.values()) {
            words.add(severity.name().toLowerCase(Locale.ROOT));
        }
        Matcher numbers = Pattern.compile("Kind\\.of\\(\"([^\"]+)\"").matcher(Files.readString(NUMBERS));
        while (numbers.find()) {
            words.add(numbers.group(1));
        }
    }

    private void visit(Type type) {
        if (!seen.add(type)) {
            return;
        }
        if (type instanceof ParameterizedType generic) {
            List.of(generic.getActualTypeArguments()).forEach(this::visit);
        }
        if (!(type instanceof Class<?> known) || !known.getName().startsWith("org.ohmloom.")) {
            return;
        }
        if (known.isEnum()) {
            for (Object each : known.getEnumConstants()) {
                words.add(((Enum<?>) each).name().toLowerCase(Locale.ROOT).replace('_', ' '));
            }
        }
        if (known.isRecord()) {
            if (known.getInterfaces().length > 0) {
                words.add(Fields.words(known.getSimpleName()));
            }
            for (RecordComponent part : known.getRecordComponents()) {
                field(part);
                visit(part.getGenericType());
            }
        }
        if (known.isSealed()) {
            List.of(known.getPermittedSubclasses()).forEach(this::visit);
        }
    }

    private void field(RecordComponent part) {
        FieldPath path = FieldPath.START.field(Fields.words(FieldUnits.label(part.getName())));
        words.add(path.english());
        if (Collection.class.isAssignableFrom(part.getType())
                || part.getGenericType().toString().contains("java.util.List")) {
            words.add(path.singular(part.getName()).english());
        }
    }
}
