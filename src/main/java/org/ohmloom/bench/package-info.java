/**
 * The finished harness on the bench: what each test must measure, and the judged record of what was measured.
 *
 * <p>Floor 4. Everything unplugged: nets are what is one piece of metal then, limits are what the tables list.
 */
@NullMarked
package org.ohmloom.bench;

import org.jspecify.annotations.NullMarked;
