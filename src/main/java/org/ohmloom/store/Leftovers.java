package org.ohmloom.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;

/**
 * Files that a save left beside its target because the program was ended in the midst of it, by the names a save gives them. Whoever
 * saves there next takes them away, but for those younger than any save takes: they may be another's, still under work.
 */
final class Leftovers {

    private static final Duration LONGEST_SAVE = Duration.ofHours(1);

    private Leftovers() {}

    /**
     * Takes them away; one that cannot be taken away stays.
     *
     * @param target what they were to become
     * @param fresh  the file under work now, which tells what time it is there
     */
    static void remove(Path target, Path fresh) {
        Path each = AtomicSave.underWork(target, 0);
        for (int k = 1; Files.exists(each, LinkOption.NOFOLLOW_LINKS); k++) {
            try {
                if (!each.equals(fresh) && isLeft(each, fresh)) {
                    Files.delete(each);
                }
            } catch (IOException stays) {
                // It is in nobody's way; the save goes on.
            }
            each = AtomicSave.underWork(target, k);
        }
    }

    private static boolean isLeft(Path file, Path fresh) throws IOException {
        Duration age = Duration.between(
                Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toInstant(),
                Files.getLastModifiedTime(fresh).toInstant());
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && age.compareTo(LONGEST_SAVE) > 0;
    }
}
