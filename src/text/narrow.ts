/** Signs that take one column on every terminal, known without a table: nearly all that is shown. */

/** Latin letters, punctuation, arrows, lines, blocks, braille, and the signs that the screens draw with. */
const NARROW =
  /^[ -~\u00a1-\u00ac\u00ae-\u02ff\u2010-\u2027\u2039\u203a\u2190-\u2193\u2212\u2264\u2265\u2500-\u259f\u25b2\u25bc\u25cb\u25cf\u2713\u2717\u276f\u2800-\u28ff]*$/;

/** Whether every sign of a text is known to take one column. */
export const isNarrow = (text: string): boolean => NARROW.test(text);
