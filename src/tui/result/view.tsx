/** The result: what it was, what was laid, the best; the same in grey; the plane; verdicts and the reason. */
import { Box, Text } from 'ink';
import type { Verdict } from '../../judgement/index.js';
import { cleanText } from '../../text/sanitize.js';
import { fitWords } from '../../text/wrap.js';
import { judgedRows, rowLine } from '../../words/judged.js';
import type { Glyphs } from '../kit/glyphs.js';
import { innerColumns } from '../kit/layout.js';
import { lookOf, spokenLook, voiceOf } from '../kit/look.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { Sheet } from '../kit/sheet.js';
import { useSurroundings } from '../kit/surroundings.js';
import { PatchColumn, patchNames } from '../kit/swatch.js';
import { TextPage } from '../kit/text-page.js';
import type { Judged } from './judged.js';
import { PART_GAP, ROW_HEAD, resultLayout, resultPage, resultTexts, verdictRows } from './layout.js';
import { planePicture } from './plane-picture.js';

/** Cells of the bar of a mark: fewer where the words beside it need the room. */
const markCells = (columns: number): number => (columns < 70 ? 10 : 20);

function markPieces(mark: number, verdict: Verdict, label: string, columns: number, glyphs: Glyphs): Piece[] {
  const cells = markCells(columns);
  const full = Math.round((mark / 100) * cells);
  const head = `${mark} of 100  `;
  const bar = glyphs.full.repeat(full) + glyphs.empty.repeat(cells - full);
  const room = columns - head.length - cells - verdict.length - 8;
  return [
    { text: head, role: 'title' },
    { text: bar, role: 'muted' },
    { text: `  ${glyphs[verdict]} ${verdict}`, role: verdict },
    { text: room > 10 ? `   ${fitWords(label, room, glyphs.cut)}` : '', role: 'plain' },
  ];
}

function Plane({
  screen,
  columns,
  rows,
}: {
  readonly screen: Judged;
  readonly columns: number;
  readonly rows: number;
}): React.JSX.Element | null {
  const { state, world, glyphs } = useSurroundings();
  const { drill, answer } = screen.answered;
  const view = world.kindOf(drill).plane?.(drill, answer);
  if (view === undefined) return null;
  const lines = planePicture(view, { columns, rows: rows - 1, glyphs, scale: state.settings.valueScale });
  const caption = columns < 34 ? 'S start Y yours B best' : 'S start  Y yours  B best  box goal';
  return (
    <Box flexDirection="column" width={columns} flexShrink={0}>
      <Row pieces={[{ text: caption, role: 'muted' }]} />
      <Rows lines={lines} />
    </Box>
  );
}

function Spoken({ screen }: { readonly screen: Judged }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { answered: entry } = screen;
  const voice = voiceOf(state.settings);
  const lines = [
    `${entry.mark} of 100, ${entry.grade.verdict}. You laid: ${cleanText(world.kindOf(entry.drill).label(entry.drill, entry.answer, voice), 200)}.`,
    ...judgedRows(entry.grade, voice).map((row) => `${rowLine(row)}.`),
    ...(entry.kept?.compared === undefined ? [] : [entry.kept.compared]),
    ...entry.grade.swatches.map(
      ({ label, reflectance }) => `${label}: ${spokenLook(lookOf(reflectance), voice)}.`,
    ),
    ...resultTexts(screen, state.settings, false),
  ];
  return (
    <>
      {lines.map((line) => (
        <Text key={line}>{line}</Text>
      ))}
    </>
  );
}

/** A graded answer of any program. */
export function Result({ screen }: { readonly screen: Judged }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  if (state.settings.screenReader) return <Spoken screen={screen} />;
  const { answered: entry } = screen;
  const { grade } = entry;
  const columns = innerColumns(state.size);
  const layout = resultLayout(state, world, screen);
  const label = cleanText(
    world.kindOf(entry.drill).label(entry.drill, entry.answer, voiceOf(state.settings)),
    120,
  );
  const each = Math.min(22, Math.floor((layout.swatchColumns + 1) / Math.max(1, grade.swatches.length)) - 1);
  const { names, nameRows } = patchNames(grade.swatches, {
    columns: each,
    rows: 1,
    level: state.colourLevel,
    cut: glyphs.cut,
  });
  return (
    <>
      <Row pieces={markPieces(entry.mark, grade.verdict, label, columns, glyphs)} />
      <Box height={layout.topRows} flexShrink={0} overflow="hidden">
        {layout.swatchColumns === 0 ? null : (
          <Box
            width={layout.swatchColumns + (layout.planeColumns > 0 || layout.sheet ? PART_GAP : 0)}
            flexShrink={0}
          >
            {grade.swatches.map((swatch, index) => (
              <PatchColumn
                key={swatch.label}
                name={names[index] ?? []}
                nameRows={nameRows}
                reflectance={swatch.reflectance}
                columns={each}
                patchRows={layout.patchRows}
                greyRows={layout.greyRows}
                wordRows={layout.wordRows}
              />
            ))}
          </Box>
        )}
        {layout.sheet === undefined ? null : (
          <Box
            flexDirection="column"
            width={layout.sheet.room + (layout.planeColumns > 0 ? PART_GAP : 0)}
            flexShrink={0}
          >
            <Sheet screen={screen} size={layout.sheet} />
          </Box>
        )}
        {layout.planeColumns > 0 ? (
          <Plane screen={screen} columns={layout.planeColumns} rows={layout.topRows} />
        ) : null}
      </Box>
      <Rows
        lines={verdictRows(state, grade).flatMap(({ part, verdict, lines }) =>
          lines.map((text, index): Piece[] =>
            index > 0
              ? [{ text: `${' '.repeat(ROW_HEAD)}${text}` }]
              : [
                  { text: part.padEnd(7), role: 'muted' },
                  { text: `${glyphs[verdict]} ${verdict.padEnd(5)}`, role: verdict },
                  { text },
                ],
          ),
        )}
      />
      {layout.compared > 0 ? (
        <Row pieces={[{ text: cleanText(entry.kept?.compared ?? '', 120), role: 'title' }]} />
      ) : null}
      {layout.gap > 0 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <TextPage page={resultPage(state, world, screen)} top={screen.top} />
    </>
  );
}
