package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.Reader;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.edit.NewDevice;
import org.ohmloom.edit.NewThing;
import org.ohmloom.edit.board.StartDevice;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.SignalClass;
import org.ohmloom.review.Severity;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.units.FieldUnits;
import org.ohmloom.words.PseudoLanguage;

/** The message bundles: every key asked for is there, every key there is asked for, and any language fits the gaps. */
class WordsTest {

    private static final Path BUNDLES = Path.of("src/main/resources/org/ohmloom/workbench/words");
    private static final Path SOURCES = Path.of("src/main/java/org/ohmloom/workbench");
    private static final Pattern TOPIC = Pattern.compile("Words\\.of\\(\\s*\"([a-z-]+)\"\\s*\\)");
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    @Test
    void anApostropheThatStandsTwiceIsShownOnceAndNumbersKeepTheirDigits() {
        assertEquals("'1500' is neither yes nor no", Words.of("typed").get("typed-numbers.is-neither-yes-nor", 1500));
    }

    @Test
    void aTypedWordMeansWhatItIsShownFor() {
        Locale usual = Locale.getDefault(Locale.Category.DISPLAY);
        Locale.setDefault(Locale.Category.DISPLAY, PseudoLanguage.LOCALE);
        try {
            String shown = Words.of("typed").get("yes");
            assertNotEquals("yes", shown);
            assertEquals("yes", Words.of("typed").meant(shown, "no", "yes"));
            assertEquals("perhaps", Words.of("typed").meant("perhaps", "no", "yes"));
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, usual);
        }
    }

    @Test
    void everyTopicAskedForHasABundleAndEveryBundleIsAskedFor() throws IOException {
        Set<String> asked = new TreeSet<>();
        Matcher topics = TOPIC.matcher(allSources());
        while (topics.find()) {
            asked.add(topics.group(1));
        }
        try (Stream<Path> files = Files.list(BUNDLES)) {
            assertEquals(
                    asked,
                    files.map(file -> file.getFileName().toString().replace(".properties", ""))
                            .collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    /** A key may be put together in code from its first part, as {@code "tool." + name}; then the first part stands there. */
    @Test
    void everyKeyInABundleIsUsed() throws IOException {
        String code = allSources();
        Set<String> texts = new TreeSet<>();
        Matcher found = TEXT.matcher(code);
        while (found.find()) {
            texts.add(found.group(1));
        }
        Set<String> unused = new TreeSet<>();
        try (Stream<Path> files = Files.list(BUNDLES)) {
            for (Path file : files.toList()) {
                for (String key : keys(file)) {
                    String plain = key.replaceAll("\\.letter$", "");
                    boolean used = texts.contains(plain)
                            || texts.stream()
                                    .anyMatch(text -> text.length() > 1
                                            && text.length() < plain.length()
                                            && (text.endsWith(".") && plain.startsWith(text)
                                                    || text.startsWith(".") && plain.endsWith(text)));
                    if (!used) {
                        unused.add(file.getFileName() + ": " + key);
                    }
                }
            }
        }
        assertEquals(Set.of(), unused);
    }

    @Test
    void noPatternHasAStraightApostropheThatWouldSwallowAGap() throws IOException {
        Set<String> wrong = new TreeSet<>();
        try (Stream<Path> files = Files.list(BUNDLES)) {
            for (Path file : files.toList()) {
                Properties bundle = read(file);
                for (String key : bundle.stringPropertyNames()) {
                    if (bundle.getProperty(key).replaceAll("''|'\\{'", "").contains("'")) {
                        wrong.add(file.getFileName() + ": " + key);
                    }
                }
            }
        }
        assertEquals(Set.of(), wrong);
    }

    /** The names of the model in English; what is not there would stop a list of the window. */
    @Test
    void everyConstantOfTheModelHasItsWordAndEverySignalThatOfItsDrawing() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass each : new ClassFileImporter()
                .importPackages("org.ohmloom.model", "org.ohmloom.solve", "org.ohmloom.review")) {
            boolean shown = each.getPackageName().equals("org.ohmloom.model")
                    || each.isEquivalentTo(IslandStatus.class)
                    || each.isEquivalentTo(Severity.class);
            if (shown && each.isEnum() && !each.isEquivalentTo(NaturalOrder.class)) {
                for (Object constant : each.reflect().getEnumConstants()) {
                    String plain = TradeWords.lower((Enum<?>) constant);
                    if (!TradeWords.named((Enum<?>) constant).equalsIgnoreCase(plain)) {
                        wrong.add(each.getSimpleName() + ": " + plain);
                    }
                }
            }
        }
        for (SignalClass each : SignalClass.values()) {
            if (!TradeWords.signal(each).equals(SignalLook.of(each).word().english())) {
                wrong.add(each.name());
            }
        }
        for (NewThing each : NewThing.values()) {
            if (!TradeWords.named(each).equals(each.words())) {
                wrong.add(each.name());
            }
        }
        for (StartDevice each : StartDevice.values()) {
            if (!TradeWords.named(each).equals(each.words())) {
                wrong.add(each.name());
            }
        }
        for (NewDevice each : NewDevice.values()) {
            if (!TradeWords.named(each).equals(each.words())) {
                wrong.add(each.name());
            }
        }
        assertEquals(Set.of(), wrong);
    }

    /** The inspector shows every field of a record of the model under its name. */
    @Test
    void everyFieldOfTheModelHasItsWords() {
        Set<String> without = new TreeSet<>();
        for (JavaClass each : new ClassFileImporter().importPackages("org.ohmloom.model")) {
            Class<?> kind = each.reflect();
            if (kind.isRecord()) {
                for (RecordComponent field : kind.getRecordComponents()) {
                    String plain = FieldUnits.label(field.getName())
                            .replaceAll("(\\p{Lower})(\\p{Upper})", "$1-$2")
                            .toLowerCase(Locale.ROOT);
                    if (Words.of("fields").find("field." + plain).isEmpty()) {
                        without.add(each.getSimpleName() + "." + field.getName());
                    }
                }
            }
        }
        assertEquals(Set.of(), without);
    }

    private static Set<String> keys(Path file) throws IOException {
        return read(file).stringPropertyNames();
    }

    private static Properties read(Path file) throws IOException {
        Properties bundle = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            bundle.load(in);
        }
        return bundle;
    }

    private static String allSources() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file)).append('\n');
            }
        }
        return all.toString();
    }
}
