/** Why an answer comes out as it does: films as curves, or colours side by side, and what they show in words. */
import { Box, Text } from 'ink';
import type { ResultSwatch, Why as WhyOf } from '../../drills/types.js';
import type { Graded } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import { lookOf, spokenLook } from '../../words/look.js';
import { sayAll } from '../../words/tell.js';
import type { Voice } from '../../words/voice.js';
import { textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { PatchColumn, patchLines, patchNames } from '../kit/swatch.js';
import { curveSign, curvesPicture } from './curves.js';

/** Narrowest column of a patch that still holds its words, and the lines that it takes. */
const NARROWEST = 15;
const PATCH_ROWS = 9;
/** Fewest lines in which curves can be told apart. */
const FEWEST = 7;
/** Widest and tallest plot that still reads as one picture. */
const WIDEST = 96;
const TALLEST = 22;

function Spoken({
  why,
  texts,
}: {
  readonly why: WhyOf;
  readonly texts: readonly string[];
}): React.JSX.Element {
  const { state } = useSurroundings();
  const colours = [...why.films, ...(why.patches ?? [])].map(
    ({ label, reflectance }) =>
      `${cleanText(label, 120).replaceAll(' = ', ', the same as ')}: ${spokenLook(lookOf(reflectance), voiceOf(state.settings))}.`,
  );
  return (
    <>
      {[...colours, ...texts].map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines never move, and two may be alike
        <Text key={at}>{line}</Text>
      ))}
    </>
  );
}

/** Patches in a row where they have the room, a line each where they have not. */
function Patches({
  patches,
  columns,
  rows,
}: {
  patches: readonly ResultSwatch[];
  columns: number;
  rows: number;
}) {
  const { state, glyphs } = useSurroundings();
  const each = Math.min(24, Math.floor((columns + 1) / Math.max(1, patches.length)) - 1);
  if (each < NARROWEST || rows < PATCH_ROWS || state.colourLevel === 0)
    return (
      <Rows
        lines={listedLines(patches, {
          columns,
          level: state.colourLevel,
          voice: voiceOf(state.settings),
          signs: false,
        })}
      />
    );
  const { names, nameRows } = patchNames(patches, {
    columns: each,
    rows: rows > PATCH_ROWS ? 2 : 1,
    level: state.colourLevel,
    cut: glyphs.cut,
  });
  return (
    <Box flexShrink={0}>
      {patches.map(({ reflectance }, at) => (
        <PatchColumn
          // biome-ignore lint/suspicious/noArrayIndexKey: patches never move, and two may be alike
          key={at}
          name={names[at] ?? []}
          nameRows={nameRows}
          reflectance={reflectance}
          columns={each}
          patchRows={3}
          greyRows={2}
          wordRows={2}
        />
      ))}
    </Box>
  );
}

interface ListLook {
  readonly columns: number;
  readonly level: number;
  readonly voice: Voice;
  /** Signs of the curves before the colours. */
  readonly signs: boolean;
}

/** Each colour: its sign among the curves, its patch, its name and its figures, these under it where they have no room. */
function listedLines(films: readonly ResultSwatch[], { columns, level, voice, signs }: ListLook): Piece[][] {
  return films.flatMap(({ label, reflectance }, at): Piece[][] => {
    const look = lookOf(reflectance);
    const lead: Piece[] = [
      ...(signs ? [{ text: `${curveSign(at)} `, role: 'key' } as const] : []),
      ...(level === 0 ? [] : [...(patchLines(look.hex, 3, 1)[0] ?? []), { text: ' ' }]),
    ];
    const set = (signs ? 2 : 0) + (level === 0 ? 0 : 4);
    const [name, figures] = [`${cleanText(label, 120)}: `, spokenLook(look, voice)];
    if (set + widthOf(name) + widthOf(figures) <= columns)
      return [[...lead, { text: name }, { text: figures, role: 'muted' }]];
    return wrapText(name + figures, columns - set).map((text, line) =>
      line === 0 ? [...lead, { text }] : [{ text: ' '.repeat(set) }, { text, role: 'muted' }],
    );
  });
}

export function Why({ drill, answer }: Pick<Graded, 'drill' | 'answer'>): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const why = world.kindOf(drill).why?.(drill, answer);
  const columns = textColumns(state.size);
  if (why === undefined) return <Text>The explanation on the result is all there is.</Text>;
  const texts = sayAll(why.told, voiceOf(state.settings)).map((text) => cleanText(text, 400));
  if (state.settings.screenReader) return <Spoken why={why} texts={texts} />;
  const lines = texts.flatMap((text) => wrapText(text, columns));
  const body = bodyRows(state);
  const listed = listedLines(why.films, {
    columns,
    level: state.colourLevel,
    voice: voiceOf(state.settings),
    signs: true,
  });
  const left = body - lines.length - listed.length - 2;
  const rows = Math.min(TALLEST, left);
  const hasCurves = why.films.length > 0 && rows >= FEWEST;
  const gap = <Box height={1} flexShrink={0} />;
  return (
    <>
      {hasCurves ? (
        <Rows lines={curvesPicture(why, { columns: Math.min(columns, WIDEST), rows, glyphs })} />
      ) : null}
      {hasCurves ? gap : null}
      <Rows lines={listed} />
      {why.patches === undefined ? null : (
        <Patches patches={why.patches} columns={columns} rows={body - lines.length - 1} />
      )}
      {gap}
      <Rows lines={lines.map((text): Piece[] => [{ text }])} />
    </>
  );
}
