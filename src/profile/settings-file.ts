/** The settings file, kept by conf. It is loaded only when there is a file, or one has to be written. */
import { join } from 'node:path';
import { codeOf, DataError, faultWords, isFileFault, StoreError } from '../errors.js';
import { shownPath } from '../files/faults.js';
import { readWhole } from '../files/read.js';
import { makeFolder, moveAside } from '../files/write.js';
import { jsonOf, membersOf } from '../text/json.js';
import type { SettingValues } from './settings-keys.js';
import { SETTING_KEYS, SETTINGS, settingIn } from './settings-keys.js';

type Stored = Partial<SettingValues>;

/** What was read, and lines for what could not be. */
export interface StoredSettings {
  readonly values: Stored;
  readonly notices: readonly string[];
  /** Set when the file may name a learner whom this version cannot read from it. */
  readonly hidesLearner: boolean;
}

export const NONE_STORED: StoredSettings = { values: {}, notices: [], hidesLearner: false };

export const settingsPath = (configFolder: string): string => join(configFolder, 'settings.json');

/** Largest settings file that is read, bytes; ours take a few hundred. */
const MOST_BYTES = 1_000_000;

/** The text of the settings file; undefined where there is none. @throws the fault of the file system */
function textAt(path: string): string | undefined {
  try {
    return readWhole(path, MOST_BYTES);
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(codeOf(error) ?? '')) return undefined;
    throw error;
  }
}

/**
 * The file through conf, which keeps what it does not know, and replaces it whole. conf reads whatever stands there to its
 * end, so the file is read bounded first.
 * @throws the fault of the file system; DataError when the file is damaged
 */
async function openConf(configFolder: string) {
  const path = settingsPath(configFolder);
  const text = textAt(path);
  if (text !== undefined && membersOf(jsonOf(text)) === undefined)
    throw new DataError('it does not hold settings in JSON');
  const { default: Conf } = await import('conf');
  return new Conf<Record<string, unknown>>({
    projectName: 'mudlark',
    projectSuffix: '',
    cwd: configFolder,
    configName: 'settings',
    accessPropertiesByDotNotation: false,
    configFileMode: 0o600,
  });
}

/** The settings in it. One that does not fit stays in the file as it is, and its default holds. */
function settingsIn(all: Readonly<Record<string, unknown>>, shown: string): StoredSettings {
  const there = SETTING_KEYS.filter((key) => Object.hasOwn(all, key));
  const unfit = there.filter((key) => settingIn(key, all[key]) === undefined);
  const values = there.map((key) => [key, settingIn(key, all[key])]);
  return {
    values: Object.fromEntries(values.filter(([, value]) => value !== undefined)) as Stored,
    notices: unfit.map(
      (key) =>
        `${shown}: ${SETTINGS[key].name} takes ${SETTINGS[key].takes}; what stands there is left as it is and not used.`,
    ),
    hidesLearner: unfit.includes('learner'),
  };
}

/** Keeps a damaged file under another name. @returns the line that says so */
function keptAside(path: string): string {
  try {
    const aside = moveAside(path, (n) =>
      path.replace(/\.json$/, n === 1 ? '.damaged.json' : `.damaged-${n}.json`),
    );
    return `${shownPath(path)} was damaged; it is kept as ${shownPath(aside)} and the defaults are used.`;
  } catch (fault) {
    if (!isFileFault(fault)) throw fault;
    return `${shownPath(path)} is damaged and cannot be moved (${faultWords(fault)}); the defaults are used.`;
  }
}

/** Reads the settings, each by itself; a file that holds none is kept under another name, said so, and the defaults hold. */
export async function readStored(configFolder: string): Promise<StoredSettings> {
  const path = settingsPath(configFolder);
  try {
    if (textAt(path) === undefined) return NONE_STORED;
    return settingsIn((await openConf(configFolder)).store, shownPath(path));
  } catch (error) {
    if (!isFileFault(error)) throw error;
    const notice =
      error instanceof DataError
        ? keptAside(path)
        : `${shownPath(path)}: ${faultWords(error, 'read')}; the defaults are used.`;
    return { values: {}, notices: [notice], hidesLearner: true };
  }
}

/**
 * Writes settings; those not named stay.
 * @throws StoreError when they cannot be written
 */
export async function writeStored(configFolder: string, patch: Stored): Promise<void> {
  try {
    makeFolder(configFolder, 0o700);
    const conf = await openConf(configFolder);
    conf.set(patch as Record<string, unknown>);
  } catch (error) {
    if (!isFileFault(error)) throw error;
    throw new StoreError(
      `${shownPath(settingsPath(configFolder))}: ${faultWords(error)}; the setting was not kept`,
      { cause: error },
    );
  }
}
