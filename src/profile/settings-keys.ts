/** The settings: what each takes, its default, its variable in the environment. */
import * as v from 'valibot';
import { UsageError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';
import { DEFAULT_LEARNER, learnerName } from './learners.js';

/** Id of the palette in use where none was chosen. */
export const USUAL_PALETTE = 'twelve';

const SCALES = ['paper-first', 'black-first'] as const;
const COLOURS = ['auto', 'none', '16', '256', 'full'] as const;

/** A name as it is kept; undefined where it is none. */
function keptName(name: string): string | undefined {
  try {
    return learnerName(name);
  } catch (error) {
    if (error instanceof UsageError) return undefined;
    throw error;
  }
}

/** All settings as the file holds them. Each is judged by itself; one that is not here belongs to another version. */
const SETTINGS_SCHEMA = v.object({
  /** Which way value counts: 1 is paper white, or 0 is black (Munsell's direction). */
  valueScale: v.picklist(SCALES),
  /** Id of a palette. */
  palette: v.pipe(
    v.string(),
    v.check((id) => id === cleanText(id, 200) && id !== ''),
  ),
  /** The plain form for screen readers. */
  screenReader: v.boolean(),
  /** How many colours are used. */
  colour: v.picklist(COLOURS),
  learner: v.pipe(v.string(), v.transform(keptName), v.string()),
  /** Whether the welcome was shown. */
  welcomed: v.boolean(),
});

/** Values of all settings. */
export type SettingValues = Readonly<v.InferOutput<typeof SETTINGS_SCHEMA>>;

export type SettingKey = keyof SettingValues;

/** One setting as it is described and read. */
export interface SettingSpec<K extends SettingKey = SettingKey> {
  readonly key: K;
  /** As it is written on the command line. */
  readonly name: string;
  readonly about: string;
  readonly fallback: SettingValues[K];
  /** Variables of the environment that set it, the first one first. */
  readonly variables: readonly string[];
  /** What it takes, in words. */
  readonly takes: string;
  /** Words that stand for a value when they are typed, in lower case; a setting with a list of its own takes any case. */
  readonly words?: Readonly<Record<string, SettingValues[K]>>;
}

/** A value of the file. @returns undefined when the setting does not take it */
export function settingIn<K extends SettingKey>(key: K, stored: unknown): SettingValues[K] | undefined {
  const read = v.safeParse(SETTINGS_SCHEMA.entries[key], stored);
  return read.success ? (read.output as SettingValues[K]) : undefined;
}

/** A value as it is typed. @returns undefined when the setting does not take it */
export function settingOf<K extends SettingKey>(
  { key, words }: SettingSpec<K>,
  text: string,
): SettingValues[K] | undefined {
  if (words === undefined) return settingIn(key, text);
  const word = text.trim().toLowerCase();
  return Object.hasOwn(words, word) ? words[word] : settingIn(key, word);
}

const YES_NO: Readonly<Record<string, boolean>> = {
  yes: true,
  on: true,
  true: true,
  '1': true,
  no: false,
  off: false,
  false: false,
  '0': false,
};

export const SETTINGS: { readonly [K in SettingKey]: SettingSpec<K> } = {
  valueScale: {
    key: 'valueScale',
    name: 'value-scale',
    about:
      'which way value counts: paper-first (1 is paper white, 10 the darkest dark) or black-first (0 is black)',
    fallback: 'paper-first',
    variables: ['MUDLARK_VALUE_SCALE'],
    takes: SCALES.join(' or '),
    words: { 'paper-1': 'paper-first', munsell: 'black-first' },
  },
  palette: {
    key: 'palette',
    name: 'palette',
    about: 'the box of paints that practice, bench and recipes keep to',
    fallback: USUAL_PALETTE,
    variables: ['MUDLARK_PALETTE'],
    takes: 'the id of a palette',
  },
  screenReader: {
    key: 'screenReader',
    name: 'screen-reader',
    about: 'the plain form for screen readers',
    fallback: false,
    variables: ['MUDLARK_SCREEN_READER', 'INK_SCREEN_READER'],
    takes: 'yes or no',
    words: YES_NO,
  },
  colour: {
    key: 'colour',
    name: 'colour',
    about: 'how many colours are used; auto goes by the terminal',
    fallback: 'auto',
    variables: ['MUDLARK_COLOUR'],
    takes: `${COLOURS.slice(0, -1).join(', ')} or full`,
    words: { truecolor: 'full', truecolour: 'full' },
  },
  learner: {
    key: 'learner',
    name: 'learner',
    about: 'whose record is kept',
    fallback: DEFAULT_LEARNER,
    variables: ['MUDLARK_LEARNER'],
    takes: 'a name',
  },
  welcomed: {
    key: 'welcomed',
    name: 'welcomed',
    about: 'whether the welcome was shown; set to no to see it again',
    fallback: false,
    variables: [],
    takes: 'yes or no',
    words: YES_NO,
  },
};

export const SETTING_KEYS = Object.keys(SETTINGS) as SettingKey[];

/** Finds a setting by its name or key. @throws UsageError naming those there are */
export function findSetting(name: string): SettingSpec {
  const found = SETTING_KEYS.map((key) => SETTINGS[key] as SettingSpec).find(
    (spec) => spec.name === name || spec.key === name,
  );
  if (found) return found;
  const names = SETTING_KEYS.map((key) => SETTINGS[key].name).join(', ');
  throw new UsageError(`there is no setting called ${cleanText(name, 60)}; there are: ${names}`);
}

/** Reads a value for a setting. @throws UsageError saying what it takes */
export function readSetting(spec: SettingSpec, text: string): SettingValues[SettingKey] {
  const value = settingOf(spec, text);
  if (value === undefined)
    throw new UsageError(`${spec.name} cannot be "${cleanText(text, 60)}"; it takes ${spec.takes}`);
  return value;
}

/** A value as it is shown and typed. */
export function showSetting(value: SettingValues[SettingKey]): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : cleanText(value, 200);
}
