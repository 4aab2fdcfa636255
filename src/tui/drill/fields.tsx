/** The open choices of a drill: trays of options and lines of steps. */
import { Box } from 'ink';
import type { Answer, Field, FieldOption } from '../../drills/types.js';
import { cleanText } from '../../text/sanitize.js';
import { fitText, fitWords, padText, widthOf, wrapText } from '../../text/wrap.js';
import { type Voice, valueWords } from '../../words/voice.js';
import { chosenIndex } from '../kit/fields.js';
import type { Glyphs } from '../kit/glyphs.js';
import { fieldParts } from '../kit/layout.js';
import { lookOf, voiceOf } from '../kit/look.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { patchStyle } from '../kit/theme.js';
import { windowAround } from '../kit/window.js';

const SWATCH = 4;

interface Sight {
  readonly glyphs: Glyphs;
  readonly level: number;
  readonly voice: Voice;
}

/** What stands for the swatch where there are no colours: "dark red 6.3". */
function wordsFor(option: FieldOption, sight: Sight): string {
  if (option.swatch === undefined) return '';
  const look = lookOf(option.swatch);
  return `${look.words}, ${valueWords(look.value, sight.voice)}`;
}

function optionPieces(
  option: FieldOption,
  state: { chosen: boolean; focused: boolean; number: string },
  labelColumns: number,
  columns: number,
  sight: Sight,
): Piece[] {
  const { glyphs } = sight;
  const role = state.chosen ? 'selected' : 'plain';
  const mark = state.chosen ? (state.focused ? glyphs.pointer : glyphs.chosen) : ' ';
  const swatch: Piece[] =
    option.swatch === undefined || sight.level === 0
      ? []
      : [{ text: ' '.repeat(SWATCH - 1), style: patchStyle(lookOf(option.swatch).hex) }, { text: ' ' }];
  const lead: Piece[] = [
    { text: `${mark} `, role: 'here' },
    { text: state.number, role: 'muted' },
  ];
  const used = 2 + state.number.length + (swatch.length === 0 ? 0 : SWATCH);
  // Without a swatch the label says it, and the note has a line of its own below.
  const note = option.swatch === undefined ? '' : cleanText(option.note ?? '', 120);
  const side = sight.level === 0 ? wordsFor(option, sight) : note;
  const text = cleanText(option.label, 60);
  if (side === '') return [...lead, ...swatch, { text: fitWords(text, columns - used, glyphs.cut), role }];
  const room = Math.min(labelColumns, columns - used);
  const label = padText(fitWords(text, room, glyphs.cut), room);
  const left = columns - used - room - 1;
  return [
    ...lead,
    ...swatch,
    { text: label, role },
    { text: ' ' },
    { text: left > 3 ? fitWords(side, left, glyphs.cut) : '', role: 'muted' },
  ];
}

/** What a field asks, as many whole words as fit. */
const labelOf = ({ label }: Field, columns: number, { cut }: Glyphs): string =>
  fitWords(label.toUpperCase(), columns, cut);

function trayLines(
  field: Field,
  answer: Answer,
  focused: boolean,
  rows: number,
  columns: number,
  sight: Sight,
): Piece[][] {
  const chosen = chosenIndex(field, answer);
  const seen = windowAround(field.options.length, chosen, rows - 1);
  const labelColumns = Math.max(...field.options.map(({ label }) => widthOf(label))) + 1;
  const { glyphs } = sight;
  const more = [seen.moreBefore ? glyphs.upMark : '', seen.moreAfter ? glyphs.downMark : ''].join('');
  const place = field.options.length > rows - 1 ? `  ${chosen + 1} of ${field.options.length} ${more}` : '';
  const label: Piece[] = [
    { text: labelOf(field, columns - widthOf(place), glyphs), role: focused ? 'label' : 'muted' },
    { text: place, role: 'muted' },
  ];
  return [
    label,
    ...field.options.slice(seen.from, seen.to).map((option, offset) => {
      const index = seen.from + offset;
      const number = field.options.length > 1 && index < 9 ? `${index + 1} ` : '  ';
      return optionPieces(
        option,
        { chosen: index === chosen, focused, number },
        labelColumns,
        columns,
        sight,
      );
    }),
  ];
}

/** Options on one line, the chosen one between pointers; a window around it where they do not fit. */
function linePieces(
  field: Field,
  answer: Answer,
  focused: boolean,
  columns: number,
  glyphs: Glyphs,
): Piece[] {
  const chosen = chosenIndex(field, answer);
  const labels = field.options.map(({ label }) => cleanText(label, 40));
  const widest = Math.max(...labels.map(widthOf)) + 3;
  const seen = windowAround(labels.length, chosen, Math.max(1, Math.floor((columns - 2) / widest)));
  const all = labels.reduce((sum, label) => sum + widthOf(label) + 3, 0) <= columns;
  const [from, to] = all ? [0, labels.length] : [seen.from, seen.to];
  const pieces = labels.slice(from, to).map((label, offset): Piece => {
    const isChosen = from + offset === chosen;
    const [open, close] = isChosen ? (focused ? [glyphs.less, glyphs.more] : ['[', ']']) : [' ', ' '];
    return { text: `${open}${label}${close} `, role: isChosen ? 'selected' : 'muted' };
  });
  const cut: Piece = { text: glyphs.cut, role: 'muted' };
  return [...(from > 0 ? [cut] : []), ...pieces, ...(to < labels.length ? [cut] : [])];
}

function lineLines(
  field: Field,
  answer: Answer,
  focused: boolean,
  rows: number,
  columns: number,
  labelColumns: number,
  sight: Sight,
): Piece[][] {
  const label: Piece = {
    text:
      rows === 1 ? padText(field.label.toUpperCase(), labelColumns) : labelOf(field, columns, sight.glyphs),
    role: focused ? 'label' : 'muted',
  };
  const mark: Piece = { text: focused ? `${sight.glyphs.pointer} ` : '  ', role: 'here' };
  if (rows === 1) {
    return [
      [
        mark,
        label,
        { text: ' ' },
        ...linePieces(field, answer, focused, columns - labelColumns - 3, sight.glyphs),
      ],
    ];
  }
  return [[label], [mark, ...linePieces(field, answer, focused, columns - 2, sight.glyphs)]];
}

function foldedLine(field: Field, answer: Answer, columns: number, sight: Sight): Piece[] {
  const option = field.options[chosenIndex(field, answer)];
  if (option === undefined) return [];
  const label: Piece = { text: `  ${field.label.toUpperCase()}  `, role: 'muted' };
  const rest = optionPieces(
    option,
    { chosen: true, focused: false, number: '' },
    30,
    columns - field.label.length - 4,
    sight,
  );
  return [label, ...rest.slice(2)];
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
  const sight: Sight = { glyphs, level: state.colourLevel, voice: voiceOf(state.settings) };
  const parts = fieldParts(fields, focus, columns, rows);
  const labelColumns = Math.max(
    0,
    ...parts.filter((part) => part.rows === 1).map(({ index }) => widthOf(fields[index]?.label ?? '')),
  );
  return (
    <Box flexDirection="column">
      {parts.map(({ index, form, rows: partRows, gap = false }) => {
        const field = fields[index];
        if (field === undefined) return null;
        const focused = index === focus;
        const lines =
          form === 'tray'
            ? trayLines(field, answer, focused, partRows, columns, sight)
            : form === 'line'
              ? lineLines(field, answer, focused, partRows, columns, labelColumns, sight)
              : [foldedLine(field, answer, columns, sight)];
        return <Rows key={field.id} lines={gap ? [[], ...lines] : lines} />;
      })}
    </Box>
  );
}

/** A line or two on what is chosen in the focused field: words, value, Colour Index code, evidence. */
export function ChosenNote({
  field,
  answer,
  columns,
  rows = 1,
}: {
  readonly field: Field | undefined;
  readonly answer: Answer;
  readonly columns: number;
  readonly rows?: number;
}): React.JSX.Element | null {
  const { state, glyphs } = useSurroundings();
  const option = field?.options[chosenIndex(field, answer)];
  if (option === undefined) return null;
  const sight: Sight = { glyphs, level: state.colourLevel, voice: voiceOf(state.settings) };
  const text = [wordsFor(option, sight), cleanText(option.note ?? '', 160)]
    .filter(Boolean)
    .join(` ${glyphs.dot} `);
  const lines = wrapText(text, columns);
  const shown = lines.slice(0, rows);
  if (shown.length < lines.length)
    shown[rows - 1] = fitText(lines.slice(rows - 1).join(' '), columns, glyphs.cut);
  return <Rows lines={shown.map((line): Piece[] => [{ text: line, role: 'muted' }])} />;
}
