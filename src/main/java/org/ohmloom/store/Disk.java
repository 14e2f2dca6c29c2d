package org.ohmloom.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The steps of a save that a disk can refuse; a test stands in for a disk that does. */
class Disk {

    /** Writes a new file and waits until it is on the medium. */
    void create(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(content);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** Moves a file. */
    void move(Path from, Path to, CopyOption... options) throws IOException {
        Files.move(from, to, options);
    }

    /** Waits until the names in a folder are on the medium, where the system can. */
    void syncFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException unsupported) {
            // Some systems cannot open a folder; the file itself is on the medium already.
        }
    }
}
