/** Parts of the room's screens: large patches and counts as bars, to be read from the back. */
import { Box } from 'ink';
import type { Field, FieldOption, ResultSwatch } from '../../../drills/types.js';
import { cleanText } from '../../../text/sanitize.js';
import { fitText, fitWords, padText, widthOf, wrapText } from '../../../text/wrap.js';
import { lookOf, spokenLook, swatchWords } from '../../../words/look.js';
import { onScale } from '../../kit/fields.js';
import type { Glyphs } from '../../kit/glyphs.js';
import { innerColumns } from '../../kit/layout.js';
import { voiceOf } from '../../kit/look.js';
import { type Piece, Row, Rows } from '../../kit/row.js';
import type { Stage } from '../../kit/stage.js';
import { useSurroundings } from '../../kit/surroundings.js';
import { patchStyle } from '../../kit/theme.js';
import { windowAround } from '../../kit/window.js';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The letter that the room calls a choice by. */
export const letterOf = (index: number): string => LETTERS[index] ?? String(index + 1);

/** Patches as large as the room for them, words under each. */
export function LargePatches({
  swatches,
  rows,
}: {
  readonly swatches: readonly ResultSwatch[];
  readonly rows: number;
}): React.JSX.Element | null {
  const { state } = useSurroundings();
  if (swatches.length === 0) return null;
  const columns = innerColumns(state.size);
  const isFlat = state.colourLevel === 0 || state.settings.screenReader;
  if (isFlat) {
    const lines = swatches.flatMap((swatch) =>
      wrapText(`${cleanText(swatch.label, 60)}: ${swatchWords(swatch, voiceOf(state.settings))}`, columns),
    );
    return (
      <Rows
        lines={lines
          .slice(0, Math.max(rows, swatches.length))
          .map((text): Piece[] => [{ text, role: 'label' }])}
      />
    );
  }
  const each = Math.floor((columns + 1) / swatches.length) - 1;
  const wordRows = 2;
  const patchRows = Math.max(1, rows - 1 - wordRows);
  return (
    <Box height={patchRows + 1 + wordRows} flexShrink={0} overflowY="hidden">
      {swatches.map((swatch) => {
        const { label } = swatch;
        const look = lookOf(swatch.reflectance);
        const words = wrapText(swatchWords(swatch, voiceOf(state.settings)), each).slice(0, wordRows);
        return (
          <Box key={label} flexDirection="column" width={each} marginRight={1} flexShrink={0}>
            <Rows
              lines={[
                [{ text: fitWords(cleanText(label, 60).toUpperCase(), each), role: 'label' }],
                ...Array.from({ length: patchRows }, (): Piece[] => [
                  { text: ' '.repeat(each), style: patchStyle(look.hex) },
                ]),
                ...words.map((text): Piece[] => [{ text }]),
              ]}
            />
          </Box>
        );
      })}
    </Box>
  );
}

/** A count as a bar; any hand at all shows. */
export function handsBar(hands: number, most: number, columns: number, { full }: Glyphs): string {
  if (hands <= 0 || columns <= 0) return '';
  return full.repeat(Math.max(1, Math.round((hands / Math.max(1, most)) * columns)));
}

interface CountLook {
  readonly columns: number;
  readonly glyphs: Glyphs;
  readonly state: Stage;
}

const HANDS_COLUMNS = 5;
const PATCH_COLUMNS = 16;

function optionNote(option: FieldOption, { state }: CountLook): string {
  const look = option.swatch === undefined ? '' : spokenLook(lookOf(option.swatch), voiceOf(state.settings));
  return [look, cleanText(option.note ?? '', 120)].filter(Boolean).join('; ');
}

/** Lines of one choice: letter, patch, label, hands and bar; a note under it where there is room. */
function choiceLines(
  option: FieldOption,
  {
    letter,
    hands,
    most,
    isHere,
    rows,
    labelColumns,
  }: { letter: string; hands: number; most: number; isHere: boolean; rows: number; labelColumns: number },
  look: CountLook,
): Piece[][] {
  const { columns, glyphs, state } = look;
  const hasPatch = option.swatch !== undefined && state.colourLevel > 0;
  const patch: Piece[] =
    hasPatch && option.swatch !== undefined
      ? [{ text: ' '.repeat(PATCH_COLUMNS), style: patchStyle(lookOf(option.swatch).hex) }, { text: '  ' }]
      : [];
  const lead = `${isHere ? glyphs.pointer : ' '} ${letter} `;
  const left = columns - widthOf(lead) - (hasPatch ? PATCH_COLUMNS + 2 : 0);
  const barColumns = Math.max(0, left - labelColumns - HANDS_COLUMNS - 2);
  const head: Piece[] = [
    { text: lead, role: isHere ? 'here' : 'label' },
    ...patch,
    { text: padText(cleanText(option.label, 80), labelColumns), role: isHere ? 'selected' : 'plain' },
    { text: padText(String(hands), HANDS_COLUMNS, 'left'), role: 'label' },
    { text: `  ${handsBar(hands, most, barColumns, glyphs)}` },
  ];
  const plain: Piece[] = [{ text: ' '.repeat(widthOf(lead)) }, ...patch];
  const texts = wrapText(optionNote(option, look), left);
  // Of three lines and more the last stays free: patches that touch are misjudged.
  const room = rows >= 3 ? rows - 2 : rows - 1;
  const notes = texts
    .slice(0, room)
    .map((text, at): Piece[] => [
      { text: ' '.repeat(widthOf(lead)) },
      ...patch,
      { text: at === room - 1 && texts.length > room ? fitText(`${text} ...`, left) : text, role: 'muted' },
    ]);
  const bars: Piece[] = [
    ...plain,
    { text: ' '.repeat(labelColumns + HANDS_COLUMNS + 2) },
    { text: handsBar(hands, most, barColumns, glyphs) },
  ];
  const under = texts.length === 0 ? [bars] : notes;
  const patched = Array.from({ length: Math.max(0, room - under.length) }, () => plain);
  return [head, ...under, ...patched, []].slice(0, rows);
}

interface CountsProps {
  readonly field: Field;
  readonly hands: readonly number[];
  /** Letters of the choices, where some are left out. */
  readonly letters?: readonly string[];
  /** The choice that figures go to; absent: none. */
  readonly option?: number;
  readonly rows: number;
}

/** One row of choices with its hands, each choice as tall as there is room for. */
export function FieldCounts({ field: asked, hands, letters, option, rows }: CountsProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const field = onScale(asked, state.settings.valueScale);
  const columns = innerColumns(state.size);
  const look: CountLook = { columns, glyphs, state };
  const total = hands.reduce((sum, each) => sum + each, 0);
  const most = Math.max(0, ...hands);
  const count = field.options.length;
  if (state.settings.screenReader) {
    const spoken = field.options.map((choice, index) => {
      const words = [cleanText(choice.label, 80), optionNote(choice, look)].filter(Boolean).join(', ');
      const here = index === option ? ' Figures go here.' : '';
      return `${letters?.[index] ?? letterOf(index)}: ${words}. ${hands[index] ?? 0} of ${total} hands.${here}`;
    });
    const lines = [`${field.label}, ${total} hands.`, ...spoken].flatMap((text) => wrapText(text, columns));
    return <Rows lines={lines.map((text) => [{ text }])} />;
  }
  const seen = windowAround(count, option ?? 0, rows - 1);
  const each = Math.min(4, Math.max(1, Math.floor((rows - 1) / Math.max(1, seen.to - seen.from))));
  const labelColumns = Math.min(
    Math.floor(columns * 0.4),
    Math.max(8, ...field.options.map(({ label }) => widthOf(label))),
  );
  const cut = seen.to - seen.from < count ? `, ${seen.from + 1} to ${seen.to} of ${count}` : '';
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Row
        pieces={[
          { text: `${field.label.toUpperCase()}`, role: 'label' },
          { text: `  ${total} hand${total === 1 ? '' : 's'}${cut}`, role: 'muted' },
        ]}
      />
      {field.options.slice(seen.from, seen.to).map((choice, offset) => {
        const index = seen.from + offset;
        const letter = letters?.[index] ?? letterOf(index);
        const part = {
          letter,
          hands: hands[index] ?? 0,
          most,
          isHere: index === option,
          rows: each,
          labelColumns,
        };
        return <Rows key={choice.id} lines={choiceLines(choice, part, look)} />;
      })}
    </Box>
  );
}
