/** `mudlark settings`: each value and where it came from; `mudlark settings set KEY VALUE`. */
import { shownPath } from '../files/faults.js';
import type { Profile, SettingInForce } from '../profile/index.js';
import { setSetting } from '../profile/settings.js';
import { showSetting } from '../profile/settings-keys.js';
import { padText, wrapText } from '../text/wrap.js';
import { document } from './run.js';

const sourceWords = ({ source, variable }: SettingInForce): string =>
  variable === undefined ? source : `${source} (${variable})`;

/** The settings as a table with what each is for. */
export function settingsText({ settings, problem }: Profile, columns = 80): string {
  const width = Math.max(40, Math.min(columns, 120));
  const rows = settings.list.flatMap((setting) => [
    `${padText(setting.name, 15)}${padText(showSetting(setting.value), 18)} ${sourceWords(setting)}`.trimEnd(),
    ...wrapText(setting.about, width - 2).map((line) => `  ${line}`),
  ]);
  const file =
    settings.file === undefined
      ? 'There is no place for a settings file.'
      : `Settings file: ${shownPath(settings.file)}`;
  return `${[...rows, '', file, ...(problem === undefined ? [] : [problem])].join('\n')}\n`;
}

/** The settings as one JSON document. */
export function settingsJson({ settings }: Profile): string {
  return document({
    file: settings.file ?? null,
    settings: settings.list.map(({ name, value, source, variable }) => ({
      name,
      value,
      source,
      ...(variable !== undefined && { variable }),
    })),
  });
}

/** What overrides a setting for now, as a sentence after another; nothing where nothing does. */
export function overriddenWords({ settings }: Profile, name: string): string {
  const inForce = settings.list.find((setting) => setting.name === name);
  const isOverridden = inForce?.source === 'flag' || inForce?.source === 'environment';
  return isOverridden ? ` It is overridden now by the ${sourceWords(inForce)}.` : '';
}

/**
 * Keeps a setting. @returns one line saying so, and what still overrides it
 * @throws UsageError for a wrong name or value; StoreError when it cannot be kept
 */
export async function settingsSet(
  profile: Profile,
  name: string,
  value: string,
  palettes: readonly string[],
): Promise<string> {
  const kept = await setSetting(profile.paths.config, name, value, palettes);
  return `${kept.name} is ${kept.shown}.${overriddenWords(profile, kept.name)}\n`;
}
