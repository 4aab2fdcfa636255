/** The schema of a picture file. */
import * as v from 'valibot';
import { idSchema, liesSchema, textSchema } from '../drills/fields-schema.js';
import { washSchema } from '../drills/laid-schema.js';
import { GRID, TOWARDS } from './types.js';

/** Version of the file format; a file with another is refused. */
const PICTURE_FORMAT = 1;

/** Units that a shape may reach beyond the sheet. */
const BEYOND = 12;
const MOST_FIGURES = 60;
const MOST_POINTS = 40;
const MOST_NAMES = 6;

function unit(most: number) {
  const words = `must be a number from ${-BEYOND} to ${most + BEYOND}`;
  return v.pipe(v.number(words), v.minValue(-BEYOND, words), v.maxValue(most + BEYOND, words));
}
const across = unit(GRID.columns);
const down = unit(GRID.rows);
const half = v.pipe(
  v.number('must be a number'),
  v.minValue(0.1, 'half a width is 0.1 to 60'),
  v.maxValue(60, 'half a width is 0.1 to 60'),
);

const boxSchema = v.pipe(
  v.strictTuple([across, down, across, down], 'must be [left, top, right, bottom]'),
  v.check(
    ([left, top, right, bottom]) => left < right && top < bottom,
    'must run from left top to right bottom',
  ),
);
const ellipseSchema = v.strictTuple(
  [across, down, half, half],
  'must be [middle across, middle down, half width, half height]',
);
const pointSchema = v.strictTuple([across, down], 'must be [across, down]');

function figures<S extends v.GenericSchema>(figure: S) {
  return v.optional(
    v.pipe(
      v.array(figure, 'must be a list'),
      v.minLength(1, 'must hold a figure'),
      v.maxLength(MOST_FIGURES, `holds more than ${MOST_FIGURES} figures`),
    ),
  );
}

function points(least: number) {
  return v.pipe(
    v.array(pointSchema, 'must be a list of points'),
    v.minLength(least, `must have at least ${least} points`),
    v.maxLength(MOST_POINTS, `has more than ${MOST_POINTS} points`),
  );
}

const gradedSchema = v.strictObject({
  to: v.pipe(
    v.number('to must be a number'),
    v.minValue(0.05, 'to is 0.05 to 4'),
    v.maxValue(4, 'to is 0.05 to 4'),
  ),
  towards: v.picklist(TOWARDS, `towards is one of ${TOWARDS.join(', ')}`),
});

const FORMS = ['rects', 'polygons', 'ellipses', 'lines'] as const;

const shapeSchema = v.pipe(
  v.strictObject({
    area: idSchema,
    rects: figures(boxSchema),
    polygons: figures(points(3)),
    ellipses: figures(ellipseSchema),
    lines: figures(points(2)),
    width: v.optional(
      v.pipe(
        v.number('must be a number'),
        v.minValue(0.2, 'width is 0.2 to 6'),
        v.maxValue(6, 'width is 0.2 to 6'),
      ),
    ),
    graded: v.optional(gradedSchema),
  }),
  v.check(
    (shape) => FORMS.filter((form) => shape[form] !== undefined).length === 1,
    `a shape takes exactly one of ${FORMS.join(', ')}`,
  ),
  v.check(({ lines, width }) => width === undefined || lines !== undefined, 'only lines have a width'),
);

const areaSchema = v.strictObject({
  id: idSchema,
  words: textSchema(40),
  also: v.optional(
    v.pipe(
      v.array(textSchema(40), 'must be a list of names'),
      v.minLength(1, 'must hold a name'),
      v.maxLength(MOST_NAMES, `holds more than ${MOST_NAMES} names`),
    ),
  ),
  wash: washSchema,
  turned: v.optional(idSchema),
});

const subjectsSchema = v.pipe(
  v.record(idSchema, liesSchema, 'must list subjects, like { tiled-roof: { start: a, passage: b } }'),
  v.check((subjects) => Object.keys(subjects).length <= 30, 'lists more than 30 subjects'),
);

const entriesSchema = v.strictObject({
  format: v.literal(PICTURE_FORMAT, `format must be ${PICTURE_FORMAT}`),
  id: idSchema,
  place: idSchema,
  title: textSchema(60),
  centre: idSchema,
  behind: idSchema,
  lies: liesSchema,
  subjects: v.optional(subjectsSchema, {}),
  areas: v.pipe(
    v.array(areaSchema, 'must be a list'),
    v.minLength(3, 'must have at least 3'),
    v.maxLength(14, 'must have at most 14'),
  ),
  shapes: v.pipe(
    v.array(shapeSchema, 'must be a list'),
    v.minLength(3, 'must have at least 3'),
    v.maxLength(80, 'must have at most 80'),
  ),
});

type Entries = v.InferOutput<typeof entriesSchema>;

/** Every area that a picture speaks of beside its list. */
function* named({ centre, behind, lies, subjects, areas, shapes }: Entries): Generator<string> {
  yield* [centre, behind, lies.start, lies.passage];
  for (const { start, passage } of Object.values(subjects)) yield* [start, passage];
  for (const { turned } of areas) if (turned !== undefined) yield turned;
  for (const { area } of shapes) yield area;
}

const ids = ({ areas }: Entries): string[] => areas.map(({ id }) => id);
const strangers = (entries: Entries): string[] =>
  [...named(entries)].filter((id) => !ids(entries).includes(id));
const undrawn = (entries: Entries): string[] =>
  ids(entries).filter((id) => !entries.shapes.some(({ area }) => area === id));

/** A picture file; see `Picture`. */
export const pictureSchema = v.pipe(
  entriesSchema,
  v.check((entries) => new Set(ids(entries)).size === entries.areas.length, 'lists an area twice'),
  v.check(
    (entries) => strangers(entries).length === 0,
    ({ input }) => `speaks of the area "${strangers(input as Entries)[0]}", which it does not list`,
  ),
  v.check(
    (entries) => undrawn(entries).length === 0,
    ({ input }) => `no shape draws the area "${undrawn(input as Entries)[0]}"`,
  ),
  v.transform(({ format: _, ...picture }) => picture),
);
