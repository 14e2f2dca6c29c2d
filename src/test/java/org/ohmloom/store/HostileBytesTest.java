package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/** Whatever the bytes, reading gives a harness or one clear line, and nothing else. */
@BesideOthers
class HostileBytesTest {
    private static final long SEED = 20260203;

    private static List<byte[]> originals() throws IOException {
        List<byte[]> all = new ArrayList<>();
        all.add(SmallExample.text().getBytes(StandardCharsets.UTF_8));
        all.add(HarnessText.write(RandomHarness.of(7)).getBytes(StandardCharsets.UTF_8));
        for (Path file : ShippedExamplesTest.files()) {
            all.add(Files.readAllBytes(file));
        }
        return all;
    }

    @Test
    void aFileCutAnywhereIsRefusedInOneLine() throws IOException {
        for (byte[] original : originals()) {
            for (int length = 0; length < original.length - 2; length += Campaign.count(371, 37)) {
                assertTrue(isRefusedInOneLine(Arrays.copyOf(original, length)), "cut at " + length);
            }
        }
    }

    @Test
    void flippedAndMovedBytesNeverBreakTheReader() throws IOException {
        Random random = new Random(SEED);
        List<byte[]> originals = originals();
        int tries = Campaign.count(1_000, 200_000);
        int refused = 0;
        for (int k = 0; k < tries; k++) {
            byte[] bytes = originals.get(k % originals.size()).clone();
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                change(bytes, random);
            }
            refused += isRefusedInOneLine(bytes) ? 1 : 0;
        }
        assertTrue(refused > tries / 2 && refused < tries, refused + " of " + tries + " were refused");
    }

    /** Another byte, a flipped bit, or a piece written over another, which makes whole values of the wrong kind. */
    private static void change(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length);
        switch (random.nextInt(4)) {
            case 0 -> bytes[at] = (byte) random.nextInt(256);
            case 1 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
            case 2 -> bytes[at] = (byte) "0123456789-.eE\"{}[]:, nulltruefalse".charAt(random.nextInt(35));
            default -> {
                int length = Math.min(1 + random.nextInt(40), bytes.length - at);
                System.arraycopy(bytes, random.nextInt(bytes.length - length + 1), bytes, at, length);
            }
        }
    }

    private static boolean isRefusedInOneLine(byte[] bytes) {
        Path file = Path.of("hostile.harness.json");
        try {
            HarnessText.write(HarnessFiles.read(bytes, file));
            return false;
        } catch (HarnessFileException refused) {
            String line = refused.getMessage();
            assertFalse(line.contains("\n") || line.contains("\r"), line);
            assertTrue(line.startsWith(file.toString()) && !refused.problem().isBlank(), line);
            assertTrue(line.length() < 1000, line);
            return true;
        }
    }
}
