package org.ohmloom.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.Campaign;
import org.ohmloom.manual.Manual;
import org.ohmloom.manual.Page;

/** The pictures of the manual: every view has one, all are small, and the program takes the same ones again. */
class PicturesTest {

    private static final long LARGEST_BYTES = 60_000;
    private static final int LEAST_COLOURS = 8;

    private final Manual manual = Manual.bundled();

    @Test
    void everyPageAboutAViewHasAPicture() {
        assertEquals(
                List.of(),
                manual.pages().stream()
                        .filter(page ->
                                page.folder().equals("views") && !page.id().endsWith("/" + Manual.HOME))
                        .filter(page -> page.links().stream().noneMatch(link -> link.picture()))
                        .map(Page::id)
                        .toList());
    }

    @Test
    void everyPictureIsShownSomewhere() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        Set<String> shown = manual.pages().stream()
                .flatMap(page -> page.links().stream())
                .flatMap(link -> link.pictureFile().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                List.of(),
                names(WorkbenchPictures.PLACE).stream()
                        .filter(name -> !shown.contains("pictures/" + name))
                        .filter(name -> !readme.contains(WorkbenchPictures.PLACE + "/" + name))
                        .toList());
    }

    @Test
    void everyPictureIsSmallAndHasFewColours() throws IOException {
        Map<String, String> wrong = new TreeMap<>();
        for (String name : names(WorkbenchPictures.PLACE)) {
            Path file = WorkbenchPictures.PLACE.resolve(name);
            BufferedImage picture = ImageIO.read(file.toFile());
            if (Files.size(file) > LARGEST_BYTES) {
                wrong.put(name, Files.size(file) + " bytes");
            } else if (!(picture.getColorModel() instanceof IndexColorModel model)
                    || model.getMapSize() < LEAST_COLOURS) {
                wrong.put(name, "colours: " + picture.getColorModel());
            }
        }
        assertEquals(Map.of(), wrong);
    }

    /** The whole set in the full campaign, where it takes minutes; the start screen, which needs no results, otherwise. */
    @Test
    void theProgramTakesThePicturesAgain(@TempDir Path folder) throws IOException {
        boolean full = Campaign.FULL;
        if (full) {
            WorkbenchPictures.take(folder);
        } else {
            WorkbenchPictures.takeStart(folder);
        }
        Set<String> taken = names(folder);
        assertEquals(full ? names(WorkbenchPictures.PLACE) : Set.of("start.png"), taken);
        for (String name : taken) {
            BufferedImage fresh = ImageIO.read(folder.resolve(name).toFile());
            BufferedImage kept =
                    ImageIO.read(WorkbenchPictures.PLACE.resolve(name).toFile());
            assertEquals(
                    kept.getWidth() + " x " + kept.getHeight(), fresh.getWidth() + " x " + fresh.getHeight(), name);
            assertTrue(
                    fresh.getColorModel() instanceof IndexColorModel model && model.getMapSize() >= LEAST_COLOURS,
                    name + " is blank");
        }
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
