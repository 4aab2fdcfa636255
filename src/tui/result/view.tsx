/** The result: what it was, what was laid, the best; the same in grey; the plane; verdicts and the reason. */
import { Box, Text } from 'ink';
import type { Grade } from '../../drills/types.js';
import type { Graded } from '../../practice/index.js';
import { judgedRows, rowLine } from '../../words/judged.js';
import { lookOf, spokenLook } from '../../words/look.js';
import type { Glyphs } from '../kit/glyphs.js';
import { innerColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { drillPlane, planePicture } from '../kit/plane-picture.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { PatchColumn, patchNames } from '../kit/swatch.js';
import { TextPage } from '../kit/text-page.js';
import { Sheet, type SheetRoom } from '../sheet/view.js';
import type { Judged } from './judged.js';
import { ladderLines, spokenStep } from './ladder.js';
import {
  laidLabel,
  markCells,
  markText,
  type ResultLayout,
  ROW_HEAD,
  resultLayout,
  resultPage,
  resultTexts,
  verdictRows,
} from './layout.js';
import { PART_GAP } from './places.js';

function markPieces(graded: Graded, label: string, columns: number, glyphs: Glyphs): Piece[] {
  const { mark, grade } = graded;
  const cells = markCells(columns);
  const full = Math.round((mark / 100) * cells);
  const { verdict } = grade;
  return [
    { text: markText(graded), role: 'title' },
    { text: glyphs.full.repeat(full) + glyphs.empty.repeat(cells - full), role: 'muted' },
    { text: `  ${glyphs[verdict]} ${verdict}`, role: verdict },
    { text: label === '' ? '' : `   ${label}`, role: 'plain' },
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
  const lines = planePicture(drillPlane(view), {
    columns,
    rows: rows - 1,
    glyphs,
    scale: state.settings.valueScale,
  });
  const captions = [
    'S start  Y yours  B best  box goal  dots other amounts',
    'S start  Y yours  B best  box goal',
    'S start Y yours B best',
  ];
  const caption = captions.find((text) => text.length <= columns) ?? '';
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
    `${entry.mark} of 100, ${entry.grade.verdict}. You laid: ${laidLabel(world, entry, state.settings)}.`,
    ...judgedRows(entry.grade, voice).map((row) => `${rowLine(row)}.`),
    ...(entry.kept?.compared === undefined ? [] : [entry.kept.compared]),
    ...entry.grade.swatches.map(
      ({ label, reflectance }) => `${label}: ${spokenLook(lookOf(reflectance), voice)}.`,
    ),
    ...(entry.grade.steps ?? []).map((step) => spokenStep(step, voice)),
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

/** The colours of a result: a ladder with all its rungs, or patches in rows. */
function Swatches({
  grade,
  layout,
}: {
  readonly grade: Grade;
  readonly layout: ResultLayout;
}): React.JSX.Element | null {
  const { state, glyphs } = useSurroundings();
  const { each, bands, topRows, swatchColumns } = layout;
  const { swatches, steps = [] } = grade;
  const flat = state.colourLevel === 0;
  if (steps.length > 1)
    return (
      <Box flexDirection="column" width={swatchColumns} flexShrink={0}>
        <Rows
          lines={ladderLines(steps, swatches[0]?.label, {
            columns: each,
            rows: topRows,
            level: state.colourLevel,
            voice: voiceOf(state.settings),
            glyphs,
          })}
        />
      </Box>
    );
  if (swatches.length === 0) return null;
  const across = Math.ceil(swatches.length / bands);
  const rows = Math.floor(topRows / bands);
  return (
    <Box flexDirection="column" width={swatchColumns} flexShrink={0}>
      {Array.from({ length: bands }, (_, band) => {
        const some = swatches.slice(band * across, (band + 1) * across);
        const { names, nameRows } = patchNames(some, {
          columns: each,
          rows: 2,
          level: state.colourLevel,
          cut: glyphs.cut,
        });
        const isBrief = each < 9 || rows < nameRows + 4;
        const left = rows - nameRows - (isBrief ? 1 : 2);
        const wordRows = flat ? Math.max(0, Math.min(3, left)) : left >= 6 ? 2 : 0;
        const greyRows = flat ? 0 : left >= 9 ? 3 : left >= 7 ? 2 : left >= 2 ? 1 : 0;
        return (
          <Box key={some[0]?.label} height={rows} flexShrink={0}>
            {some.map((swatch, index) => (
              <PatchColumn
                key={swatch.label}
                name={names[index] ?? []}
                nameRows={nameRows}
                reflectance={swatch.reflectance}
                columns={each}
                patchRows={flat ? 0 : Math.max(1, left - wordRows - greyRows)}
                greyRows={greyRows}
                wordRows={wordRows}
                valueOnly={isBrief}
              />
            ))}
          </Box>
        );
      })}
    </Box>
  );
}

/** The picture with yours in it, and the best beside it. */
function Pair({ screen, size }: { readonly screen: Judged; readonly size: SheetRoom }): React.JSX.Element {
  return (
    <Box flexShrink={0} marginTop={1}>
      <Box flexDirection="column" width={size.room + PART_GAP} flexShrink={0}>
        <Sheet screen={{ ...screen, ofBest: false }} size={size} />
      </Box>
      <Box flexDirection="column" width={size.room} flexShrink={0}>
        <Sheet screen={{ ...screen, ofBest: true }} size={size} />
      </Box>
    </Box>
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
  const { sheet, isPair, labelLines, planeColumns } = layout;
  const label = labelLines.length > 0 ? '' : laidLabel(world, entry, state.settings);
  return (
    <>
      <Row pieces={markPieces(entry, label, columns, glyphs)} />
      <Rows lines={labelLines.map((text): Piece[] => [{ text: `  ${text}` }])} />
      <Box height={layout.topRows} flexShrink={0} overflowY="hidden">
        {layout.swatchColumns === 0 ? null : <Swatches grade={grade} layout={layout} />}
        {sheet === undefined || isPair ? null : (
          <Box flexDirection="column" width={sheet.room} marginLeft={PART_GAP} flexShrink={0}>
            <Sheet screen={screen} size={sheet} />
          </Box>
        )}
        {planeColumns > 0 ? (
          <Box marginLeft={layout.swatchColumns > 0 ? PART_GAP : 0} flexShrink={0}>
            <Plane screen={screen} columns={planeColumns} rows={layout.topRows} />
          </Box>
        ) : null}
      </Box>
      {sheet !== undefined && isPair ? <Pair screen={screen} size={sheet} /> : null}
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
      <Rows lines={layout.compared.map((text): Piece[] => [{ text, role: 'title' }])} />
      {layout.gap > 0 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <TextPage page={resultPage(state, world, screen, layout)} top={screen.top} />
    </>
  );
}
