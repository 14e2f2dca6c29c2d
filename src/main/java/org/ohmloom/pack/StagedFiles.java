package org.ohmloom.pack;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/**
 * Files written aside and moved into place one by one when all are whole: a folder of the pack never holds half a file.
 * Closing it takes away what has not been moved, and the folder too if it was made for this and is still empty.
 */
final class StagedFiles implements AutoCloseable {
    private final Path directory;
    private final boolean made;
    private final Path aside;
    private final List<String> names = new ArrayList<>();

    private StagedFiles(Path directory, boolean made, Path aside) {
        this.directory = directory;
        this.made = made;
        this.aside = aside;
    }

    /** Files for a folder, which is made when it is not there. */
    static StagedFiles in(Path directory) throws PackException {
        if (Files.exists(directory) && !Files.isDirectory(directory)) {
            throw new PackException("%s: this is a file; name a folder for the build pack", directory);
        }
        boolean made = !Files.exists(directory);
        try {
            Files.createDirectories(directory);
            return new StagedFiles(directory, made, Files.createTempDirectory(directory, ".pack-"));
        } catch (IOException failed) {
            throw new PackException(failed, "%s: the build pack cannot be written here: %s", directory, reason(failed));
        }
    }

    /**
     * Adds a file.
     *
     * @param name its name in the folder; that of one in a folder within has that folder and a slash before it
     */
    void add(String name, byte[] content) throws PackException {
        try {
            Files.createDirectories(aside.resolve(name).getParent());
            Files.write(aside.resolve(name), content);
            names.add(name);
        } catch (IOException failed) {
            throw new PackException(failed, "%s: not written: %s", directory.resolve(name), reason(failed));
        }
    }

    /** Moves all files into place, in the order they were added. */
    List<Path> moveIntoPlace() throws PackException {
        List<Path> moved = new ArrayList<>();
        for (String name : names) {
            Path target = directory.resolve(name);
            try {
                Files.createDirectories(target.getParent());
                move(aside.resolve(name), target);
            } catch (IOException failed) {
                throw new PackException(failed, "%s: not written: %s", target, reason(failed));
            }
            moved.add(target);
        }
        return moved;
    }

    private static void move(Path from, Path to) throws IOException {
        if (Files.isDirectory(to)) {
            throw new IOException("there is a folder of that name");
        }
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Text reason(IOException failed) {
        if (failed instanceof AccessDeniedException) {
            return Refusals.text("permission denied");
        }
        if (failed instanceof FileAlreadyExistsException) {
            return Refusals.text("a part of the path is a file");
        }
        String message = failed.getMessage();
        return Text.of(message == null ? failed.getClass().getSimpleName() : message);
    }

    @Override
    public void close() throws PackException {
        try {
            for (String name : names) {
                Files.deleteIfExists(aside.resolve(name));
            }
            for (Path within : folders(aside)) {
                Files.deleteIfExists(within);
            }
            Files.deleteIfExists(aside);
            if (made && isEmpty(directory)) {
                Files.deleteIfExists(directory);
            }
        } catch (IOException failed) {
            throw new PackException(failed, "%s: temporary files are left here: %s", aside, reason(failed));
        }
    }

    private static List<Path> folders(Path parent) throws IOException {
        if (!Files.isDirectory(parent)) {
            return List.of();
        }
        try (var entries = Files.list(parent)) {
            return entries.filter(Files::isDirectory).toList();
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        }
    }
}
