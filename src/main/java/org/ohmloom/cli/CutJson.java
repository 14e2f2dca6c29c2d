package org.ohmloom.cli;

import org.ohmloom.bundle.length.CutLength;
import org.ohmloom.bundle.length.LengthPart;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.words.Text;

/** The cut length of a wire, part by part, as keys of its JSON object. */
final class CutJson {

    private CutJson() {}

    static void put(JsonObjectWriter item, CutLength length) {
        item.object("cut", cut -> {
            cut.put("metres", length.metres());
            cut.put("entered", length.isEntered());
            cut.put("routeMetres", length.routeMetres());
            cut.put("allowanceMetres", length.allowanceMetres());
            cut.put("toleranceMetres", length.toleranceMetres());
            cut.put("toleranceSource", length.tolerance().citation().text());
            cut.objects("parts", length.parts(), CutJson::part);
        });
    }

    private static void part(LengthPart part, JsonObjectWriter item) {
        item.put("for", part.kind().words());
        item.put("end", part.end().map(Text::english));
        item.put("millimetres", part.millimetres());
        item.put("source", part.source());
    }
}
