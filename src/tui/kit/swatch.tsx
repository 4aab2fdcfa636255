/** A colour with its words and numbers. Where there are no colours, the words are all there is. */
import { Box } from 'ink';
import type { ResultSwatch } from '../../drills/types.js';
import type { Spectrum } from '../../optics/index.js';
import { cleanText } from '../../text/sanitize.js';
import { fitWords, nameLines, widthOf, wrapText } from '../../text/wrap.js';
import { type Look, lookOf, unreadWords } from '../../words/look.js';
import { type Voice, valueWords } from '../../words/voice.js';
import { voiceOf } from './look.js';
import { type Piece, Rows } from './row.js';
import { useSurroundings } from './surroundings.js';
import { patchStyle } from './theme.js';

/** Plain lines of colour. */
export function patchLines(hex: string, columns: number, rows: number): Piece[][] {
  return Array.from({ length: rows }, () => [{ text: ' '.repeat(columns), style: patchStyle(hex) }]);
}

/** Words and numbers of a colour, short lines; where a line has no room for both, the number alone. */
export function factLines(look: Look, voice: Voice, room = Number.POSITIVE_INFINITY): string[] {
  const facts = [
    [valueWords(look.value, voice), look.valueWord],
    [`chroma ${look.chroma.toFixed(0)}`, look.chromaWord],
    look.hueName === 'no hue' ? ['no hue'] : [`hue ${look.hue.toFixed(0)}°`, look.hueName],
  ];
  return facts.map((parts) => {
    const line = parts.join(', ');
    return line.length <= room ? line : (parts[0] ?? '');
  });
}

interface PatchWithFactsProps {
  readonly label: string;
  /** The label has a line of its own; else it leads the words. */
  readonly hasLabel: boolean;
  readonly reflectance: Spectrum;
  readonly columns: number;
  readonly rows: number;
  readonly unread?: ResultSwatch['unread'];
}

/** Columns below which a patch has its words under it. */
const LEAST_BESIDE = 26;

/** A large patch, its words and numbers beside it, or under it in few columns. */
export function PatchWithFacts({
  label,
  hasLabel,
  reflectance,
  columns,
  rows,
  unread,
}: PatchWithFactsProps): React.JSX.Element {
  const { state } = useSurroundings();
  const look = lookOf(reflectance);
  const voice = voiceOf(state.settings);
  const flat = state.colourLevel === 0;
  const under = !flat && columns < LEAST_BESIDE;
  const patchColumns = flat ? 0 : under ? columns : Math.min(36, Math.max(10, Math.floor(columns * 0.36)));
  const room = under ? columns : columns - (flat ? 0 : patchColumns + 2);
  const outside = look.inScreenGamut || flat ? [] : wrapText('nearest this screen has', room);
  const led = (words: string): string => (hasLabel ? words : `${label}: ${words}`);
  const texts =
    unread === 'value'
      ? wrapText(led(unreadWords(look)), room)
      : unread === 'figures'
        ? wrapText(led(look.words), room)
        : flat && rows < 4
          ? wrapText(led([look.words, ...factLines(look, voice)].join('; ')), room)
          : [...wrapText(led(look.words), room), ...factLines(look, voice, room), ...outside];
  const textRows = under ? Math.min(texts.length, 3, rows - 1) : rows;
  const lines = texts
    .slice(0, textRows)
    .map((text, index): Piece[] => [{ text, role: index === 0 ? 'plain' : 'muted' }]);
  const patchRows = under ? rows - lines.length : rows;
  return (
    <Box flexDirection="column" flexShrink={0}>
      {!hasLabel ? null : (
        <Rows lines={wrapText(label.toUpperCase(), columns).map((text) => [{ text, role: 'label' }])} />
      )}
      <Box height={rows} flexShrink={0} flexDirection={under ? 'column' : 'row'}>
        {flat ? null : (
          <Box flexDirection="column" width={patchColumns} marginRight={under ? 0 : 2} flexShrink={0}>
            <Rows lines={patchLines(look.hex, patchColumns, patchRows)} />
          </Box>
        )}
        <Box flexDirection="column" width={room} flexShrink={0}>
          <Rows lines={lines} />
        </Box>
      </Box>
    </Box>
  );
}

/** Signs after the name of a colour that the screen cannot show. */
const OUTSIDE = ' *';

/** A hue in few columns: its last word, for a yellow green is a green. */
const hueWord = (hue: string, columns: number, cut: string): string =>
  widthOf(hue) <= columns ? hue : fitWords(hue.split(' ').at(-1) ?? '', columns, cut);

/** Names over patches side by side, each so many columns wide, and the lines that they take. */
export function patchNames(
  swatches: readonly Pick<ResultSwatch, 'label' | 'reflectance'>[],
  { columns, rows, level, cut }: { columns: number; rows: number; level: number; cut: string },
): { readonly names: readonly (readonly string[])[]; readonly nameRows: number } {
  const isMarked = level > 0 && swatches.some(({ reflectance }) => !lookOf(reflectance).inScreenGamut);
  const room = columns - (isMarked ? OUTSIDE.length : 0);
  const texts = swatches.map(({ label }) => cleanText(label, 40));
  const names = nameLines(texts, room, rows, cut);
  return { names, nameRows: Math.max(1, ...names.map((lines) => lines.length)) };
}

/** Words of a colour in so many lines; where they have no room the first go, for the last names the hue. */
function colourWords(words: string, columns: number, rows: number): string[] {
  if (rows <= 0) return [];
  const lines = wrapText(words, columns);
  const rest = words.slice(words.indexOf(' ') + 1);
  return lines.length <= rows || rest === words ? lines.slice(0, rows) : colourWords(rest, columns, rows);
}

/** What stands under a patch side by side with others. */
export interface PatchText {
  readonly columns: number;
  /** Lines of words under the figures. */
  readonly wordRows: number;
  /** Leaves chroma out where lines are short. */
  readonly valueOnly?: boolean;
  /** What may not be said of it yet. */
  readonly unread?: ResultSwatch['unread'] | undefined;
}

/** The figures and words under a patch, so that no colour is told by hue alone; words that stand for the figures take their lines. */
export function patchText(
  look: Look,
  { columns, wordRows, valueOnly = false, unread }: PatchText,
  voice: Voice,
  cut: string,
): { readonly figures: readonly string[]; readonly words: readonly string[] } {
  if (unread === 'value') return { figures: [hueWord(unreadWords(look), columns, cut)], words: [] };
  if (unread === 'figures')
    return { figures: [], words: colourWords(look.words, columns, wordRows + (valueOnly ? 1 : 2)) };
  const chroma = valueOnly ? [] : [`chroma ${look.chroma.toFixed(0)}`];
  return {
    figures: [valueWords(look.value, voice), ...chroma],
    words: colourWords(look.words, columns, wordRows),
  };
}

interface PatchColumnProps extends PatchText {
  /** Its name, in lines. */
  readonly name: readonly string[];
  /** Lines that the names take; a shorter one is filled up. */
  readonly nameRows: number;
  readonly reflectance: Spectrum;
  readonly patchRows: number;
  readonly greyRows: number;
}

/** One of several patches side by side: the colour, the same in grey, then value, chroma and words. */
export function PatchColumn(props: PatchColumnProps): React.JSX.Element {
  const { name, nameRows, reflectance, columns, patchRows, greyRows } = props;
  const { state, glyphs } = useSurroundings();
  const look = lookOf(reflectance);
  const { figures, words } = patchText(look, props, voiceOf(state.settings), glyphs.cut);
  const mark = look.inScreenGamut || state.colourLevel === 0 ? '' : OUTSIDE;
  const lines = Array.from({ length: nameRows }, (_, at): Piece[] => {
    const text = (name[at] ?? ' ').toUpperCase();
    return [{ text: at === name.length - 1 ? `${text}${mark}` : text, role: 'label' }];
  });
  return (
    <Box flexDirection="column" width={columns} marginRight={1} flexShrink={0}>
      <Rows lines={lines} />
      <Rows lines={patchLines(look.hex, columns, patchRows)} />
      <Rows lines={patchLines(look.grey, columns, greyRows)} />
      <Rows lines={figures.map((text) => [{ text }])} />
      <Rows lines={words.map((text) => [{ text, role: 'muted' }])} />
    </Box>
  );
}
