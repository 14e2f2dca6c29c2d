package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.store.HarnessFiles;

@BesideOthers
class PackManifestTest {

    @TempDir
    private Path folder;

    /** Held against a general library's checksums of the files as they lie in the folder. */
    @Test
    void theManifestListsEveryFileWithItsChecksumAndThatOfTheHarness() throws Exception {
        BuildPack.write(Packs.analysis("teaching"), folder, PackOptions.ALL, Progress.NONE);
        Map<String, byte[]> files = Packs.contents(folder);
        String manifest = "EX-D-0001-manifest.csv";
        List<String> lines =
                new String(files.get(manifest), StandardCharsets.UTF_8).lines().toList();

        HarnessFiles.write(
                folder.resolve("saved" + HarnessFiles.ENDING),
                Packs.analysis("teaching").harness());
        byte[] harness = Packs.contents(folder).get("saved" + HarnessFiles.ENDING);
        Stream<String> expected = Stream.concat(
                Stream.of(line("harness as saved", harness)),
                files.entrySet().stream()
                        .filter(file -> !file.getKey().equals(manifest))
                        .map(file -> line(file.getKey(), file.getValue())));
        assertEquals(expected.sorted().toList(), lines.stream().skip(1).sorted().toList());
    }

    private static String line(String name, byte[] content) {
        String revision = Packs.analysis("teaching").harness().titleBlock().currentRevision();
        return name + "," + content.length + "," + DigestUtils.sha256Hex(content) + "," + revision;
    }
}
