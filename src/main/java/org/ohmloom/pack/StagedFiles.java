package org.ohmloom.pack;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

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
            throw new PackException(directory + ": this is a file; name a folder for the build pack");
        }
        boolean made = !Files.exists(directory);
        try {
            Files.createDirectories(directory);
            return new StagedFiles(directory, made, Files.createTempDirectory(directory, ".pack-"));
        } catch (IOException failed) {
            throw new PackException(directory + ": the build pack cannot be written here: " + reason(failed), failed);
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
            throw new PackException(directory.resolve(name) + ": not written: " + reason(failed), failed);
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
                throw new PackException(target + ": not written: " + reason(failed), failed);
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

    private static String reason(IOException failed) {
        if (failed instanceof java.nio.file.AccessDeniedException) {
            return "permission denied";
        }
        if (failed instanceof java.nio.file.FileAlreadyExistsException) {
            return "a part of the path is a file";
        }
        String message = failed.getMessage();
        return message == null ? failed.getClass().getSimpleName() : message;
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
            throw new PackException(aside + ": temporary files are left here: " + reason(failed), failed);
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
