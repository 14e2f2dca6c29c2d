package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of names made by a pattern. */
class NamePatternTest {

    private static final Map<String, String> SAYS = Map.of("circuit", "horn");

    private static List<String> names(String pattern, String... old) {
        NamePattern read = NamePattern.parse(pattern);
        return IntStream.range(0, old.length)
                .mapToObj(k -> read.name(k, old[k], word -> Optional.ofNullable(SAYS.get(word))))
                .toList();
    }

    @Test
    void aNumberInBracesCountsFromItWithItsZeros() {
        assertEquals(List.of("W1", "W2", "W3"), names("W{1}", "a", "b", "c"));
        assertEquals(List.of("W001", "W002"), names("W{001}", "a", "b"));
        // 98, 98 + 1, 98 + 2: two digits are the least, not the most
        assertEquals(List.of("X98-a", "X99-a", "X100-a"), names("X{98}-a", "a", "b", "c"));
    }

    @Test
    void aStepFollowsThePlus() {
        // 10, 10 + 5, 10 + 2 x 5
        assertEquals(List.of("W10", "W15", "W20"), names("W{10+5}", "a", "b", "c"));
    }

    @Test
    void theOldNumberIsMovedAndKeepsItsZeros() {
        // 7 + 100, and 12 + 100
        assertEquals(List.of("W107", "W112"), names("{letters}{number+100}", "W7", "W12"));
        assertEquals(List.of("W005"), names("{letters}{number-2}", "W007"));
        assertEquals(List.of("bed-W7-7"), names("bed-{old}-{number}", "W7"));
        // the last number counts: the first belongs to the letters
        assertEquals(List.of("X2-5"), names("{letters}{number+1}", "X2-4"));
    }

    @Test
    void aWordIsWhatTheThingSaysOfItself() {
        assertEquals(List.of("horn-1", "horn-2"), names("{circuit}-{1}", "W1", "W2"));
        assertEquals(
                "W1 has no colour",
                assertThrows(IllegalArgumentException.class, () -> names("{colour}", "W1"))
                        .getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "'W{1', 'a brace in ''W{1'' has no partner; a place is written {1} or {old}'",
        "'W{#}', '{#} means nothing; write {1}, {001} or {10+5} to count, {number+100} to move numbers, {old} or {letters}'",
        "'  ', 'a pattern is needed, such as W{001}'"
    })
    void whatMeansNothingIsRefusedWithWhatWouldBeRight(String pattern, String message) {
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> NamePattern.parse(pattern))
                        .getMessage());
    }

    @Test
    void aNumberThatIsNotThereOrWouldFallBelowZeroIsRefused() {
        assertEquals(
                "winch has no number",
                assertThrows(IllegalArgumentException.class, () -> names("{number}", "winch"))
                        .getMessage());
        assertEquals(
                "the number of W3 would fall below 0",
                assertThrows(IllegalArgumentException.class, () -> names("{number-4}", "W3"))
                        .getMessage());
    }
}
