/** The settings file, kept by conf. It is loaded only when there is a file, or one has to be written. */
import { existsSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { StoreError } from '../errors.js';
import { makeFolder } from './place.js';
import { faultWords, shownPath } from './problems.js';
import type { SettingKey, SettingValues } from './settings-keys.js';
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

const SCHEMA = {
  valueScale: { type: 'string', enum: ['paper-first', 'black-first'] },
  palette: { type: 'string', minLength: 1, maxLength: 200 },
  screenReader: { type: 'boolean' },
  colour: { type: 'string', enum: ['auto', 'none', '16', '256', 'full'] },
  learner: { type: 'string', minLength: 1, maxLength: 1000 },
  welcomed: { type: 'boolean' },
} as const;

/** conf reads whatever stands there to its end: an endless device or a huge file would take all the memory. */
function requireReadable(path: string): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return;
  if (there.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
  if (!there.isFile()) throw Object.assign(new Error(), { code: 'ENXIO' });
  if (there.size > MOST_BYTES) throw new RangeError(`larger than ${MOST_BYTES} bytes`);
}

async function openConf(configFolder: string) {
  requireReadable(settingsPath(configFolder));
  const { default: Conf } = await import('conf');
  return new Conf<Stored>({
    projectName: 'mudlark',
    projectSuffix: '',
    cwd: configFolder,
    configName: 'settings',
    schema: SCHEMA,
    accessPropertiesByDotNotation: false,
    configFileMode: 0o600,
  });
}

/** Moves a damaged file out of the way, under a name that is free. */
function keepDamaged(path: string): string {
  for (let n = 1; ; n += 1) {
    const aside = path.replace(/\.json$/, n === 1 ? '.damaged.json' : `.damaged-${n}.json`);
    if (existsSync(aside)) continue;
    renameSync(path, aside);
    return aside;
  }
}

/** Reads the settings; a damaged file is kept under another name, said so, and the defaults hold. Never throws. */
export async function readStored(configFolder: string): Promise<StoredSettings> {
  const path = settingsPath(configFolder);
  if (!existsSync(path)) return { values: {} };
  try {
    const { store } = await openConf(configFolder);
    const known = Object.entries(store).filter(([key, value]) => {
      const spec = SETTING_KEYS.includes(key as SettingKey) ? SETTINGS[key as SettingKey] : undefined;
      return spec !== undefined && (typeof value === 'boolean' || spec.read(String(value)) !== undefined);
    });
    return { values: Object.fromEntries(known) as Stored };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== undefined && code !== 'ERR_ASSERTION')
      return { values: {}, notice: `${shownPath(path)}: ${faultWords(error)}; the defaults are used.` };
    try {
      const aside = keepDamaged(path);
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
export async function writeStored(configFolder: string, patch: Stored): Promise<void> {
  try {
    makeFolder(configFolder);
    const conf = await openConf(configFolder);
    conf.set(patch as SettingValues);
  } catch (error) {
    throw new StoreError(
      `${shownPath(settingsPath(configFolder))}: ${faultWords(error)}; the setting was not kept`,
      {
        cause: error,
      },
    );
  }
}
