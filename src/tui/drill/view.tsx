/** A drill: the scene, the start, the goal and the open choices. What it will give is not shown: predicting is the exercise. */
import { Box } from 'ink';
import { onScale } from '../kit/fields.js';
import { chromaBar, legend, staircase } from '../kit/goal-picture.js';
import { Row, Rows } from '../kit/row.js';
import { Sheet } from '../kit/sheet.js';
import { useSurroundings } from '../kit/surroundings.js';
import { PatchColumn, PatchWithFacts, patchNames } from '../kit/swatch.js';
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
  const { state, world, glyphs } = useSurroundings();
  const given = world.kindOf(screen.drill).given(screen.drill);
  const { questionColumns: columns, givenRows: rows, givenLabel } = layout;
  const [only] = given;
  if (only !== undefined && given.length === 1) {
    const label = givenLabel ? only.label : undefined;
    return (
      <PatchWithFacts
        label={label}
        reflectance={only.reflectance}
        columns={columns}
        rows={rows}
        {...(only.unread === undefined ? {} : { unread: only.unread })}
      />
    );
  }
  const each = Math.max(6, Math.min(16, Math.floor((columns + 1) / Math.max(1, given.length)) - 1));
  const { names, nameRows } = patchNames(given, {
    columns: each,
    rows: rows >= 4 ? 2 : 1,
    level: state.colourLevel,
    cut: glyphs.cut,
  });
  const patchRows = state.colourLevel === 0 ? 0 : Math.max(1, rows - 1 - nameRows);
  return (
    <Box flexShrink={0} height={rows + (givenLabel ? 1 : 0)} overflow="hidden">
      {given.map(({ label, reflectance, unread }, index) => (
        <PatchColumn
          key={label}
          name={names[index] ?? []}
          nameRows={nameRows}
          reflectance={reflectance}
          columns={each}
          patchRows={patchRows}
          greyRows={0}
          wordRows={state.colourLevel === 0 && givenLabel ? 2 : 0}
          valueOnly={!givenLabel}
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
      <Row pieces={legend(glyphs, state.settings.valueScale)} />
    </Box>
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
      {layout.noteRows > 2 ? <Row pieces={[{ text: ' ' }]} /> : null}
      {layout.noteRows > 0 ? (
        <ChosenNote
          field={fields[focus]}
          answer={answer}
          columns={layout.fieldColumns}
          rows={Math.min(2, layout.noteRows)}
        />
      ) : null}
    </Box>
  );
}

/** A question of any program. */
export function Drill({ screen }: { readonly screen: Question }): React.JSX.Element {
  const { state, world } = useSurroundings();
  if (state.settings.screenReader) return <SpokenDrill screen={screen} />;
  const { valueScale } = state.settings;
  const read = { ...screen, fields: screen.fields.map((field) => onScale(field, valueScale)) };
  const layout = drillLayout(state, world, read);
  const part = { screen: read, layout };
  const question = (
    <Box flexDirection="column" width={layout.questionColumns} flexShrink={0}>
      {layout.sheet === undefined ? null : <Sheet screen={screen} size={layout.sheet} />}
      {layout.givenRows > 0 ? <Given {...part} /> : null}
      {layout.beside && layout.stairRows >= 0 && layout.givenRows > 0 ? (
        <Row pieces={[{ text: ' ' }]} />
      ) : null}
      <GoalPicture {...part} />
    </Box>
  );
  return (
    <>
      <Rows lines={layout.top} />
      <Box flexDirection={layout.beside ? 'row' : 'column'} flexShrink={0}>
        {question}
        {layout.beside && layout.questionColumns > 0 ? <Box width={GAP_COLUMNS} flexShrink={0} /> : null}
        <Choices {...part} />
      </Box>
      <Rows lines={layout.hint} />
    </>
  );
}
