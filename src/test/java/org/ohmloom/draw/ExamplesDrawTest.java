package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;

/** The shipped examples as pictures: everything is there, inside, and nothing written lies on anything else written. */
@BesideOthers
class ExamplesDrawTest {

    static Harness example(String name) {
        try {
            return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
        } catch (HarnessFileException failed) {
            throw new AssertionError(failed);
        }
    }

    static Scene board(Harness harness, SceneOptions options) {
        return new SceneLayout(Drawn.FONTS).layoutBoard(harness, Optional.empty(), Optional.empty(), options);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void nothingWrittenLiesOnAnythingElseWritten(String name) throws IOException {
        Harness harness = example(name);
        for (boolean wires : new boolean[] {false, true}) {
            for (SceneOptions.Numbers numbers : List.of(SceneOptions.Numbers.NONE, SceneOptions.Numbers.SIZE)) {
                Scene scene = board(harness, new SceneOptions(numbers, wires));
                String variant = name + (wires ? "-wires" : "") + (numbers == SceneOptions.Numbers.SIZE ? "-size" : "");
                for (DrawStyle style : DrawStyle.values()) {
                    Drawn.keep(variant + "-" + style, scene, style, 4);
                }
                assertEquals(List.of(), Overlaps.texts(scene), variant);
                assertEquals(List.of(), Overlaps.outside(scene), variant);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void everyThingAndEveryWireIsInThePicture(String name) {
        Harness harness = example(name);
        Scene scene = board(harness, new SceneOptions(SceneOptions.Numbers.NONE, true));
        Set<String> wanted = new TreeSet<>();
        harness.components().ids().forEach(id -> wanted.add(id.value()));
        harness.connectors().ids().forEach(id -> wanted.add(id.value()));
        harness.splices().ids().forEach(id -> wanted.add(id.value()));
        harness.grounds().ids().forEach(id -> wanted.add(id.value()));
        harness.segments().ids().forEach(id -> wanted.add(id.value()));
        harness.wires().all().stream()
                .filter(wire ->
                        !wire.from().text().equals("loose") && !wire.to().text().equals("loose"))
                .forEach(wire -> wanted.add(wire.id().value()));
        List<String> missing = new ArrayList<>(wanted);
        missing.removeAll(scene.elements());
        assertEquals(List.of(), missing);
    }
}
