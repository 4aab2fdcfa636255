/** The settings file: one JSON object, only in ours to change where a setting is set. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { StoreError } from '../errors.js';
import { faultWords, shownPath } from '../files/faults.js';
import { readWhole } from '../files/read.js';
import { makeFolder, moveAside, PRIVATE, replaceWhole } from '../files/write.js';
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
 * Everything in the file, also what a newer version has put there.
 * @throws the fault of the file system; SyntaxError or RangeError when the file is damaged
 */
function readAll(path: string): Readonly<Record<string, unknown>> {
  if (!existsSync(path)) return {};
  const read: unknown = JSON.parse(readWhole(path, MOST_BYTES));
  if (typeof read !== 'object' || read === null || Array.isArray(read))
    throw new SyntaxError('not an object');
  return { ...read };
}

/** The settings in it. @throws RangeError when one is of the wrong type, or not what it takes */
function settingsIn(all: Readonly<Record<string, unknown>>): Stored {
  const known = SETTING_KEYS.filter((key) => Object.hasOwn(all, key)).map((key) => {
    const spec = SETTINGS[key] as SettingSpec;
    const value = typeof all[key] === typeof spec.fallback ? spec.read(String(all[key])) : undefined;
    if (value === undefined) throw new RangeError(`${key} takes ${spec.takes}`);
    return [key, value];
  });
  return Object.fromEntries(known) as Stored;
}

/** Reads the settings; a damaged file is kept under another name, said so, and the defaults hold. Never throws. */
export function readStored(configFolder: string): StoredSettings {
  const path = settingsPath(configFolder);
  try {
    return { values: settingsIn(readAll(path)) };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== undefined)
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
export function writeStored(configFolder: string, patch: Stored): void {
  const path = settingsPath(configFolder);
  try {
    makeFolder(configFolder, 0o700);
    const all = { ...readAll(path), ...patch };
    settingsIn(all);
    replaceWhole(path, `${JSON.stringify(all, undefined, 2)}\n`, PRIVATE);
  } catch (error) {
    throw new StoreError(`${shownPath(path)}: ${faultWords(error)}; the setting was not kept`, {
      cause: error,
    });
  }
}
