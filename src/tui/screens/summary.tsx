/** The end of a set: in words, as a picture against the time before, and every answer to open again. */
import { Text } from 'ink';
import type { Figures } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { fitText, padText, wrapText } from '../../text/wrap.js';
import { Frame } from '../components/frame.js';
import { type Piece, Row, Rows } from '../components/row.js';
import type { Glyphs } from '../glyphs.js';
import { frameParts, innerColumns } from '../layout.js';
import { notesOf } from '../notes.js';
import type { SetRun, SummaryScreen } from '../state.js';
import { useSurroundings } from '../surroundings.js';
import { windowAround } from '../window.js';

/** Columns of a bar and of the words beside it. */
const BAR = 24;
const WORDS = 36;
/** Steps at which the bar of value error is full. */
const WORST_STEPS = 3;

interface BarSight {
  readonly glyphs: Glyphs;
  /** Columns of a full bar. */
  readonly length: number;
}

function barLine(label: string, when: string, share: number, text: string, sight: BarSight): Piece[] {
  const { glyphs, length } = sight;
  const full = Math.max(0, Math.min(length, Math.round(share * length)));
  return [
    { text: padText(label, 13), role: 'label' },
    { text: padText(when, 11), role: 'muted' },
    {
      text: glyphs.full.repeat(full) + glyphs.empty.repeat(length - full),
      role: when === 'before' ? 'muted' : 'plain',
    },
    { text: `  ${text}` },
  ];
}

/** Value error and chroma kept as bars, this time over the time before. */
export function figureBars(
  now: Figures,
  before: Figures | undefined,
  glyphs: Glyphs,
  columns: number,
): Piece[][] {
  const sight: BarSight = { glyphs, length: Math.max(8, Math.min(BAR, columns - WORDS)) };
  const pair = (
    label: string,
    is: number | undefined,
    was: number | undefined,
    full: number,
    write: (x: number) => string,
  ) =>
    is === undefined
      ? []
      : [
          barLine(label, 'this time', is / full, write(is), sight),
          ...(was === undefined ? [] : [barLine('', 'before', was / full, write(was), sight)]),
        ];
  return [
    ...pair('value error', now.valueError, before?.valueError, WORST_STEPS, (x) => `${x.toFixed(1)} steps`),
    ...pair('chroma kept', now.chromaKept, before?.chromaKept, 1, (x) => `${Math.round(x * 100)} %`),
  ];
}

/** The set in words: the whole, then the families, then what to do next. */
export function summaryTexts({ attempts, summary }: SetRun): string[] {
  if (attempts.length === 0) return ['Nothing was answered.'];
  if (summary === undefined) return [`${attempts.length} answered.`];
  return [...summary.lines, ...summary.next.map((line) => `Next: ${line}`)].map((line) =>
    cleanText(line, 300),
  );
}

function answerPieces(
  { entry }: SetRun['attempts'][number],
  chosen: boolean,
  held: boolean,
  columns: number,
  glyphs: Glyphs,
  label: string,
): Piece[] {
  const { verdict } = entry.grade;
  return [
    { text: chosen ? `${glyphs.pointer} ` : '  ', role: 'here' },
    { text: `${String(entry.mark).padStart(3)}  ` },
    { text: `${glyphs[verdict]} ${verdict.padEnd(6)}`, role: verdict },
    {
      text: fitText(
        `${cleanText(entry.drill.title, 80)}: ${label}`,
        columns - 15 - (held ? 13 : 0),
        glyphs.cut,
      ),
      role: chosen ? 'selected' : 'plain',
    },
    { text: held ? '  not yet seen' : '', role: 'muted' },
  ];
}

/** As many whole texts as fit, broken to the width. */
function wholeTexts(texts: readonly string[], columns: number, rows: number): string[] {
  const lines: string[] = [];
  for (const text of texts) {
    const more = wrapText(text, columns);
    if (lines.length > 0 && lines.length + more.length > rows) break;
    lines.push(...more);
  }
  return lines;
}

export function Summary({ screen }: { readonly screen: SummaryScreen }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const { set } = state;
  const columns = innerColumns(state.size);
  if (set === undefined) return <Frame title="The set">{null}</Frame>;
  const { attempts, summary } = set;
  const title =
    set.index >= set.items.length ? 'The set is done' : `The set so far, ${set.index} of ${set.items.length}`;
  const bars = summary === undefined ? [] : figureBars(summary.now, summary.before, glyphs, columns);
  const body = frameParts(state, notesOf(state).length).body;
  // The answers keep at least four lines; the words give way first.
  const room = body - bars.length - (bars.length > 0 ? 1 : 0) - 1 - Math.min(4, attempts.length);
  const texts = wholeTexts(summaryTexts(set), columns, Math.max(1, room));
  const rows = Math.max(1, body - texts.length - bars.length - (bars.length > 0 ? 2 : 1));
  const seen = windowAround(attempts.length, screen.selected, rows);
  const answers = attempts.slice(seen.from, seen.to).map((attempt, offset) => {
    const place = seen.from + offset;
    const label = cleanText(
      world.kindOf(attempt.entry.drill).label(attempt.entry.drill, attempt.entry.answer),
      120,
    );
    return answerPieces(attempt, place === screen.selected, set.held.includes(place), columns, glyphs, label);
  });
  if (state.settings.screenReader) {
    const spoken = answers[screen.selected - seen.from]
      ?.slice(1)
      .map(({ text }) => text)
      .join('')
      .replace(/\s+/g, ' ')
      .trim();
    const lines = [
      ...summaryTexts(set),
      `Answer ${screen.selected + 1} of ${attempts.length}: ${spoken ?? ''}`,
    ];
    return (
      <Frame title={title}>
        <Text>{lines.join('\n')}</Text>
      </Frame>
    );
  }
  return (
    <Frame title={title}>
      <Rows lines={texts.map((text): Piece[] => [{ text }])} />
      <Row pieces={[{ text: ' ' }]} />
      <Rows lines={bars} />
      {bars.length > 0 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Rows lines={answers} />
    </Frame>
  );
}
