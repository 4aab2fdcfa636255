/** The colours of the question in the room: as large as there is space, words under each; at the tightest in a line. */
import { Box } from 'ink';
import type { ResultSwatch } from '../../../drills/types.js';
import { cleanText } from '../../../text/sanitize.js';
import { fitWords, widthOf, wrapText } from '../../../text/wrap.js';
import { lookOf, swatchWords } from '../../../words/look.js';
import type { Voice } from '../../../words/voice.js';
import { voiceOf } from '../../kit/look.js';
import { type Piece, Rows } from '../../kit/row.js';
import type { Stage } from '../../kit/stage.js';
import { useSurroundings } from '../../kit/surroundings.js';
import { patchLines, patchNames } from '../../kit/swatch.js';

/** Stands for what was left out of a name; no name has it. */
const CUT = '\u0000';

/** Lines that patches side by side need at least: name, colour, words; without end where they are too narrow for a name or a word. */
export function leastGiven(room: Stage, given: readonly ResultSwatch[], columns: number): number {
  if (given.length === 0) return 0;
  const voice = voiceOf(room.settings);
  if (room.colourLevel === 0) return given.flatMap((swatch) => wordsOf(swatch, columns, voice)).length;
  const each = columnsEach(given, columns);
  const { names, nameRows } = patchNames(given, {
    columns: each,
    rows: 2,
    level: room.colourLevel,
    cut: CUT,
  });
  const texts = given.map((swatch) => swatchWords(swatch, voice));
  const isBroken = texts.some((text) => text.split(' ').some((word) => widthOf(word) > each));
  if (isBroken || names.flat().some((name) => name.includes(CUT))) return Number.POSITIVE_INFINITY;
  return nameRows + 1 + Math.min(2, Math.max(...texts.map((text) => wrapText(text, each).length)));
}

const wordsOf = (swatch: ResultSwatch, columns: number, voice: Voice) =>
  wrapText(`${cleanText(swatch.label, 60)}: ${swatchWords(swatch, voice)}`, columns);

/** Cells that each patch gets of so many. */
const columnsEach = (given: readonly ResultSwatch[], columns: number): number =>
  Math.floor((columns + 1) / given.length) - 1;

/** What stands under patches that stand side by side, in so many lines. */
export const wordsUnder = (given: readonly ResultSwatch[], columns: number, rows: number, voice: Voice) =>
  given.map((swatch) => wrapText(swatchWords(swatch, voice), columnsEach(given, columns)).slice(0, rows));

/** Cells of a patch in a line, with the gaps around it. */
const IN_LINE = { patch: 8, gaps: 3, words: 20 } as const;

/** The name and the words of a patch in a line. */
export function besidePatch(swatch: ResultSwatch, columns: number, voice: Voice) {
  const name = fitWords(cleanText(swatch.label, 60).toUpperCase(), columns - IN_LINE.words, '');
  const room = columns - widthOf(name) - IN_LINE.patch - IN_LINE.gaps;
  return { name, words: fitWords(swatchWords(swatch, voice), room, '') };
}

/** Lines of patches where each stands in a line with its words, if that is fewer. */
export const inLines = (given: readonly ResultSwatch[], rows: number): number => Math.min(rows, given.length);

/** Patches as large as the room for them, words under each. */
export function LargePatches({
  swatches,
  columns,
  rows,
}: {
  readonly swatches: readonly ResultSwatch[];
  readonly columns: number;
  readonly rows: number;
}): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const voice = voiceOf(state.settings);
  if (state.colourLevel === 0)
    return (
      <Rows
        lines={swatches
          .flatMap((swatch) => wordsOf(swatch, columns, voice))
          .slice(0, rows)
          .map((text): Piece[] => [{ text }])}
      />
    );
  if (rows < leastGiven(state, swatches, columns))
    return (
      <Rows
        lines={swatches.map((swatch): Piece[] => {
          const { name, words } = besidePatch(swatch, columns, voice);
          return [
            { text: `${name} `, role: 'label' },
            ...(patchLines(lookOf(swatch.reflectance).hex, IN_LINE.patch, 1)[0] ?? []),
            { text: `  ${words}` },
          ];
        })}
      />
    );
  const each = columnsEach(swatches, columns);
  const look = { columns: each, rows: 2, level: state.colourLevel, cut: glyphs.cut };
  const { names, nameRows } = patchNames(swatches, look);
  const texts = wordsUnder(swatches, columns, rows - nameRows - 1, voice);
  const wordRows = Math.max(...texts.map(({ length }) => length));
  return (
    <Box height={rows} flexShrink={0} overflowY="hidden">
      {swatches.map(({ label, reflectance }, at) => (
        <Box key={label} flexDirection="column" width={each} marginRight={1} flexShrink={0}>
          <Rows
            lines={[
              ...Array.from({ length: nameRows }, (_, row): Piece[] => [
                { text: (names[at]?.[row] ?? ' ').toUpperCase(), role: 'label' },
              ]),
              ...patchLines(lookOf(reflectance).hex, each, rows - nameRows - wordRows),
              ...(texts[at] ?? []).map((text): Piece[] => [{ text }]),
            ]}
          />
        </Box>
      ))}
    </Box>
  );
}
