package org.ohmloom.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spoils a harness file as a slipped hand, a bad merge or a dying disk would: one to three changes of numbers, words,
 * lines or bytes. Most changes of numbers and words leave a file that can still be read, with another meaning.
 */
final class Mangler {

    private static final Pattern NUMBER = Pattern.compile("(?<=[:\\[ ])-?\\d+(\\.\\d+)?");
    private static final Pattern WORD = Pattern.compile("\"[^\"\\n]*\"");
    private static final List<String> NUMBERS = List.of(
            "0", "-1", "1", "0.5", "2", "1e-12", "1e-300", "1e12", "1e300", "1e999", "-0.0", "999999", "null", "true",
            "\"\"", "[]", "{}");

    private final Random random;

    Mangler(Random random) {
        this.random = random;
    }

    /** Another file made of this one. */
    byte[] mangled(byte[] original) {
        byte[] bytes = original;
        for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
            bytes = changed(bytes);
        }
        return bytes;
    }

    private byte[] changed(byte[] bytes) {
        int kind = random.nextInt(12);
        if (kind == 0) {
            return Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
        }
        if (kind == 1) {
            return withByteChanged(bytes);
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return changed(text, kind).getBytes(StandardCharsets.UTF_8);
    }

    private String changed(String text, int kind) {
        return switch (kind) {
            case 2, 3 -> withPieceReplaced(text, NUMBER, NUMBERS.get(random.nextInt(NUMBERS.size())));
            case 4, 5, 6, 7, 8 -> withPieceReplaced(text, NUMBER, pieceOf(text, NUMBER));
            case 9 -> withPieceReplaced(text, WORD, pieceOf(text, WORD));
            case 10 -> withPieceReplaced(text, WORD, "\"" + "x".repeat(1 + random.nextInt(3)) + "\"");
            default -> withLineChanged(text);
        };
    }

    private byte[] withByteChanged(byte[] bytes) {
        byte[] copy = bytes.clone();
        if (copy.length > 0) {
            copy[random.nextInt(copy.length)] = (byte) random.nextInt(256);
        }
        return copy;
    }

    /** A line left out, doubled or put elsewhere. */
    private String withLineChanged(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        int at = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(at));
            default -> lines.add(random.nextInt(lines.size()), lines.remove(at));
        }
        return String.join("\n", lines) + "\n";
    }

    private String withPieceReplaced(String text, Pattern pattern, String piece) {
        List<MatchResult> found = found(text, pattern);
        if (found.isEmpty()) {
            return text;
        }
        MatchResult where = found.get(random.nextInt(found.size()));
        return text.substring(0, where.start()) + piece + text.substring(where.end());
    }

    private String pieceOf(String text, Pattern pattern) {
        List<MatchResult> found = found(text, pattern);
        return found.isEmpty() ? "" : found.get(random.nextInt(found.size())).group();
    }

    private static List<MatchResult> found(String text, Pattern pattern) {
        Matcher matcher = pattern.matcher(text);
        return matcher.results().toList();
    }
}
