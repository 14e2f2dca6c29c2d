package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.words.PseudoLanguage;
import org.ohmloom.words.Text;

/** The bundle of the rules: complete, nothing in it for nothing, and short enough in any language. */
@BesideOthers
class RuleTextsTest {

    private static final Path SOURCES = Path.of("src/main/java/org/ohmloom/review");

    static Stream<RuleInfo> rules() {
        return Rules.ALL.stream().map(Rule::info);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleHasItsTitleSourceReasonAndRemedy(RuleInfo rule) {
        for (Text text : List.of(rule.title(), rule.source(), rule.why(), rule.remedy())) {
            assertTrue(!text.english().isBlank(), rule::id);
            assertTrue(text.in(PseudoLanguage.LOCALE).startsWith("["), rule::id);
        }
    }

    /** A name stands in the code between quotation marks, behind the id of its rule or, of what all rules share, behind "any.". */
    @Test
    void everyTextIsSaidSomewhere() throws IOException {
        String code = code();
        Set<String> ids = rules().map(RuleInfo::id).collect(Collectors.toSet());
        Set<String> about = Set.of("title", "source", "why", "fix");
        Set<String> unsaid = new TreeSet<>();
        for (String key : Collections.list(RuleInfo.TEXTS.keys())) {
            String id = key.substring(0, key.indexOf('.'));
            String name = key.substring(key.indexOf('.') + 1);
            boolean said = code.contains('"' + name + '"') || code.contains("\"any." + name + '"');
            if (!ids.contains(id) && !id.equals("any") || !about.contains(name) && !said) {
                unsaid.add(key);
            }
        }
        assertEquals(Set.of(), unsaid);
    }

    @Test
    void noApostropheSwallowsAGap() {
        Set<String> wrong = new HashSet<>();
        for (String key : Collections.list(RuleInfo.TEXTS.keys())) {
            if (RuleInfo.TEXTS.written(Locale.ROOT, key).replace("''", "").contains("'")) {
                wrong.add(key);
            }
        }
        assertEquals(Set.of(), wrong);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aSentenceIsStrangeAndStillOneShortLineInTheMadeUpLanguage(RuleInfo rule) {
        for (Finding finding : Examined.findings(Examined.breaking(rule.id()))) {
            String strange = finding.sentence().in(PseudoLanguage.LOCALE);
            assertTrue(strange.length() <= Sentence.MOST_CHARACTERS, strange);
            assertTrue(strange.startsWith("["), strange);
        }
    }

    /** 10 places of 12 letters and 60 of the language's own: no place may be cut further, so the end goes. */
    @Test
    void whereALanguageSaysTooMuchTheEndIsCut() {
        Map<String, String> texts = Stream.of("a", "b", "c", "d", "e", "f", "g", "h", "i", "j")
                .collect(Collectors.toMap(name -> name, name -> "twelve chars"));
        String template = "A sentence that says at great length " + "what could be short:"
                + texts.keySet().stream().map(name -> " {" + name + "}").collect(Collectors.joining(",")) + ".";
        String sentence = Sentence.of(template, texts);
        assertEquals(Sentence.MOST_CHARACTERS, sentence.length());
        assertTrue(sentence.endsWith("…"), sentence);
    }

    private static String code() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file));
            }
        }
        return all.toString();
    }
}
