/** The open choices of a drill: trays of options and lines of steps. */
import { Box } from 'ink';
import type { Answer, Field, FieldOption } from '../../drills/types.js';
import { cleanText } from '../../text/sanitize.js';
import { padText, widthOf, wrapText } from '../../text/wrap.js';
import { atStrength } from '../../words/laid.js';
import { lookOf } from '../../words/look.js';
import { type Voice, valueWords } from '../../words/voice.js';
import {
  type FieldPart,
  fieldParts,
  lineBreaks,
  OPTION_LEAD,
  optionLines,
  optionName,
  SWATCH,
} from '../kit/field-parts.js';
import { chosenIndex, showsAs } from '../kit/fields.js';
import type { Glyphs } from '../kit/glyphs.js';
import { voiceOf } from '../kit/look.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { patchStyle } from '../kit/theme.js';
import { windowOfLines } from '../kit/window.js';

interface Sight {
  readonly glyphs: Glyphs;
  readonly level: number;
  readonly voice: Voice;
  readonly columns: number;
}

/** What stands for the swatch where there are no colours: "dark red, step 6.3 at 30 %". */
function wordsFor({ swatch, swatchStrength }: FieldOption, voice: Voice): string {
  if (swatch === undefined) return '';
  const look = lookOf(swatch);
  return `${look.words}, ${valueWords(look.value, voice)}${atStrength(swatchStrength)}`;
}

/** What is said of an option under the choices: its colour, Colour Index code, what is known of it, what it means. */
const noteOf = (option: FieldOption, voice: Voice, dot: string): string =>
  [wordsFor(option, voice), cleanText(option.note ?? '', 160)].filter(Boolean).join(` ${dot} `);

/** A piece of its colour before an option. */
const swatchPieces = ({ swatch }: FieldOption, level: number): Piece[] =>
  swatch === undefined || level === 0
    ? []
    : [{ text: ' '.repeat(SWATCH - 1), style: patchStyle(lookOf(swatch).hex) }, { text: ' ' }];

/** An option of a tray: its name, and beside it what of the rest has room in full. */
function optionRows(
  option: FieldOption,
  state: { chosen: boolean; focused: boolean; number: string },
  labelColumns: number,
  sight: Sight,
): Piece[][] {
  const { glyphs, columns, level, voice } = sight;
  const role = state.chosen ? 'selected' : 'plain';
  const mark = state.chosen ? (state.focused ? glyphs.pointer : glyphs.chosen) : ' ';
  const swatch = swatchPieces(option, level);
  const lead: Piece[] = [
    { text: `${mark} `, role: 'here' },
    { text: state.number, role: 'muted' },
    ...swatch,
  ];
  const [first = '', ...more] = optionLines(option, columns);
  const set = ' '.repeat(OPTION_LEAD + (swatch.length === 0 ? 0 : SWATCH));
  const rest = more.map((text): Piece[] => [{ text: `${set}${text}`, role }]);
  // Without a swatch the name says it, and the note has a line of its own below.
  const sides =
    option.swatch === undefined
      ? []
      : level === 0
        ? [wordsFor(option, voice), lookOf(option.swatch).words]
        : [cleanText(option.note ?? '', 120)];
  const left = columns - set.length - labelColumns - 1;
  const side = rest.length > 0 ? undefined : sides.find((text) => widthOf(text) <= left);
  if (side === undefined) return [[...lead, { text: first, role }], ...rest];
  return [[...lead, { text: padText(first, labelColumns), role }, { text: ` ${side}`, role: 'muted' }]];
}

/** What a field asks, in lines. */
const labelRows = ({ label }: Field, focused: boolean, columns: number): Piece[][] =>
  wrapText(label, columns).map((line): Piece[] => [
    { text: line.toUpperCase(), role: focused ? 'label' : 'muted' },
  ]);

function trayRows(field: Field, answer: Answer, focused: boolean, part: FieldPart, sight: Sight): Piece[][] {
  const { glyphs, columns } = sight;
  const chosen = chosenIndex(field, answer);
  const heights = field.options.map((option) => optionLines(option, columns).length);
  const isWhole =
    heights.reduce((sum, height) => sum + height, labelRows(field, focused, columns).length) <= part.rows;
  const label = labelRows(field, focused, isWhole ? columns : columns - 13);
  const seen = windowOfLines(heights, chosen, isWhole ? Number.POSITIVE_INFINITY : part.rows - label.length);
  const more = [seen.moreBefore ? glyphs.upMark : '', seen.moreAfter ? glyphs.downMark : ''].join('');
  const place = seen.moreBefore || seen.moreAfter ? `  ${chosen + 1} of ${heights.length} ${more}` : '';
  label.at(-1)?.push({ text: place, role: 'muted' });
  const labelColumns = Math.max(...field.options.map((option) => widthOf(optionName(option)))) + 1;
  return [
    ...label,
    ...field.options.slice(seen.from, seen.to).flatMap((option, offset) => {
      const index = seen.from + offset;
      const number = field.options.length > 1 && index < 9 ? `${index + 1} ` : '  ';
      return optionRows(option, { chosen: index === chosen, focused, number }, labelColumns, sight);
    }),
  ];
}

/** A row of a field: what it asks beside what can be chosen, where that has room, else above it. */
function besideLabel(
  field: Field,
  focused: boolean,
  { labelColumns }: FieldPart,
  lines: readonly Piece[][],
  { glyphs, columns }: Sight,
): Piece[][] {
  const mark: Piece = { text: focused ? `${glyphs.pointer} ` : '  ', role: 'here' };
  const role = focused ? 'label' : 'muted';
  const set: Piece = { text: '  ' };
  if (labelColumns === undefined)
    return [
      ...labelRows(field, focused, columns),
      ...lines.map((line, at) => [at === 0 ? mark : set, ...line]),
    ];
  return lines.map((line, at) =>
    at === 0
      ? [mark, { text: `${padText(field.label.toUpperCase(), labelColumns)} `, role }, ...line]
      : [{ text: ' '.repeat(labelColumns + 3) }, ...line],
  );
}

/** An option between signs where it is chosen. */
function stepPiece(option: FieldOption, isChosen: boolean, focused: boolean, glyphs: Glyphs): Piece {
  const [open, close] = !isChosen ? [' ', ' '] : focused ? [glyphs.less, glyphs.more] : ['[', ']'];
  return { text: `${open}${optionName(option)}${close}`, role: isChosen ? 'selected' : 'muted' };
}

/** Options side by side, the chosen one between signs. */
function lineRows(field: Field, answer: Answer, focused: boolean, part: FieldPart, sight: Sight): Piece[][] {
  const chosen = chosenIndex(field, answer);
  const room = sight.columns - (part.labelColumns === undefined ? 2 : part.labelColumns + 3);
  const lines = lineBreaks(field, room).map((indexes) =>
    indexes.flatMap((index, at): Piece[] => [
      ...(at === 0 ? [] : [{ text: ' ' }]),
      stepPiece(field.options[index] as FieldOption, index === chosen, focused, sight.glyphs),
    ]),
  );
  return besideLabel(field, focused, part, lines, sight);
}

/** Only what is chosen. */
function foldedRows(field: Field, answer: Answer, part: FieldPart, sight: Sight): Piece[][] {
  const option = field.options[chosenIndex(field, answer)];
  if (option === undefined) return [];
  if (showsAs(field) === 'line')
    return besideLabel(field, false, part, [[stepPiece(option, true, false, sight.glyphs)]], sight);
  const swatch = swatchPieces(option, sight.level);
  const name = optionName(option);
  const label = part.labelColumns ?? 0;
  const fits = 2 + label + 1 + widthOf(name) + (swatch.length === 0 ? 0 : SWATCH) <= sight.columns;
  const lines = part.labelColumns === undefined ? wrapText(name, sight.columns - OPTION_LEAD) : [name];
  const set = part.labelColumns === undefined ? '  ' : '';
  return besideLabel(
    field,
    false,
    part,
    lines.map((text) => [...(fits ? swatch : []), { text: `${set}${text}`, role: 'selected' }]),
    sight,
  );
}

interface FieldsProps {
  readonly fields: readonly Field[];
  readonly answer: Answer;
  readonly focus: number;
  readonly columns: number;
  readonly rows: number;
}

/** All fields, in as many lines as there are. */
export function Fields({ fields, answer, focus, columns, rows }: FieldsProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const sight: Sight = { glyphs, level: state.colourLevel, voice: voiceOf(state.settings), columns };
  const { parts, before, after } = fieldParts(fields, focus, columns, rows);
  const more = [
    ...(before > 0 ? [`${glyphs.upMark} ${before}`] : []),
    ...(after > 0 ? [`${glyphs.downMark} ${after}`] : []),
  ].join('  ');
  return (
    <Box flexDirection="column">
      {parts.map((part) => {
        const field = fields[part.index];
        if (field === undefined) return null;
        const focused = part.index === focus;
        const lines =
          part.form === 'tray'
            ? trayRows(field, answer, focused, part, sight)
            : part.form === 'line'
              ? lineRows(field, answer, focused, part, sight)
              : foldedRows(field, answer, part, sight);
        return <Rows key={field.id} lines={part.gap === true ? [[], ...lines] : lines} />;
      })}
      {more === '' ? null : (
        <Rows
          lines={[
            [
              { text: `  ${more} more: `, role: 'muted' },
              { text: 'Tab', role: 'key' },
            ],
          ]}
        />
      )}
    </Box>
  );
}

/** Lines for the note on what is chosen in a field: as many as its longest takes, so that walking moves nothing. */
export const noteLines = (field: Field | undefined, columns: number, voice: Voice): number =>
  Math.max(
    0,
    ...(field?.options.map((option) => wrapText(noteOf(option, voice, '.'), columns).length) ?? []),
  );

/** What is chosen in the focused field: words, value, Colour Index code, evidence. */
export function ChosenNote({
  field,
  answer,
  columns,
  rows,
}: {
  readonly field: Field | undefined;
  readonly answer: Answer;
  readonly columns: number;
  /** Lines that it takes, filled up with blank ones. */
  readonly rows: number;
}): React.JSX.Element | null {
  const { state, glyphs } = useSurroundings();
  const option = field?.options[chosenIndex(field, answer)];
  if (option === undefined) return null;
  const lines = wrapText(noteOf(option, voiceOf(state.settings), glyphs.dot), columns);
  return (
    <Rows
      lines={Array.from({ length: rows }, (_, at): Piece[] => [{ text: lines[at] ?? ' ', role: 'muted' }])}
    />
  );
}
