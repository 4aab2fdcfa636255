import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { settingsJson, settingsSet, settingsText } from '../../src/commands/settings.js';
import { StoreError, UsageError } from '../../src/errors.js';
import { keepSettings, openProfile, resolveSettings, setSetting } from '../../src/profile/index.js';
import { answerNo, freshHome } from './helpers.js';

const home = freshHome();
const config = (): string => join(home.path, '.config', 'mudlark');
const PALETTES = ['six', 'twelve'];

describe('settings', () => {
  it('have defaults and write nothing by being read', async () => {
    const { values } = await resolveSettings(config());
    expect(values).toEqual({
      valueScale: 'paper-first',
      palette: 'twelve',
      screenReader: false,
      colour: 'auto',
      learner: 'me',
      welcomed: false,
    });
    expect(readdirSync(home.path)).toEqual([]);
  });

  it('come from the flag, then the environment, then the file, then the default', async () => {
    await setSetting(config(), 'palette', 'twelve', PALETTES);
    const from = async (flags = {}, env = {}): Promise<unknown> => {
      const { list } = await resolveSettings(config(), flags, env);
      const { value, source } = list.find(({ key }) => key === 'palette') ?? {};
      return `${value} ${source}`;
    };
    expect(await from()).toBe('twelve settings file');
    expect(await from({}, { MUDLARK_PALETTE: 'mine' })).toBe('mine environment');
    expect(await from({ palette: 'six' }, { MUDLARK_PALETTE: 'mine' })).toBe('six flag');
    expect((await resolveSettings(undefined, {}, {})).list.every(({ source }) => source === 'default')).toBe(
      true,
    );
  });

  it('know the variables that all programs share', async () => {
    const colour = async (env: Record<string, string>): Promise<unknown> =>
      (await resolveSettings(undefined, {}, env)).values.colour;
    expect(await colour({ NO_COLOR: '1', FORCE_COLOR: '3' })).toBe('none');
    expect(await colour({ NO_COLOR: '' })).toBe('auto');
    expect(await colour({ FORCE_COLOR: '2' })).toBe('256');
    expect((await resolveSettings(undefined, {}, { INK_SCREEN_READER: 'true' })).values.screenReader).toBe(
      true,
    );
  });

  it('pass over a variable that does not fit, and say so; refuse a flag that does not', async () => {
    const { values, notices } = await resolveSettings(undefined, {}, { MUDLARK_COLOUR: 'blue\u001b[2J' });
    expect(values.colour).toBe('auto');
    expect(notices).toEqual([
      'MUDLARK_COLOUR is "blue"; it takes auto, none, 16, 256 or full, so it is not used.',
    ]);
    await expect(resolveSettings(undefined, { colour: 'blue' })).rejects.toThrow(UsageError);
  });

  it('are kept, and leave the others alone', async () => {
    await keepSettings(config(), { welcomed: true, palette: 'twelve' });
    expect(await setSetting(config(), 'value-scale', 'black-first', PALETTES)).toEqual({
      name: 'value-scale',
      shown: 'black-first',
    });
    expect(JSON.parse(readFileSync(join(config(), 'settings.json'), 'utf8'))).toEqual({
      welcomed: true,
      palette: 'twelve',
      valueScale: 'black-first',
    });
  });

  it('refuse wrong names and values with what there is', async () => {
    await expect(setSetting(config(), 'pallete', 'six', PALETTES)).rejects.toThrow(
      /there are: value-scale, palette/,
    );
    await expect(setSetting(config(), 'palette', 'seven', PALETTES)).rejects.toThrow(
      /there are: six, twelve/,
    );
    await expect(setSetting(config(), 'colour', 'blue', PALETTES)).rejects.toThrow(
      /it takes auto, none, 16, 256 or full/,
    );
    await expect(setSetting(config(), 'constructor', 'x', PALETTES)).rejects.toThrow(UsageError);
    expect(existsSync(config())).toBe(false);
  });

  it.each([
    ['not JSON', '{"palette": "tw'],
    ['empty', ''],
    ['an array', '[1, 2]'],
  ])('keep a damaged file aside and say so: %s', async (_, text) => {
    mkdirSync(config(), { recursive: true });
    for (const n of [1, 2]) {
      writeFileSync(join(config(), 'settings.json'), text);
      const { values, notices } = await resolveSettings(config());
      expect(values.palette).toBe('twelve');
      expect(notices).toHaveLength(1);
      const aside = n === 1 ? 'settings.damaged.json' : 'settings.damaged-2.json';
      expect(notices[0]).toContain(aside);
      expect(readFileSync(join(config(), aside), 'utf8')).toBe(text);
    }
    expect((await resolveSettings(config())).notices).toEqual([]);
  });

  it.each([
    [
      'a word of a newer version',
      { colour: 'vivid' },
      /colour takes auto, none, 16, 256 or full; .* left as it is/,
    ],
    ['a wrong type', { palette: 7 }, /palette takes the id of a palette/],
    ['a form of a newer version', { valueScale: { from: 1, to: 12 } }, /value-scale takes paper-first or/],
  ])('are judged one by one: %s leaves the others and the file alone', async (_, odd, notice) => {
    mkdirSync(config(), { recursive: true });
    const all = { learner: 'Ada', screenReader: true, brushes: 3, ...odd };
    const path = join(config(), 'settings.json');
    writeFileSync(path, JSON.stringify(all));
    const profile = await openProfile();
    expect(profile).toMatchObject({ learner: 'Ada', saving: true });
    expect(profile.settings.values).toMatchObject({ screenReader: true, colour: 'auto', palette: 'twelve' });
    expect(profile.notices).toHaveLength(1);
    expect(profile.notices[0]).toMatch(notice);
    await keepSettings(config(), { welcomed: true });
    expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual({ ...all, welcomed: true });
    expect(readdirSync(config())).toEqual(['settings.json']);
  });

  it.each([
    ['the learner in a form of a newer version', '{"learner": {"name": "Ada"}}'],
    ['a learner without a name', '{"learner": ""}'],
    ['a damaged file', '{"learner": "Ada", "pal'],
  ])("keep no other learner's record: %s", async (_, text) => {
    mkdirSync(config(), { recursive: true });
    writeFileSync(join(config(), 'settings.json'), text);
    const profile = await openProfile();
    expect(profile.save(answerNo(1)).saved).toBe(false);
    expect(profile.problem).toMatch(
      /^Not saving: the settings do not say whose record to keep; name the learner with --learner .* nothing is kept\.$/,
    );
    expect(existsSync(join(home.path, '.local'))).toBe(false);
    writeFileSync(join(config(), 'settings.json'), text);
    expect(await openProfile({ learner: 'Ada' })).toMatchObject({ learner: 'Ada', saving: true });
  });

  it('take a file of a newer version: what it does not know stays', async () => {
    mkdirSync(config(), { recursive: true });
    writeFileSync(join(config(), 'settings.json'), '{"palette": "twelve", "brushes": 3}');
    expect((await resolveSettings(config())).values.palette).toBe('twelve');
    await keepSettings(config(), { screenReader: true });
    expect(JSON.parse(readFileSync(join(config(), 'settings.json'), 'utf8'))).toMatchObject({ brushes: 3 });
  });

  it('cannot be kept without a place, in one line', async () => {
    await expect(keepSettings(undefined, { palette: 'six' })).rejects.toThrow(StoreError);
    await expect(keepSettings('/proc/self/mudlark', { palette: 'six' })).rejects.toThrow(
      /the setting was not kept$/,
    );
  });
});

describe('mudlark settings', () => {
  it('lists each value and where it came from', async () => {
    process.env['NO_COLOR'] = '1';
    await keepSettings(config(), { palette: 'twelve' });
    const profile = await openProfile({ learner: 'Ada' });
    const text = settingsText(profile, 60);
    expect(text).toMatch(/^palette +twelve +settings file$/m);
    expect(text).toMatch(/^learner +Ada +flag$/m);
    expect(text).toMatch(/^colour +none +environment \(NO_COLOR\)$/m);
    expect(text).toMatch(/^value-scale +paper-first +default$/m);
    const document = JSON.parse(settingsJson(profile));
    expect(document.schemaVersion).toBe(1);
    expect(document.settings).toContainEqual({ name: 'palette', value: 'twelve', source: 'settings file' });
  });

  it('sets a value and says what overrides it', async () => {
    process.env['MUDLARK_PALETTE'] = 'six';
    const profile = await openProfile();
    expect(await settingsSet(profile, 'palette', 'twelve', PALETTES)).toBe(
      'palette is twelve. It is overridden now by the environment (MUDLARK_PALETTE).\n',
    );
    expect(await settingsSet(profile, 'screenReader', 'yes', PALETTES)).toBe('screen-reader is yes.\n');
  });
});
