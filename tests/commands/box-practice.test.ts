import { describe, expect, it } from 'vitest';
import { changeBox, copyBox, followName, keepOwnBox } from '../../src/commands/box-change.js';
import { filesOf } from '../../src/commands/learner-files.js';
import { PracticeRun } from '../../src/commands/practice-run.js';
import { checkDrill } from '../../src/drills/check.js';
import { type Drill, kindOf as kindIn } from '../../src/drills/kinds/index.js';
import { GENERATED_FAMILIES, generateDrill } from '../../src/drills/make/index.js';
import { paintsIn } from '../../src/drills/paint-names.js';
import { shippedDrills } from '../../src/files/shipped.js';
import { boxStudio, paintOf, revisionOf } from '../../src/paints/index.js';
import {
  changeOwn,
  keepSettings,
  type OwnBox,
  openProfile,
  type Profile,
  paletteOf,
  readEntries,
} from '../../src/profile/index.js';
import type { SetItem } from '../../src/tui/practice/deps.js';
import { WRITTEN } from '../../src/words/voice.js';
import { some } from '../cases.js';
import { freshHome } from '../profile/helpers.js';
import { STUDIO } from '../studio.js';

freshHome();

const drills = await shippedDrills(STUDIO);
const written = new Map(drills.map((drill) => [drill.id, drill]));
const FIVE = ['burnt-sienna', 'ultramarine-blue', 'cadmium-yellow', 'alizarin-crimson', 'sap-green'];
const OWN: OwnBox = {
  name: 'studio',
  paints: FIVE.map((paint) =>
    paint === 'burnt-sienna' ? { paint, name: 'my sienna', strength: 2 } : { paint },
  ),
};

async function profileWith(box: OwnBox, used = box.name): Promise<Profile> {
  keepOwnBox(await openProfile(), box.name, () => box);
  return openProfile({ palette: used });
}

const runOf = (profile: Profile): PracticeRun =>
  new PracticeRun(STUDIO, profile, drills, { engine: 'test', minutes: undefined, seed: 7, plan: undefined });
const drillOf = (item: SetItem): Drill | undefined =>
  (item.drill ?? written.get(item.drillId)) as Drill | undefined;

describe('a run with a box of one’s own', () => {
  it('asks of its paints alone, written and made, and says once what is left out', async () => {
    const run = runOf(await profileWith(OWN));
    const shown: Drill[] = [];
    for (const family of [
      'darken-bright',
      'neutraliser',
      'tinting-strength',
      'one-paint-ladder',
      'wet-and-dry',
    ])
      shown.push(...run.nextSet({ family, level: 4 }).flatMap((item) => drillOf(item) ?? []));
    expect(shown.length).toBeGreaterThan(20);
    expect(shown.filter(({ id }) => id.startsWith('made-')).length).toBeGreaterThan(5);
    for (const drill of shown) {
      if (drill.kind !== 'worked')
        expect([drill.id, FIVE]).toEqual([drill.id, expect.arrayContaining(paintsIn(drill))]);
    }
    for (const drill of some(shown, 4))
      expect([drill.id, checkDrill(run.studio, drill).faults]).toEqual([drill.id, []]);
    expect(run.leftOutNote()).toMatch(/^With the studio box \d+ of \d+ written drills are left out: /);
    expect(run.leftOutNote()).toBeUndefined();
  });

  it('offers no drill of other paints where the box holds none of a family', async () => {
    const run = runOf(
      await profileWith({ name: 'two', paints: [{ paint: 'chinese-white' }, { paint: 'naples-yellow' }] }),
    );
    const shown = run.nextSet({ family: 'darken-bright', level: 5 }).flatMap((item) => drillOf(item) ?? []);
    expect(shown.filter(({ kind }) => kind !== 'worked')).toEqual([]);
  });

  it('predicts with the strengths of the box, names its paints as their owner does, and follows when it changes', async () => {
    const profile = await profileWith(OWN);
    const run = runOf(profile);
    expect(paintOf(run.studio, 'burnt-sienna')).toMatchObject({ name: 'my sienna', timesLibrary: 2 });
    keepOwnBox(profile, 'studio', () => ({ ...OWN, paints: OWN.paints.slice(1) }));
    run.takeBox();
    expect(paintOf(run.studio, 'burnt-sienna')).toBe(paintOf(STUDIO, 'burnt-sienna'));
    run.takeBox('twelve');
    expect(run.leftOutNote()).toBeUndefined();
    run.takeBox('gone');
    expect(run.nextSet({}).length).toBeGreaterThan(0);
  });

  it('takes changes of a screen as the command does, and what is said of the paints into a new box', async () => {
    const profile = await profileWith(OWN);
    changeBox(profile, STUDIO, 'studio', { remove: FIVE.slice(2), add: ['viridian'] });
    copyBox(profile, STUDIO, 'my-box', 'studio');
    copyBox(profile, STUDIO, 'plain', 'six');
    changeBox(profile, STUDIO, 'my-box', {
      nameOf: ['burnt-sienna=', 'viridian=a=b'],
      strength: ['viridian=0.25', 'burnt-sienna=1'],
    });
    const sienna = { paint: 'burnt-sienna', name: 'my sienna', strength: 2 };
    const six = STUDIO.palettes.find(({ id }) => id === 'six')?.pigments ?? [];
    expect((await openProfile()).own.boxes).toEqual([
      { name: 'studio', paints: [sienna, { paint: 'ultramarine-blue' }, { paint: 'viridian' }] },
      {
        name: 'my-box',
        paints: [
          { paint: 'burnt-sienna' },
          { paint: 'ultramarine-blue' },
          { paint: 'viridian', name: 'a=b', strength: 0.25 },
        ],
      },
      { name: 'plain', paints: six.map((paint) => ({ paint })) },
    ]);
  });

  it.each([
    [{ strength: ['burnt-sienna=4.1'] }, /^the strength of burnt-sienna must be 0.25 to 4 times/],
    [{ strength: ['burnt-sienna=strong'] }, /^the strength of burnt-sienna must be a number/],
    [{ nameOf: ['burnt-sienna=raw umber'] }, /^"raw umber" is the name of another paint/],
    [{ nameOf: ['sap-green=MY SIENNA'] }, /^two paints would be called "my sienna"/],
    [{ name: 'My Box' }, /^the name of a box \("my box"\) must be small letters/],
    [{ name: 'six' }, /^there is a box called six already; choose another name$/],
    [{ name: '' }, /^the name of a box/],
  ])('refuses %j in one line, and changes nothing', async (change, words) => {
    const profile = await profileWith(OWN);
    expect(() => changeBox(profile, STUDIO, 'studio', change)).toThrow(words);
    expect((await openProfile()).own.boxes).toEqual([OWN]);
  });

  it('finds a box under its new name: what dried of its tubes, and the setting, whichever box is in use for now', async () => {
    const profile = await profileWith(OWN);
    const wash = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
    const at = '2026-03-02T10:15:00.000Z';
    const readings = ['studio', 'other'].map((box) => ({ box, at, wash, mixed: { step: 4 } }));
    profile.own = changeOwn(filesOf(profile), profile.learner, (own) => ({ ...own, readings }));
    await keepSettings(profile.paths.config, { palette: 'studio' });
    const before = revisionOf(paletteOf(STUDIO, OWN));
    const box = changeBox(profile, STUDIO, 'studio', { name: 'Quay' });
    await followName(profile, 'studio', box.name);
    const after = await openProfile();
    expect(after.own.boxes).toEqual([{ ...OWN, name: 'quay' }]);
    expect(after.own.readings?.map((reading) => reading.box)).toEqual(['quay', 'other']);
    expect(after.settings.values.palette).toBe('quay');
    // What the record says of the box still holds: the revision knows no names.
    expect(revisionOf(paletteOf(STUDIO, box))).toBe(before);
    await followName(after, 'studio', 'elsewhere');
    expect((await openProfile()).settings.values.palette).toBe('quay');
  });

  it('shows the owner’s names among what can be chosen and in what is said', async () => {
    const run = runOf(
      await profileWith({ ...OWN, paints: OWN.paints.map(({ strength: _none, ...each }) => each) }),
    );
    const drill = drills.find(
      (each) =>
        each.kind === 'mix' &&
        each.tray.includes('burnt-sienna') &&
        !Object.hasOwn(each.start.paints, 'burnt-sienna') &&
        paintsIn(each).every((id) => FIVE.includes(id)),
    );
    if (drill === undefined) throw new Error('no drill with burnt sienna to choose');
    const kind = kindIn(run.studio, drill);
    const labels = kind.fields(drill).flatMap(({ options }) => options.map(({ label }) => label));
    expect(labels).toContain('my sienna');
    expect(labels).not.toContain('burnt sienna');
    expect(kind.label(drill, { ...kind.best(drill), second: 'burnt-sienna' }, WRITTEN)).toContain(
      'my sienna',
    );
  });

  it('keeps with each answer which box it was, and its revision', async () => {
    const profile = await profileWith(OWN);
    const run = runOf(profile);
    const [item] = run.nextSet({ family: 'neutraliser', level: 3 });
    const drill = item && drillOf(item);
    if (drill === undefined) throw new Error('no drill');
    const kind = kindIn(run.studio, drill);
    const grade = kind.grade(drill, kind.best(drill));
    const given = { drill, answer: kind.best(drill), grade, mark: grade.mark };
    const save = () =>
      run.save({
        ...given,
        hints: 0,
        attempt: 1,
        feedback: 'each',
        why: '',
        shownAt: 0,
        answeredAt: Date.now(),
      });
    save();
    run.takeBox('twelve');
    save();
    const kept = readEntries(profile.files?.record ?? '').map(({ box }) => box);
    const twelve = STUDIO.palettes.find(({ id }) => id === 'twelve');
    expect(kept).toEqual([
      { id: 'studio', revision: revisionOf(paletteOf(STUDIO, OWN)) },
      { id: 'twelve', revision: twelve && revisionOf(twelve) },
    ]);
  });
});

it('makes drills that hold at the strengths of a box, of every family', () => {
  const box = paletteOf(STUDIO, {
    ...OWN,
    paints: [...OWN.paints, { paint: 'cobalt-blue' }, { paint: 'raw-sienna' }],
  });
  const own = boxStudio(STUDIO, box);
  for (const family of GENERATED_FAMILIES) {
    const drill = generateDrill(own, { seed: 3, family, level: 3, palette: box.pigments });
    expect([family, box.pigments]).toEqual([family, expect.arrayContaining(paintsIn(drill))]);
    expect([family, checkDrill(own, drill).faults]).toEqual([family, []]);
  }
});
