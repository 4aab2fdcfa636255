/** A drill: the scene, the start, the goal and the open choices. What it will give is not shown: predicting is the exercise. */
import { Box } from 'ink';
import type { ResultSwatch } from '../../drills/types.js';
import { cleanText } from '../../text/sanitize.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import { onScale } from '../kit/fields.js';
import { type Glyphs, inAscii } from '../kit/glyphs.js';
import { chromaBar, legend, staircase } from '../kit/goal-picture.js';
import { textColumns } from '../kit/layout.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { PatchColumn, PatchWithFacts, patchNames } from '../kit/swatch.js';
import { Sheet } from '../sheet/view.js';
import { bandsOf } from './beside.js';
import { ChosenNote, Fields } from './fields.js';
import { type DrillLayout, drillLayout, GAP_COLUMNS } from './layout.js';
import type { Question } from './question.js';
import { SpokenDrill } from './spoken.js';

interface PartProps {
  readonly screen: Question;
  readonly layout: DrillLayout;
}

/** The colours that the question shows: one large, or several side by side. */
function Given({ screen, layout }: PartProps): React.JSX.Element {
  const { world } = useSurroundings();
  const given = world.kindOf(screen.drill).given(screen.drill);
  const { questionColumns: columns, givenRows: rows, labelRows } = layout;
  const [only] = given;
  if (only !== undefined && given.length === 1) {
    return (
      <PatchWithFacts
        label={cleanText(only.label, 60)}
        hasLabel={labelRows > 0}
        reflectance={only.reflectance}
        columns={columns}
        rows={rows}
        {...(only.unread === undefined ? {} : { unread: only.unread })}
      />
    );
  }
  const bands = bandsOf(given, columns);
  const across = Math.ceil(given.length / bands);
  const each = Math.min(24, Math.floor((columns + 1) / across) - 1);
  const bandRows = Math.floor(rows / bands);
  return (
    <Box flexDirection="column" flexShrink={0} height={rows} overflowY="hidden">
      {Array.from({ length: bands }, (_, band) => (
        <PatchBand
          key={given[band * across]?.label}
          swatches={given.slice(band * across, (band + 1) * across)}
          columns={each}
          rows={bandRows}
          isBrief={!layout.beside}
        />
      ))}
    </Box>
  );
}

interface BandProps {
  readonly swatches: readonly ResultSwatch[];
  /** Of each patch. */
  readonly columns: number;
  readonly rows: number;
  /** Leaves chroma and words out. */
  readonly isBrief: boolean;
}

/** Lines from which a patch and its figures leave three for its name. */
const TALL_BAND = 7;

/** Patches side by side. */
function PatchBand({ swatches, columns, rows, isBrief }: BandProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const flat = state.colourLevel === 0;
  const { names, nameRows } = patchNames(swatches, {
    columns,
    rows: rows < TALL_BAND ? 2 : 3,
    level: state.colourLevel,
    cut: glyphs.cut,
  });
  const facts = isBrief || rows < nameRows + 4 ? 1 : 2;
  return (
    <Box flexShrink={0}>
      {swatches.map(({ label, reflectance, unread }, index) => (
        <PatchColumn
          key={label}
          name={names[index] ?? []}
          nameRows={nameRows}
          reflectance={reflectance}
          columns={columns}
          patchRows={flat ? 0 : Math.max(1, rows - facts - nameRows)}
          greyRows={0}
          wordRows={flat ? Math.max(0, rows - facts - nameRows) : 0}
          valueOnly={facts === 1}
          {...(unread === undefined ? {} : { unread })}
        />
      ))}
    </Box>
  );
}

/** The goal as a picture; its words stand above. */
function GoalPicture({ screen, layout }: PartProps): React.JSX.Element | null {
  const { state, world, glyphs } = useSurroundings();
  const view = world.kindOf(screen.drill).plane?.(screen.drill, screen.answer);
  if (view === undefined || layout.stairRows < 0) return null;
  const columns = layout.questionColumns;
  const options = {
    columns,
    rows: glyphs.braille ? layout.stairRows : Math.min(2, layout.stairRows),
    scale: state.settings.valueScale,
    glyphs,
  };
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Rows lines={staircase(view, options)} />
      <Row pieces={chromaBar(view, { columns: Math.min(columns, 50), glyphs })} />
      <Row pieces={legend(glyphs, state.settings.valueScale, columns)} />
    </Box>
  );
}

/** The colours of the question, and the goal as a picture under them. */
function Colours({ screen, layout }: PartProps): React.JSX.Element {
  return (
    <>
      {layout.givenRows > 0 ? <Given screen={screen} layout={layout} /> : null}
      {layout.stairRows >= 0 && layout.givenRows > 0 ? <Row pieces={[{ text: ' ' }]} /> : null}
      <GoalPicture screen={screen} layout={layout} />
    </>
  );
}

function Choices({ screen, layout }: PartProps): React.JSX.Element {
  const { fields, answer, focus } = screen;
  return (
    <Box flexDirection="column" width={layout.fieldColumns} flexShrink={0}>
      <Fields
        fields={fields}
        answer={answer}
        focus={focus}
        columns={layout.fieldColumns}
        rows={layout.fieldRows}
      />
      {layout.noteGap ? <Row pieces={[{ text: ' ' }]} /> : null}
      {layout.noteRows > 0 ? (
        <ChosenNote
          field={fields[focus]}
          answer={answer}
          columns={layout.fieldColumns}
          rows={layout.noteRows}
        />
      ) : null}
      {layout.below === undefined ? null : (
        <>
          <Row pieces={[{ text: ' ' }]} />
          <Colours
            screen={screen}
            layout={{ ...layout, ...layout.below, questionColumns: layout.fieldColumns }}
          />
        </>
      )}
    </Box>
  );
}

/** The upper part; where it is cut, the key that opens it. */
function topLines(
  { top, cutAt }: DrillLayout,
  columns: number,
  { downMark, plainTexts }: Glyphs,
): readonly Piece[][] {
  if (cutAt === undefined) return top;
  const mark = ` ${downMark} more: s`;
  const pieces = (top[cutAt] ?? []).map((piece) => ({
    ...piece,
    text: plainTexts ? inAscii(piece.text) : piece.text,
  }));
  const text = pieces.map((piece) => piece.text).join('');
  const room = columns - widthOf(mark);
  const kept = widthOf(text) <= room ? pieces : [{ text: wrapText(text, room)[0] ?? '' }];
  const cut: Piece[] = [...kept, { text: mark, role: 'key' }];
  return top.map((line, at) => (at === cutAt ? cut : line));
}

/** A question of any program. */
export function Drill({ screen }: { readonly screen: Question }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  if (state.settings.screenReader) return <SpokenDrill screen={screen} />;
  const { valueScale } = state.settings;
  const read = { ...screen, fields: screen.fields.map((field) => onScale(field, valueScale)) };
  const layout = drillLayout(state, world, read);
  const part = { screen: read, layout };
  const columns = textColumns(state.size);
  const question = (
    <Box flexDirection="column" width={layout.questionColumns} flexShrink={0}>
      {layout.sheet === undefined ? null : (
        <>
          <Sheet screen={screen} size={layout.sheet} />
          <Row pieces={[{ text: ' ' }]} />
        </>
      )}
      <Colours {...part} />
    </Box>
  );
  return (
    <>
      <Rows lines={topLines(layout, columns, glyphs)} />
      <Box flexDirection={layout.beside ? 'row' : 'column'} flexShrink={0}>
        {question}
        {layout.beside && layout.questionColumns > 0 ? <Box width={GAP_COLUMNS} flexShrink={0} /> : null}
        <Choices {...part} />
      </Box>
      <Rows lines={layout.hint} />
    </>
  );
}
