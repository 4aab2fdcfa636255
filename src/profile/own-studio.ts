/** What a learner has put together, as its file holds it: boxes of paints, and what dried of them. Whatever else is kept beside the record joins here. Pure. */
import * as v from 'valibot';
import { paintIdSchema } from '../drills/fields-schema.js';
import { laidSchema } from '../drills/laid-schema.js';
import { BOX_PAINTS, STRENGTH_FACTOR } from '../paints/index.js';
import { parseJson } from '../text/json-source.js';
import { cleanText } from '../text/sanitize.js';
import { widthOf } from '../text/wrap.js';
import type { Laid } from '../washes/index.js';
import { MOST_READINGS, readingEntries } from './own-readings.js';

/** Boxes of one learner. */
export const MOST_BOXES = 20;
/** Longest own name of a paint, in columns: the longest of the library takes 31. */
const NAME_COLUMNS = 30;
/** Longest name of a mixture, in columns. */
const MIXTURE_COLUMNS = 40;
const BOX_NAME = /^[\p{Ll}\p{Lo}\p{N}][\p{Ll}\p{Lo}\p{M}\p{N}-]{0,29}$/u;

/** Nothing in it steers a terminal or is out of sight. */
const isShown = (text: string): boolean => text === cleanText(text);

const boxNameSchema = v.pipe(
  v.string('must be a text'),
  v.check(
    (name) => BOX_NAME.test(name) && isShown(name) && widthOf(name) <= NAME_COLUMNS,
    'must be small letters, digits and hyphens, at most 30 of them',
  ),
);

const paintNameSchema = v.pipe(
  v.string('must be a text'),
  v.check((name) => name !== '', 'must not be empty'),
  v.check(isShown, 'holds a character that cannot be shown, or blanks at its ends; take it out'),
  v.check((name) => widthOf(name) <= NAME_COLUMNS, `must take at most ${NAME_COLUMNS} columns`),
);

const { least, most } = STRENGTH_FACTOR;
const strengthSchema = v.pipe(
  v.number('must be a number'),
  v.check((factor) => factor >= least && factor <= most, `must be ${least} to ${most} times the library's`),
);

const ownPaintSchema = v.strictObject({
  paint: paintIdSchema,
  /** What the owner calls it. */
  name: v.optional(paintNameSchema),
  /** Tinting strength against the library's, as a factor. */
  strength: v.optional(strengthSchema),
});

const faultIn =
  (schema: v.GenericSchema) =>
  (x: unknown): string | undefined =>
    v.safeParse(schema, x).issues?.[0].message;

/** What is wrong with a name of a box, an own name of a paint, a strength; undefined where nothing is. */
export const boxNameFault = faultIn(boxNameSchema);
export const paintNameFault = faultIn(paintNameSchema);
export const strengthFault = faultIn(strengthSchema);

const areUnlike = (texts: readonly string[]): boolean => new Set(texts).size === texts.length;

const boxSchema = v.strictObject({
  name: boxNameSchema,
  paints: v.pipe(
    v.array(ownPaintSchema, 'must list paints'),
    v.minLength(BOX_PAINTS.least, `must hold ${BOX_PAINTS.least} paints at least`),
    v.maxLength(BOX_PAINTS.most, `must hold ${BOX_PAINTS.most} paints at most`),
    v.check((paints) => areUnlike(paints.map(({ paint }) => paint)), 'name a paint twice'),
    v.check(
      (paints) => areUnlike(paints.flatMap(({ name }) => name?.toLowerCase() ?? [])),
      'bear one name twice; call them apart',
    ),
  ),
});

/** One box. The order of its paints is the owner's. */
export type OwnBox = v.InferOutput<typeof boxSchema>;

const format = v.literal(1, 'this version reads format 1; bring the program up to date');

/** What dried, of the tubes of one box. */
const ownReadingSchema = v.strictObject({ box: boxNameSchema, ...readingEntries });
export type OwnReading = v.InferOutput<typeof ownReadingSchema>;

/** Mixtures of the bench that are kept. */
export const MOST_MIXTURES = 200;

/** A mixture under a name of its owner's. */
const ownMixtureSchema = v.strictObject({
  name: v.pipe(
    v.string('must be a text'),
    v.check(
      (name) => name !== '' && isShown(name),
      'must be a text that can be shown, without blanks at its ends',
    ),
    v.check((name) => widthOf(name) <= MIXTURE_COLUMNS, `must take at most ${MIXTURE_COLUMNS} columns`),
  ),
  laid: laidSchema,
});
export interface OwnMixture {
  readonly name: string;
  readonly laid: Laid;
}

const ownStudioSchema = v.strictObject({
  format,
  boxes: v.pipe(
    v.array(boxSchema, 'must list boxes'),
    v.maxLength(MOST_BOXES, `must be ${MOST_BOXES} at most; delete one first`),
    v.check((boxes) => areUnlike(boxes.map(({ name }) => name)), 'bear one name twice'),
  ),
  /** The earliest first. */
  readings: v.optional(
    v.pipe(
      v.array(ownReadingSchema, 'must list readings'),
      v.maxLength(MOST_READINGS, `must be ${MOST_READINGS} at most`),
    ),
  ),
  /** The earliest first. */
  mixtures: v.optional(
    v.pipe(
      v.array(ownMixtureSchema, 'must list mixtures'),
      v.maxLength(MOST_MIXTURES, `must be ${MOST_MIXTURES} at most; take one away first`),
      v.check((mixtures) => areUnlike(mixtures.map(({ name }) => name)), 'bear one name twice'),
    ),
  ),
});

/** Everything of one learner's. */
export type OwnStudio = Omit<v.InferOutput<typeof ownStudioSchema>, 'mixtures'> & {
  readonly mixtures?: readonly OwnMixture[] | undefined;
};

/** The same without a box and what was read of its tubes. */
export function withoutBox(own: OwnStudio, name: string): OwnStudio {
  const boxes = own.boxes.filter((box) => box.name !== name);
  return { ...own, boxes, readings: own.readings?.filter(({ box }) => box !== name) };
}

/** The same with a box put in the place of one; what was read of its tubes follows when it is called otherwise. */
export function withBox(own: OwnStudio, name: string, box: OwnBox): OwnStudio {
  const isThere = own.boxes.some((each) => each.name === name);
  const boxes = isThere ? own.boxes.map((each) => (each.name === name ? box : each)) : [...own.boxes, box];
  if (box.name === name) return { ...own, boxes };
  const readings = own.readings?.map((each) => (each.box === name ? { ...each, box: box.name } : each));
  return { ...own, boxes, readings };
}

/** What a file of one box calls itself. */
const BOX_KIND = 'mudlark-box';
const boxFileSchema = v.strictObject({
  kind: v.literal(BOX_KIND, `must be "${BOX_KIND}"; give a file made by "box export"`),
  format,
  box: boxSchema,
});

/** Largest file of either sort, bytes. */
export const MOST_OWN_BYTES = 500_000;

/** @param name what to call the file in a message @throws DataError in one line */
export const parseOwn = (text: string, name: string): OwnStudio =>
  parseJson(text, ownStudioSchema, name, MOST_OWN_BYTES);

/** The box of an exported file. @throws as {@link parseOwn} */
export const parseBox = (text: string, name: string): OwnBox =>
  parseJson(text, boxFileSchema, name, MOST_OWN_BYTES).box;

const written = (value: object): string => `${JSON.stringify(value, null, 1)}\n`;

/** A box as a file of its own. */
export const boxText = (box: OwnBox): string => written({ kind: BOX_KIND, format: 1, box });

/** The file of everything. @throws DataError where it would not be read back */
export function ownText(own: OwnStudio, name: string): string {
  const text = written(own);
  parseOwn(text, name);
  return text;
}
