/** What a learner has put together, along with the record: out, in and anew; and the mixtures of the bench. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keepOwnBox } from '../../src/commands/box-change.js';
import { mixtureShelf } from '../../src/commands/kept-mixtures.js';
import { recordExport, recordExportText, recordImport, recordReset } from '../../src/commands/record.js';
import { MOST_MIXTURES, type OwnBox, openProfile, type Profile } from '../../src/profile/index.js';
import { parseOwn } from '../../src/profile/own-studio.js';
import { STUDIO } from '../studio.js';
import { answerNo, DAY, freshHome, START } from './helpers.js';

const home = freshHome();
const now = new Date(START + DAY);

const STUDIO_BOX: OwnBox = {
  name: 'studio',
  paints: [{ paint: 'burnt-sienna', name: 'my sienna', strength: 1.4 }, { paint: 'ultramarine-blue' }],
};
const FIELD_BOX: OwnBox = { name: 'field', paints: [{ paint: 'viridian' }, { paint: 'burnt-sienna' }] };

const put = (profile: Profile, box: OwnBox): OwnBox => keepOwnBox(profile, box.name, () => box);
const pathOf = (profile: Profile): string => profile.files?.studio ?? '';

describe('along with the record', () => {
  async function withBoxes(learner: string): Promise<Profile> {
    const profile = await openProfile({ learner });
    profile.save(answerNo(1, { box: { id: 'studio', revision: '0123abcd' } }));
    put(profile, STUDIO_BOX);
    put(profile, FIELD_BOX);
    return profile;
  }

  it('goes out and comes in, byte for byte', async () => {
    const ana = await withBoxes('Ana');
    const file = join(home.path, 'ana.json');
    recordExport(ana, file, { now });
    const ben = await openProfile({ learner: 'Ben' });
    expect(recordImport(ben, file)).toMatch(/1 answer added.*\nBoxes added: studio and field\./s);
    expect(readFileSync(pathOf(ben), 'utf8')).toBe(readFileSync(pathOf(ana), 'utf8'));
    expect(recordImport(ben, file)).not.toContain('Boxes');
  });

  it('replaces nothing unasked', async () => {
    const { text } = recordExportText(await withBoxes('Ana'), { now });
    const ben = await openProfile({ learner: 'Ben' });
    const own: OwnBox = { ...STUDIO_BOX, paints: FIELD_BOX.paints };
    put(ben, own);
    const bring = (force: boolean): string => recordImport(ben, '-', Buffer.from(text), force);
    expect(bring(false)).toMatch(/Boxes added: field\.\n.*stay as they are: studio\. --force replaces them/s);
    expect(ben.own.boxes).toEqual([own, FIELD_BOX]);
    expect(bring(true)).toContain('Boxes replaced: studio.');
    expect(ben.own.boxes).toEqual([STUDIO_BOX, FIELD_BOX]);
  });

  it('brings the answers in where its boxes cannot be used, and says so', async () => {
    const { text } = recordExportText(await withBoxes('Ana'), { now });
    const spoilt = text.replace('"my sienna"', '"my\\u001b[2Jsienna"');
    const ben = await openProfile({ learner: 'Ben' });
    const said = recordImport(ben, '-', Buffer.from(spoilt));
    expect(said).toMatch(/1 answer added.*\nits boxes: .*cannot be shown.*; they were left out\.\n/s);
    expect(existsSync(pathOf(ben))).toBe(false);
  });

  it('says that lines hold no boxes', async () => {
    const said = recordExport(await withBoxes('Ana'), join(home.path, 'ana.jsonl'), { now });
    expect(said).toContain('Your boxes are not in it: a file that ends in .json takes them along.');
  });

  it('carries a file of a newer version out as it stands', async () => {
    const ana = await withBoxes('Ana');
    writeFileSync(pathOf(ana), '{"format": 2, "brushes": ["mop"]}');
    const { text } = recordExportText(await openProfile({ learner: 'Ana' }), { now });
    expect(JSON.parse(text).studio).toEqual({ format: 2, brushes: ['mop'] });
  });

  it('begins anew, and keeps a copy', async () => {
    const ana = await withBoxes('Ana');
    const before = readFileSync(pathOf(ana), 'utf8');
    let asked = '';
    await recordReset(
      ana,
      (question) => {
        asked = question;
        return true;
      },
      now,
    );
    expect(asked).toContain('with 1 answer and 2 of your own boxes');
    expect(ana.own.boxes).toEqual([]);
    const folder = dirname(pathOf(ana));
    const copies = readdirSync(folder).filter((name) => name.includes('.until-'));
    expect(copies.map((name) => name.replace(/until-.*(?=\.)/, ''))).toEqual([
      'record..jsonl',
      'studio..json',
    ]);
    const copy = copies.find((name) => name.startsWith('studio')) ?? '';
    expect(readFileSync(join(folder, copy), 'utf8')).toBe(before);
  });

  it('reads records without boxes, and refuses a box that is none', async () => {
    const { isEntry } = await import('../../src/practice/index.js');
    expect(isEntry(answerNo(1))).toBe(true);
    expect(isEntry(answerNo(1, { box: { id: 'six', revision: '00000000' } }))).toBe(true);
    for (const wrong of [
      7,
      {},
      { id: 'six' },
      { id: 'a\u001b', revision: '1' },
      { id: 'x'.repeat(201), revision: '1' },
    ])
      expect(isEntry({ ...answerNo(1), box: wrong })).toBe(false);
  });
});

describe('mixtures of the bench', () => {
  const laid = { paints: { 'burnt-sienna': 1 }, strength: 0.3, add: { 'ultramarine-blue': 0.25 } };
  const shelfOf = (profile: Profile) => mixtureShelf(profile, STUDIO);

  it('are kept under their names, replaced by name, and taken away', async () => {
    const profile = await openProfile();
    const shelf = shelfOf(profile);
    expect(shelf.keep({ name: 'harbour shade', laid })).toMatchObject({ told: 'Kept: harbour shade.' });
    const other = { name: 'harbour shade', laid: { ...laid, strength: 0.5 } };
    expect(shelf.keep(other)).toMatchObject({ kept: [other], told: /in place of the other/ });
    shelf.keep({ name: 'tar', laid });
    expect(shelfOf(await openProfile()).all()).toEqual([other, { name: 'tar', laid }]);
    expect(shelf.remove('harbour shade').kept).toEqual([{ name: 'tar', laid }]);
  });

  it('go out and in with the record; those under a name that is there stay', async () => {
    const ana = await openProfile({ learner: 'Ana' });
    ana.save(answerNo(1));
    for (const name of ['harbour shade', 'tar']) shelfOf(ana).keep({ name, laid });
    const { text } = recordExportText(ana, { now });
    const ben = await openProfile({ learner: 'Ben' });
    const own = { name: 'tar', laid: { ...laid, strength: 0.9 } };
    shelfOf(ben).keep(own);
    expect(recordImport(ben, '-', Buffer.from(text))).toContain('Kept mixtures added: 1.');
    expect(shelfOf(ben).all()).toEqual([own, { name: 'harbour shade', laid }]);
    expect(recordImport(ben, '-', Buffer.from(text))).not.toContain('mixtures');
  });

  it('of paints that this version does not have are kept and not shown', async () => {
    const profile = await openProfile();
    const strange = { name: 'old', laid: { paints: { 'mummy-brown': 1 }, strength: 0.3 } };
    shelfOf(profile).keep(strange);
    expect(shelfOf(profile).all()).toEqual([]);
    expect(profile.own.mixtures).toEqual([strange]);
  });

  it('are two hundred at most', async () => {
    const profile = await openProfile();
    shelfOf(profile).keep({ name: 'first', laid });
    const all = Array.from({ length: MOST_MIXTURES }, (_, at) => ({ name: `no ${at}`, laid }));
    writeFileSync(pathOf(profile), JSON.stringify({ format: 1, boxes: [], mixtures: all }));
    const full = shelfOf(await openProfile());
    expect(full.keep({ name: 'one more', laid })).toMatchObject({ told: /take one away first/ });
    expect(full.keep({ name: 'no 7', laid }).told).toMatch(/in place of/);
  });

  it.each<[string, unknown]>([
    ['a steering name', { name: 'a\u001b[2Jb', laid }],
    ['an endless name', { name: 'x'.repeat(41), laid }],
    ['a strength beyond a masstone', { name: 'a', laid: { ...laid, strength: 1.5 } }],
    ['nothing laid', { name: 'a' }],
    ['more than is known', { name: 'a', laid, brush: 'mop' }],
  ])('refuses %s', (_, mixture) => {
    const text = JSON.stringify({ format: 1, boxes: [], mixtures: [mixture] });
    expect(() => parseOwn(text, 'file')).toThrow(/^file: [^\n]+$/);
  });
});
