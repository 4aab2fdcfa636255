/** The settings file, kept by conf. It is loaded only when there is a file, or one has to be written. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { DataError, StoreError } from '../errors.js';
import { faultWords, isFileFault, shownPath } from '../files/faults.js';
import { readWhole } from '../files/read.js';
import { makeFolder, moveAside } from '../files/write.js';
import { jsonOf, membersOf } from '../text/json.js';
import type { SettingSpec, SettingValues } from './settings-keys.js';
import { SETTING_KEYS, SETTINGS } from './settings-keys.js';

type Stored = Partial<SettingValues>;

/** What was read, and a line when the file was damaged. */
export interface StoredSettings {
  readonly values: Stored;
  readonly notice?: string;
}

export const settingsPath = (configFolder: string): string => join(configFolder, 'settings.json');

/** Largest settings file that is read, bytes; ours take a few hundred. */
const MOST_BYTES = 1_000_000;

/**
 * The file through conf, which keeps what it does not know, and replaces it whole. conf reads whatever stands there to its
 * end, so the file is read bounded first.
 * @throws the fault of the file system; DataError when the file is damaged
 */
async function openConf(configFolder: string) {
  const path = settingsPath(configFolder);
  if (existsSync(path) && membersOf(jsonOf(readWhole(path, MOST_BYTES))) === undefined)
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

/** The settings in it. @throws DataError when one is of the wrong type, or not what it takes */
function settingsIn(all: Readonly<Record<string, unknown>>): Stored {
  const known = SETTING_KEYS.filter((key) => Object.hasOwn(all, key)).map((key) => {
    const spec = SETTINGS[key] as SettingSpec;
    const value = typeof all[key] === typeof spec.fallback ? spec.read(String(all[key])) : undefined;
    if (value === undefined) throw new DataError(`${key} takes ${spec.takes}`);
    return [key, value];
  });
  return Object.fromEntries(known) as Stored;
}

/** Reads the settings; a damaged file is kept under another name, said so, and the defaults hold. */
export async function readStored(configFolder: string): Promise<StoredSettings> {
  const path = settingsPath(configFolder);
  if (!existsSync(path)) return { values: {} };
  try {
    return { values: settingsIn((await openConf(configFolder)).store) };
  } catch (error) {
    if (!isFileFault(error)) throw error;
    if (!(error instanceof DataError))
      return {
        values: {},
        notice: `${shownPath(path)}: ${faultWords(error, 'read')}; the defaults are used.`,
      };
    try {
      const aside = moveAside(path, (n) =>
        path.replace(/\.json$/, n === 1 ? '.damaged.json' : `.damaged-${n}.json`),
      );
      return {
        values: {},
        notice: `${shownPath(path)} was damaged; it is kept as ${shownPath(aside)} and the defaults are used.`,
      };
    } catch (fault) {
      if (!isFileFault(fault)) throw fault;
      return {
        values: {},
        notice: `${shownPath(path)} is damaged and cannot be moved (${faultWords(fault)}); the defaults are used.`,
      };
    }
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
    settingsIn({ ...conf.store, ...patch });
    conf.set(patch as Record<string, unknown>);
  } catch (error) {
    if (!isFileFault(error)) throw error;
    throw new StoreError(
      `${shownPath(settingsPath(configFolder))}: ${faultWords(error)}; the setting was not kept`,
      { cause: error },
    );
  }
}
