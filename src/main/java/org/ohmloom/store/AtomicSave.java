package org.ohmloom.store;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Replaces a file as a whole: the new content is written beside it and flushed to the medium, the old content is kept as
 * {@code NAME.bak}, and one move puts the new file in its place. Whatever fails, the old file is still there and whole.
 * <p>Where the file system cannot move in one step the move replaces the file in two; if that fails half-way the old
 * content is put back. A symbolic link stays and the file it leads to is replaced.
 */
final class AtomicSave {
    private static final int MOST_LEFTOVERS = 1000;
    private static final int MOST_LINKS = 40;
    private static final Set<PosixFilePermission> WRITE =
            Set.of(PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private final Disk disk;
    private final boolean keepsOld;

    AtomicSave(Disk disk) {
        this(disk, true);
    }

    private AtomicSave(Disk disk, boolean keepsOld) {
        this.disk = disk;
        this.keepsOld = keepsOld;
    }

    /** The same for copies that are written anew all the time: what they replace is not kept. */
    static AtomicSave withoutBackup(Disk disk) {
        return new AtomicSave(disk, false);
    }

    /**
     * Replaces the file, or does nothing when it has that content already.
     *
     * @throws FileChangedException when there is a file and it is not the expected one
     * @throws HarnessFileException when the file cannot be replaced
     */
    FileStamp save(Path named, byte[] content, Optional<FileStamp> expected) throws HarnessFileException {
        try {
            Path target = behindLinks(named.toAbsolutePath());
            requireSaveable(named, target);
            return replace(named, target, content, expected);
        } catch (IOException failed) {
            throw new HarnessFileException(named, DiskProblem.writing(failed));
        } catch (ReadOnlyFileSystemException failed) {
            throw new HarnessFileException(named, DiskProblem.writing(failed));
        }
    }

    private FileStamp replace(Path named, Path target, byte[] content, Optional<FileStamp> expected)
            throws IOException, HarnessFileException {
        byte[] old = contentOf(target);
        if (old != null) {
            FileStamp found = FileStamp.of(old, Files.getLastModifiedTime(target));
            if (expected.isPresent() && !expected.get().sameContent(found)) {
                throw new FileChangedException(named, found);
            }
            if (Arrays.equals(old, content)) {
                return found;
            }
            requireWritable(named, target);
        }
        Path fresh = createBeside(target, content, old == null ? null : target);
        try {
            if (old != null && keepsOld) {
                keepOld(target, old);
            }
            requireAsItWas(named, target, old);
            put(fresh, target, old);
        } finally {
            Files.deleteIfExists(fresh);
        }
        disk.syncFolder(folderOf(target));
        return FileStamp.of(content, Files.getLastModifiedTime(target));
    }

    /** Looks once more after all that took time: of two who save at the same moment one is refused. */
    private static void requireAsItWas(Path named, Path target, byte @Nullable [] old)
            throws IOException, HarnessFileException {
        byte[] now = contentOf(target);
        if (now != null && !Arrays.equals(now, old)) {
            throw new FileChangedException(named, FileStamp.of(now, Files.getLastModifiedTime(target)));
        }
    }

    private void keepOld(Path target, byte[] old) throws IOException {
        Path backup = target.resolveSibling(target.getFileName() + ".bak");
        Path fresh = createBeside(backup, old, target);
        try {
            put(fresh, backup, null);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** Moves a file into place; when that fails half-way and took the old file with it, writes that again. */
    private void put(Path fresh, Path target, byte @Nullable [] old) throws IOException {
        try {
            disk.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            try {
                disk.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException failed) {
                if (old != null && !Files.exists(target)) {
                    disk.create(target, old);
                }
                throw failed;
            }
        }
    }

    /** Writes a file beside another under a name of its own, with the permissions of a third. */
    private Path createBeside(Path target, byte[] content, @Nullable Path permissionsOf) throws IOException {
        for (int k = 0; ; k++) {
            Path fresh = underWork(target, k);
            try {
                disk.create(fresh, content);
            } catch (FileAlreadyExistsException taken) {
                if (k < MOST_LEFTOVERS) {
                    continue;
                }
                throw taken;
            } catch (IOException failed) {
                Files.deleteIfExists(fresh);
                throw failed;
            }
            if (permissionsOf != null) {
                copyPermissions(permissionsOf, fresh);
            }
            Leftovers.remove(target, fresh);
            return fresh;
        }
    }

    /** The names a file has while it is written. */
    static Path underWork(Path target, int number) {
        return target.resolveSibling("." + target.getFileName() + "." + number + ".tmp");
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView fresh = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (old != null && fresh != null) {
            fresh.setPermissions(old.readAttributes().permissions());
        }
    }

    private static byte @Nullable [] contentOf(Path target) throws IOException {
        try {
            return Files.readAllBytes(target);
        } catch (NoSuchFileException none) {
            return null;
        }
    }

    private static void requireSaveable(Path named, Path target) throws IOException, HarnessFileException {
        if (Files.isDirectory(target)) {
            throw new HarnessFileException(named, "not saved: this is a folder; name a file in it");
        }
        if (!Files.isDirectory(folderOf(target))) {
            throw new HarnessFileException(named, "not saved: there is no folder %s", folderOf(target));
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new HarnessFileException(named, "not saved: this is a device, not a file");
        }
        if (Files.exists(target) && Files.size(target) > HarnessFiles.LARGEST_BYTES) {
            throw new HarnessFileException(
                    named, "not saved: the file there is larger than any harness; save under another name");
        }
    }

    /** Refuses a file marked read-only, even where the folder or the user would let it be replaced. */
    private static void requireWritable(Path named, Path target) throws IOException, HarnessFileException {
        PosixFileAttributeView posix = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        boolean marked =
                posix != null && posix.readAttributes().permissions().stream().noneMatch(WRITE::contains);
        if (marked || !Files.isWritable(target)) {
            throw new HarnessFileException(named, "not saved: the file is read-only; save under another name");
        }
    }

    private static Path folderOf(Path target) {
        Path folder = target.getParent();
        return folder == null ? target : folder;
    }

    /** The file behind symbolic links, whether or not it exists. */
    private static Path behindLinks(Path path) throws IOException {
        Path target = path;
        for (int k = 0; Files.isSymbolicLink(target); k++) {
            if (k == MOST_LINKS) {
                throw new FileSystemLoopException(String.valueOf(path));
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return Files.exists(target, LinkOption.NOFOLLOW_LINKS) ? target.toRealPath() : target;
    }
}
