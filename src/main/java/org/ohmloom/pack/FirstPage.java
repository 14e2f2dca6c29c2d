package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.pack.page.Block;
import org.ohmloom.review.Cautions;
import org.ohmloom.words.Text;

/** What opens every document: the cautions, once, and the remarks on the whole harness. */
final class FirstPage {

    private FirstPage() {}

    static List<Block> blocks(Harness harness) {
        List<String> cautions = new ArrayList<>(
                Cautions.everything().stream().map(Text::english).toList());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Notice("Before you build", cautions));
        List<String> remarks = harness.notes().all().stream()
                .filter(note -> note.about().isEmpty())
                .map(Note::text)
                .toList();
        if (!remarks.isEmpty()) {
            blocks.add(new Block.Points(remarks));
        }
        return blocks;
    }
}
