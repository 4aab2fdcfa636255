/** The end of a set: in words, as a picture against the time before, and every answer to open again. */
import { Text } from 'ink';
import { type FigureRow, figureRows } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { fitWords, padText, wrapText } from '../../text/wrap.js';
import { Frame } from '../kit/frame.js';
import type { Glyphs } from '../kit/glyphs.js';
import { frameParts, textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { notesOf } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import type { SetRun, SummaryScreen } from '../kit/state.js';
import { useSurroundings } from '../kit/surroundings.js';
import { windowAround } from '../kit/window.js';
import { summaryTexts, wholeTexts } from './texts.js';

/** Columns of a bar and of the words beside it. */
const BAR = 24;
const WORDS = 36;

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

/** The figures as bars, this time over the time before; each bar and its number come from one rounded value. */
function figureBars(rows: readonly FigureRow[], glyphs: Glyphs, columns: number): Piece[][] {
  const sight: BarSight = { glyphs, length: Math.max(8, Math.min(BAR, columns - WORDS)) };
  return rows.flatMap(({ label, now, before, full }) => [
    barLine(label, 'this time', now.value / full, now.text, sight),
    ...(before === undefined ? [] : [barLine('', 'before', before.value / full, before.text, sight)]),
  ]);
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
      text: fitWords(
        `${cleanText(entry.drill.title, 80)}: ${label}`,
        columns - 15 - (held ? 13 : 0),
        glyphs.cut,
      ),
      role: chosen ? 'selected' : 'plain',
    },
    { text: held ? '  not yet seen' : '', role: 'muted' },
  ];
}

export function Summary({ screen }: { readonly screen: SummaryScreen }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const { set } = state;
  const columns = textColumns(state.size);
  if (set === undefined) return <Frame title="The set">{null}</Frame>;
  const { attempts, summary } = set;
  const title =
    set.index >= set.items.length ? 'The set is done' : `The set so far, ${set.index} of ${set.items.length}`;
  const rows = summary === undefined ? [] : figureRows(summary.now, summary.before);
  const bars = figureBars(rows, glyphs, columns);
  const body = frameParts(state, notesOf(state).length).body;
  const { head, mend, more } = summaryTexts(set, bars.length > 0 && !state.settings.screenReader);
  const top = head.flatMap((text) => wrapText(text, columns));
  const spaces = bars.length > 0 && mend.length + more.length > 0 ? 2 : 1;
  const room = body - top.length - bars.length - spaces;
  // The answers keep three lines beside what is to be mended, and eight beside what else there is to say.
  const toMend = wholeTexts(mend, columns, room - Math.min(3, attempts.length));
  const others = wholeTexts(more, columns, room - toMend.length - Math.min(8, attempts.length));
  const under = [...toMend, ...others];
  const left = Math.max(1, body - top.length - bars.length - under.length - spaces);
  const seen = windowAround(attempts.length, screen.selected, left);
  const answers = attempts.slice(seen.from, seen.to).map((attempt, offset) => {
    const place = seen.from + offset;
    const label = cleanText(
      world
        .kindOf(attempt.entry.drill)
        .label(attempt.entry.drill, attempt.entry.answer, voiceOf(state.settings)),
      300,
    );
    // What is read aloud has no columns to keep to.
    const room = state.settings.screenReader ? Number.POSITIVE_INFINITY : columns;
    return answerPieces(attempt, place === screen.selected, set.held.includes(place), room, glyphs, label);
  });
  if (state.settings.screenReader) {
    const spoken = answers[screen.selected - seen.from]
      ?.slice(1)
      .map(({ text }) => text)
      .join('')
      .replace(/\s+/g, ' ')
      .trim();
    const lines = [
      ...head,
      ...mend,
      ...more,
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
      <Rows lines={top.map((text, index): Piece[] => [{ text, role: index === 0 ? 'title' : 'plain' }])} />
      <Rows lines={bars} />
      {spaces > 1 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Rows lines={under.map((text): Piece[] => [{ text }])} />
      <Row pieces={[{ text: ' ' }]} />
      <Rows lines={answers} />
    </Frame>
  );
}
