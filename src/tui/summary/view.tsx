/** The end of a set: in words, as a picture against the time before, and every answer to open again. */
import { Text } from 'ink';
import { type Answered, figureRows } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { fitWords, widthOf, wrapText } from '../../text/wrap.js';
import type { Glyphs } from '../kit/glyphs.js';
import { textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { type Window, windowAround } from '../kit/window.js';
import type { SetRun } from '../practice/state.js';
import { figureBars } from './bars.js';
import { summaryTexts, wholeTexts } from './texts.js';

function answerPieces(
  answered: Answered,
  chosen: boolean,
  held: boolean,
  columns: number,
  glyphs: Glyphs,
  label: string,
): Piece[] {
  const { verdict } = answered.grade;
  return [
    { text: chosen ? `${glyphs.pointer} ` : '  ', role: 'here' },
    { text: `${String(answered.mark).padStart(3)}  ` },
    { text: `${glyphs[verdict]} ${verdict.padEnd(6)}`, role: verdict },
    {
      text: fitWords(
        `${cleanText(answered.drill.title, 80)}: ${label}`,
        columns - 17 - (held ? 13 : 0),
        glyphs.cut,
      ),
      role: chosen ? 'selected' : 'plain',
    },
    { text: held ? '  not yet seen' : '', role: 'muted' },
  ];
}

/** The answers that are seen, with a sign where there are more. */
function marked(lines: readonly Piece[][], seen: Window, glyphs: Glyphs, columns: number): Piece[][] {
  return lines.map((pieces, at) => {
    const isMore = (at === 0 && seen.moreBefore) || (at === lines.length - 1 && seen.moreAfter);
    if (!isMore) return pieces;
    const sign = at === 0 && seen.moreBefore ? glyphs.upMark : glyphs.downMark;
    const used = pieces.reduce((sum, { text }) => sum + widthOf(text), 0);
    return [...pieces, { text: `${' '.repeat(Math.max(0, columns - used - 2))} ${sign}`, role: 'key' }];
  });
}

export function Summary({
  set,
  selected,
}: {
  readonly set: SetRun;
  readonly selected: number;
}): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const columns = textColumns(state.size);
  const { answers: attempts, summary } = set;
  const rows = summary === undefined ? [] : figureRows(summary.now, summary.before);
  const bars = figureBars(rows, glyphs, columns);
  const body = bodyRows(state);
  const { head, mend, more } = summaryTexts(set, bars.length > 0 && !state.settings.screenReader);
  const top = head.flatMap((text) => wrapText(text, columns));
  const spaces = bars.length > 0 && mend.length + more.length > 0 ? 2 : 1;
  const room = body - top.length - bars.length - spaces;
  // The answers keep three lines beside what is to be mended, and eight beside what else there is to say.
  const toMend = wholeTexts(mend, columns, room - Math.min(3, attempts.length));
  const others = wholeTexts(more, columns, room - toMend.length - Math.min(8, attempts.length));
  const under = [...toMend, ...others];
  const left = Math.max(1, body - top.length - bars.length - under.length - spaces);
  const seen = windowAround(attempts.length, selected, left);
  const answers = attempts.slice(seen.from, seen.to).map((attempt, offset) => {
    const place = seen.from + offset;
    const { drill, answer } = attempt;
    const label = cleanText(world.kindOf(drill).label(drill, answer, voiceOf(state.settings)), 300);
    // What is read aloud has no columns to keep to.
    const room = state.settings.screenReader ? Number.POSITIVE_INFINITY : columns;
    return answerPieces(attempt, place === selected, set.held.includes(place), room, glyphs, label);
  });
  if (state.settings.screenReader) {
    const spoken = answers[selected - seen.from]
      ?.slice(1)
      .map(({ text }) => text)
      .join('')
      .replace(/\s+/g, ' ')
      .trim();
    const lines = [
      ...head,
      ...mend,
      ...more,
      `Answer ${selected + 1} of ${attempts.length}: ${spoken ?? ''}`,
    ];
    return <Text>{lines.join('\n')}</Text>;
  }
  return (
    <>
      <Rows lines={top.map((text, index): Piece[] => [{ text, role: index === 0 ? 'title' : 'plain' }])} />
      <Rows lines={bars} />
      {spaces > 1 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Rows lines={under.map((text): Piece[] => [{ text }])} />
      <Row pieces={[{ text: ' ' }]} />
      <Rows lines={marked(answers, seen, glyphs, columns)} />
    </>
  );
}
