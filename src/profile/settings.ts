/** Settings in force, and where each comes from: flag, environment, settings file, default, in this order. */
import { StoreError, UsageError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';
import { NONE_STORED, readStored, type StoredSettings, settingsPath, writeStored } from './settings-file.js';
import type { SettingKey, SettingSpec, SettingValues } from './settings-keys.js';
import { findSetting, readSetting, SETTING_KEYS, SETTINGS, settingOf, showSetting } from './settings-keys.js';

export type SettingSource = 'flag' | 'environment' | 'settings file' | 'default';

/** A setting with its value and where it came from. */
export interface SettingInForce {
  readonly key: SettingKey;
  readonly name: string;
  readonly about: string;
  readonly value: SettingValues[SettingKey];
  readonly source: SettingSource;
  /** The variable, where the environment decides. */
  readonly variable?: string;
}

/** Texts given on the command line, by setting. */
export type SettingFlags = Partial<Readonly<Record<SettingKey, string | undefined>>>;

export interface ResolvedSettings {
  readonly values: SettingValues;
  readonly list: readonly SettingInForce[];
  /** Path of the settings file; absent when there is no place for one. */
  readonly file?: string;
  readonly notices: readonly string[];
  /** Why it is not known whose record is to be kept, in one line without a full stop. */
  readonly learnerDoubt?: string;
}

type Env = Readonly<Record<string, string | undefined>>;

/** Colour by the two variables that all programs share. */
function sharedColour(env: Env): { value: SettingValues['colour']; variable: string } | undefined {
  if ((env['NO_COLOR'] ?? '') !== '') return { value: 'none', variable: 'NO_COLOR' };
  const forced = env['FORCE_COLOR'];
  const value = ({ '0': 'none', false: 'none', '1': '16', '2': '256', '3': 'full' } as const)[forced ?? ''];
  return value === undefined ? undefined : { value, variable: 'FORCE_COLOR' };
}

function fromEnvironment(
  spec: SettingSpec,
  env: Env,
  notices: string[],
): Partial<SettingInForce> | undefined {
  const shared = spec.key === 'colour' ? sharedColour(env) : undefined;
  if (shared) return { ...shared, source: 'environment' };
  for (const variable of spec.variables) {
    const text = env[variable];
    if (text === undefined || text === '') continue;
    const value = settingOf(spec, text);
    if (value !== undefined) return { value, source: 'environment', variable };
    notices.push(`${variable} is "${cleanText(text, 60)}"; it takes ${spec.takes}, so it is not used.`);
  }
  return undefined;
}

function resolveOne(
  spec: SettingSpec,
  flags: SettingFlags,
  env: Env,
  stored: Partial<SettingValues>,
  notices: string[],
): SettingInForce {
  const { key, name, about } = spec;
  const common = { key, name, about };
  const flag = flags[key];
  if (flag !== undefined) return { ...common, value: readSetting(spec, flag), source: 'flag' };
  const told = fromEnvironment(spec, env, notices);
  if (told !== undefined) return { ...common, value: spec.fallback, source: 'default', ...told };
  const kept = stored[key];
  if (kept !== undefined) return { ...common, value: kept, source: 'settings file' };
  return { ...common, value: spec.fallback, source: 'default' };
}

const LEARNER_DOUBT =
  'the settings do not say whose record to keep; name the learner with --learner or "mudlark settings set learner"';

/**
 * Resolves all settings.
 * @throws UsageError for a flag that a setting does not take; a wrong variable is a notice
 */
export async function resolveSettings(
  configFolder: string | undefined,
  flags: SettingFlags = {},
  env: Env = process.env,
): Promise<ResolvedSettings> {
  const stored: StoredSettings = configFolder === undefined ? NONE_STORED : await readStored(configFolder);
  const notices = [...stored.notices];
  const list = SETTING_KEYS.map((key) =>
    resolveOne(SETTINGS[key] as SettingSpec, flags, env, stored.values, notices),
  );
  const values = Object.fromEntries(list.map(({ key, value }) => [key, value])) as unknown as SettingValues;
  // Named here and now, whatever the file says: then there is no doubt.
  const isNamed = list.some(
    ({ key, source }) => key === 'learner' && (source === 'flag' || source === 'environment'),
  );
  return {
    values,
    list,
    notices,
    ...(configFolder !== undefined && { file: settingsPath(configFolder) }),
    ...(stored.hidesLearner && !isNamed && { learnerDoubt: LEARNER_DOUBT }),
  };
}

/**
 * Keeps settings for the next time.
 * @throws StoreError when there is no place for them or they cannot be written
 */
export async function keepSettings(
  configFolder: string | undefined,
  patch: Partial<SettingValues>,
): Promise<void> {
  if (configFolder === undefined)
    throw new StoreError(
      'there is no place for settings: set HOME or XDG_CONFIG_HOME; the setting was not kept',
    );
  await writeStored(configFolder, patch);
}

/**
 * Sets one setting by its name, as typed.
 * @param palettes ids of the palettes that there are
 * @returns the value as it is shown
 * @throws UsageError for a wrong name or value; StoreError when it cannot be kept
 */
export async function setSetting(
  configFolder: string | undefined,
  name: string,
  text: string,
  palettes: readonly string[],
): Promise<{ readonly name: string; readonly shown: string }> {
  const spec = findSetting(name);
  const value = readSetting(spec, text);
  if (spec.key === 'palette' && !palettes.includes(String(value)))
    throw new UsageError(
      `there is no palette called ${showSetting(value)}; there are: ${palettes.join(', ')}`,
    );
  await keepSettings(configFolder, { [spec.key]: value });
  return { name: spec.name, shown: showSetting(value) };
}
