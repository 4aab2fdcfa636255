/** The settings: what each takes, its default, its variable in the environment. */
import { UsageError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';
import { DEFAULT_LEARNER, learnerName } from './learners.js';

/** Values of all settings. */
export interface SettingValues {
  /** Which way value counts: 1 is paper white, or 0 is black (Munsell's direction). */
  readonly valueScale: 'paper-first' | 'black-first';
  /** Id of a palette. */
  readonly palette: string;
  /** The plain form for screen readers. */
  readonly screenReader: boolean;
  /** How many colours are used. */
  readonly colour: 'auto' | 'none' | '16' | '256' | 'full';
  readonly learner: string;
  /** Whether the welcome was shown. */
  readonly welcomed: boolean;
}

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
  /** Reads a text. @returns undefined when it does not take it */
  read(text: string): SettingValues[K] | undefined;
}

function oneOf<T extends string>(values: readonly T[], also: Readonly<Record<string, T>> = {}) {
  return (text: string): T | undefined => {
    const word = text.trim().toLowerCase();
    return values.find((value) => value === word) ?? (Object.hasOwn(also, word) ? also[word] : undefined);
  };
}

const SCALES = ['paper-first', 'black-first'] as const;
const COLOURS = ['auto', 'none', '16', '256', 'full'] as const;
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

function yesOrNo(text: string): boolean | undefined {
  const word = text.trim().toLowerCase();
  return Object.hasOwn(YES_NO, word) ? YES_NO[word] : undefined;
}

export const SETTINGS: { readonly [K in SettingKey]: SettingSpec<K> } = {
  valueScale: {
    key: 'valueScale',
    name: 'value-scale',
    about:
      'which way value counts: paper-first (1 is paper white, 10 the darkest dark) or black-first (0 is black)',
    fallback: 'paper-first',
    variables: ['MUDLARK_VALUE_SCALE'],
    takes: SCALES.join(' or '),
    read: oneOf(SCALES, { 'paper-1': 'paper-first', munsell: 'black-first' }),
  },
  palette: {
    key: 'palette',
    name: 'palette',
    about: 'the paints that drills are drawn from',
    fallback: 'twelve',
    variables: ['MUDLARK_PALETTE'],
    takes: 'the id of a palette',
    read: (text) => (text === cleanText(text, 200) && text !== '' ? text : undefined),
  },
  screenReader: {
    key: 'screenReader',
    name: 'screen-reader',
    about: 'the plain form for screen readers',
    fallback: false,
    variables: ['MUDLARK_SCREEN_READER', 'INK_SCREEN_READER'],
    takes: 'yes or no',
    read: yesOrNo,
  },
  colour: {
    key: 'colour',
    name: 'colour',
    about: 'how many colours are used; auto goes by the terminal',
    fallback: 'auto',
    variables: ['MUDLARK_COLOUR'],
    takes: `${COLOURS.slice(0, -1).join(', ')} or full`,
    read: oneOf(COLOURS, { truecolor: 'full', truecolour: 'full' }),
  },
  learner: {
    key: 'learner',
    name: 'learner',
    about: 'whose record is kept',
    fallback: DEFAULT_LEARNER,
    variables: ['MUDLARK_LEARNER'],
    takes: 'a name',
    read: (text) => {
      try {
        return learnerName(text);
      } catch (error) {
        if (error instanceof UsageError) return undefined;
        throw error;
      }
    },
  },
  welcomed: {
    key: 'welcomed',
    name: 'welcomed',
    about: 'whether the welcome was shown; set to no to see it again',
    fallback: false,
    variables: [],
    takes: 'yes or no',
    read: yesOrNo,
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
  const value = spec.read(text);
  if (value === undefined)
    throw new UsageError(`${spec.name} cannot be "${cleanText(text, 60)}"; it takes ${spec.takes}`);
  return value;
}

/** A value as it is shown and typed. */
export function showSetting(value: SettingValues[SettingKey]): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : cleanText(value, 200);
}
