package org.ohmloom.workbench.desk;

import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;

/**
 * What a layout is asked to show.
 *
 * @param harness     the harness
 * @param analysis    results to take numbers from
 * @param view        state and numbers
 * @param aspectRatio width over height to aim at
 */
public record SceneQuestion(Harness harness, Optional<Analysis> analysis, ViewChoice view, double aspectRatio) {}
