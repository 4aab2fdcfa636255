/** A run of practice on the shipped drills: placing, levels by hand, no repeats of drills or things, mending. */
import { describe, expect, it } from 'vitest';
import { drillRefs, drillsWithin } from '../../src/commands/drill-refs.js';
import { FAMILY_REFS } from '../../src/commands/family-refs.js';
import { palettePaints } from '../../src/commands/learner.js';
import { MadeDrills } from '../../src/commands/made-drills.js';
import { PracticeRun } from '../../src/commands/practice-run.js';
import { progressText } from '../../src/commands/progress.js';
import type { Drill } from '../../src/drills/kinds/index.js';
import { usedBy } from '../../src/drills/make/sentences.js';
import { shippedDrills } from '../../src/files/shipped.js';
import type { Answered } from '../../src/practice/index.js';
import { openProfile } from '../../src/profile/index.js';
import type { SetItem } from '../../src/tui/practice/deps.js';
import { freshHome } from '../profile/helpers.js';
import { kindOf, STUDIO } from '../studio.js';

freshHome();

const drills = await shippedDrills(STUDIO);
const written = new Map(drills.map((drill) => [drill.id, drill]));

async function newRun(seed = 7): Promise<PracticeRun> {
  const options = { engine: '0.2.0', minutes: undefined, seed, plan: undefined };
  return new PracticeRun(STUDIO, await openProfile(), drills, options);
}

const drillOf = (item: SetItem): Drill | undefined =>
  (item.drill ?? written.get(item.drillId)) as Drill | undefined;

/** An answer: the best, or a worse one that shows a mistake where there is one. */
function answerTo(drill: Drill, isBest: boolean, n: number): Answered {
  const kind = kindOf(drill);
  const worst = Object.fromEntries(kind.fields(drill).map(({ id, options }) => [id, options[0]?.id ?? '']));
  const answer = isBest ? kind.best(drill) : worst;
  const grade = kind.grade(drill, answer);
  const at = Date.now() + n;
  return {
    drill,
    answer,
    grade,
    mark: grade.mark,
    hints: 0,
    attempt: 1,
    feedback: 'each',
    why: '',
    shownAt: at,
    answeredAt: at,
  };
}

/** Answers a set as it is shown; the drills shown. */
function answerAll(
  run: PracticeRun,
  items: readonly SetItem[],
  isBest: boolean,
): { shown: Drill[]; given: Answered[] } {
  const shown: Drill[] = [];
  const given: Answered[] = [];
  for (const item of items) {
    const drill = drillOf(item);
    if (drill === undefined) continue;
    shown.push(drill);
    const entry = answerTo(drill, isBest, shown.length);
    given.push(entry);
    run.save(entry);
  }
  return { shown, given };
}

describe('the placing round on the shipped drills', () => {
  it('lifts whoever answers best, in fewer than eight decisions, and is over then', async () => {
    const run = await newRun();
    expect(run.placingIsOpen).toBe(true);
    const { shown, given } = answerAll(run, run.nextSet({ placing: true }), true);
    expect(shown[0]?.level).toBe(3);
    expect(new Set(shown.map(({ family }) => family)).size).toBe(shown.length);
    expect(shown.length).toBeLessThanOrEqual(8);
    expect(run.placingIsOpen).toBe(false);
    expect(run.summarise(given)?.lines[1]).toMatch(/^Your skills start at level 3/);
    const levels = run.nextSet().map((item) => drillOf(item)?.level ?? 0);
    expect(Math.min(...levels)).toBeGreaterThanOrEqual(3);
  });

  it('leaves whoever misses at level 1', async () => {
    const run = await newRun();
    const { given } = answerAll(run, run.nextSet({ placing: true }).slice(0, 8), false);
    if (given.filter(({ grade }) => grade.verdict === 'good').length > 1)
      throw new Error('the first options are mostly wrong');
    expect(run.summarise(given)?.lines[1]).toMatch(/level 1, with worked cases/);
  });
});

describe('sets on the shipped drills', () => {
  it('show no drill twice in four sets of a day', async () => {
    const run = await newRun();
    const ids: string[] = [];
    for (let set = 0; set < 4; set += 1)
      ids.push(...answerAll(run, run.nextSet(), set % 2 === 0).shown.map(({ id }) => id));
    expect(ids).toHaveLength(32);
    expect(new Set(ids).size).toBe(32);
  });

  it('keep to the level picked, and name no thing twice in a set', async () => {
    const run = await newRun();
    for (const family of ['darken-bright', 'tinting-strength', 'wet-and-dry']) {
      const { shown } = answerAll(run, run.nextSet({ family, level: 4 }), true);
      expect(shown.map((drill) => [drill.family, drill.level])).toEqual(Array(8).fill([family, 4]));
      const made = shown.filter(({ id }) => id.startsWith('made-'));
      const titles = made.map(({ title }) => title);
      expect(new Set(titles).size).toBe(titles.length);
    }
  });

  it('count a second try, and a drill that comes again, apart from the first answers', async () => {
    const run = await newRun();
    const [drill, other] = run.nextSet({ family: 'darken-bright', level: 3 }).map(drillOf);
    if (drill === undefined || other === undefined) throw new Error('a set has two drills');
    const given = [
      answerTo(drill, false, 1),
      { ...answerTo(drill, true, 2), attempt: 2 },
      answerTo(other, true, 3),
      answerTo(drill, true, 4),
    ];
    for (const answered of given) run.save(answered);
    expect(run.summarise(given)?.now).toMatchObject({ answers: 2, good: 1 });
    const { standing } = await openProfile();
    expect([standing.answers, standing.laterTries, standing.families.get('darken-bright')?.answers]).toEqual([
      2, 2, 2,
    ]);
    const text = progressText(await openProfile(), { families: FAMILY_REFS, now: new Date(), columns: 120 });
    expect(text).toMatch(/: 2 answers \(and 2 later tries, which are not counted\), 1 of 15 skills met/);
    expect(text).toContain(' 1/2 ');
  });

  it('compare an answer with the one before it in the family', async () => {
    const run = await newRun();
    const [first, second] = run.nextSet({ family: 'darken-bright', level: 3 }).map(drillOf);
    if (first === undefined || second === undefined) throw new Error('a set has two drills');
    expect(run.save(answerTo(first, true, 1)).compared).toBe('Well done: good, the first time you met this.');
    expect(run.save(answerTo(second, true, 2)).compared).toMatch(/last time/);
  });
});

it('mends each mistake of a set with a drill that can show it, none of them just done', async () => {
  const run = await newRun();
  const { shown, given } = answerAll(run, run.nextSet({ family: 'darken-bright', level: 2 }), false);
  const mistakes = run.summarise(given)?.mistakes ?? [];
  expect(mistakes.length).toBeGreaterThan(0);
  const mend = run.nextSet({ mend: mistakes }).map(drillOf);
  expect(mend.map((drill) => drill?.family)).toEqual(mistakes.map(({ family }) => family));
  for (const drill of mend) expect(shown.map(({ id }) => id)).not.toContain(drill?.id);
});

describe('made drills', () => {
  it('take another thing than the one shown before, from the same seed', () => {
    const palette = STUDIO.palettes.find(({ id }) => id === 'twelve')?.pigments ?? [];
    const request = { family: 'darken-bright', level: 3, seed: 5, palette, standIns: drills };
    const plain = new MadeDrills().make(STUDIO, request) as Drill;
    const other = new MadeDrills();
    other.note(plain);
    const used = usedBy(plain);
    expect(usedBy(other.make(STUDIO, request) as Drill).filter((key) => used.includes(key))).toEqual([]);
    expect(new MadeDrills().make(STUDIO, request)).toEqual(plain);
  });
});

it('every box has a worked case of every family, so that a family not met can start with one', () => {
  const families = new Set(drills.map(({ family }) => family));
  for (const { id } of STUDIO.palettes) {
    const refs = drillRefs(STUDIO, drillsWithin(drills, palettePaints(STUDIO, id)));
    const opened = new Set(refs.filter(({ isWorked }) => isWorked).map(({ family }) => family));
    expect(opened, id).toEqual(families);
  }
});

it('tells at a glance what was done last, as progress does', async () => {
  const run = await newRun();
  expect(run.glance(80)).toEqual(['Nothing practised yet.']);
  answerAll(run, run.nextSet({ family: 'darken-bright', level: 2 }), true);
  const lines = run.glance(80);
  expect(lines[1]).toBe('Last, just now: 8 of 8 good, mark 100, in Darken it and keep it bright');
  const options = { families: FAMILY_REFS, now: new Date(), columns: 80 };
  const text = progressText(await openProfile(), options).split('\n');
  expect(text.slice(2, 2 + lines.length)).toEqual(lines);
});
