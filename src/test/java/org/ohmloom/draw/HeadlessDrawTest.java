package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;

/** Drawing needs no display: a second Java without one draws the same picture. */
@BesideOthers
class HeadlessDrawTest {

    private static final long SECONDS = 120;
    private static final int LEVELS = 2;

    @Test
    void aJavaWithoutADisplayDrawsTheSamePicture(@TempDir Path folder) throws Exception {
        Path picture = folder.resolve("sheet.png");
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Child.class.getName(),
                        picture.toString()))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log.txt").toFile())
                .start();
        process.getOutputStream().close();
        assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue(), Files.readString(folder.resolve("log.txt")));
        BufferedImage there = ImageIO.read(picture.toFile());
        assertEquals(0, Pixels.differing(there, Child.sheet(), LEVELS));
    }

    /** Draws one sheet; refuses to where there is a display. */
    static final class Child {
        private Child() {}

        public static void main(String[] arguments) throws IOException {
            if (!GraphicsEnvironment.isHeadless()) {
                throw new IllegalStateException("this Java has a display");
            }
            ImageIO.write(sheet(), "png", Path.of(arguments[0]).toFile());
        }

        static BufferedImage sheet() {
            Scene sheet = new DrawingSheet(Drawn.FONTS)
                    .sheets(SmallBoard.harness(), Optional.empty(), Paper.A4)
                    .get(0);
            return Drawn.picture(sheet, DrawStyle.PRINT, 3);
        }
    }
}
