package org.ohmloom.workbench.desk;

import java.util.concurrent.Executor;
import java.util.function.Function;
import org.ohmloom.draw.LaidOut;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.settings.PreferenceStore;

/**
 * What a workbench is built on, handed in.
 *
 * @param calculation how results are made, on a thread of its own
 * @param layout      how a harness is laid out, on a thread of its own
 * @param painter     paints scenes
 * @param preferences what the person has settled
 * @param prompts     how the person is asked
 * @param reader      runs the reading of files
 * @param eventThread runs a task on the event thread
 * @param documents   what lies on the desks of all windows
 * @param saves       writes the documents of all windows
 */
public record Services(
        Calculation calculation,
        Function<SceneQuestion, LaidOut> layout,
        ScenePainter painter,
        PreferenceStore preferences,
        Prompts prompts,
        Executor reader,
        Executor eventThread,
        OpenDocuments documents,
        Saves saves) {

    /** The same for a window of its own, which asks in its own dialogs. */
    public Services asking(Prompts other) {
        return new Services(calculation, layout, painter, preferences, other, reader, eventThread, documents, saves);
    }
}
