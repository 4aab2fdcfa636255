/**
 * Swatches side by side for those who see fewer colours: wherever two are told apart by their colours, figures or words beside them do so
 * too, or enough of the difference is left (tests/deficiencies.ts). What stands beside them is asked of what draws them, in the fewest
 * columns that they get.
 */
import { parse } from 'culori';
import { describe, expect, it } from 'vitest';
import type { Drill } from '../../src/drills/kinds/index.js';
import { GENERATED_FAMILIES, generateDrill } from '../../src/drills/make/index.js';
import type { Answer, ResultSwatch } from '../../src/drills/types.js';
import type { Spectrum } from '../../src/optics/index.js';
import { benchLaid, broughtAs, fromLaid } from '../../src/tui/bench/mixture.js';
import { sceneTexts } from '../../src/tui/drill/scene.js';
import { optionName } from '../../src/tui/kit/field-parts.js';
import { UNICODE } from '../../src/tui/kit/glyphs.js';
import type { Stage, World } from '../../src/tui/kit/stage.js';
import { patchText } from '../../src/tui/kit/swatch.js';
import { besidePatch, leastGiven, wordsUnder } from '../../src/tui/quiz/room/patches.js';
import { ladderLines } from '../../src/tui/result/ladder.js';
import { seeLaid, WAYS } from '../../src/washes/index.js';
import { lookOf } from '../../src/words/look.js';
import { WRITTEN } from '../../src/words/voice.js';
import { casesOf, some } from '../cases.js';
import { deltaE, LEAST_SEEN, leastLeft } from '../deficiencies.js';
import { boxOf, LEVELS } from '../drills/make/made.js';
import { kindOf, STUDIO } from '../studio.js';
import { SHIPPED } from '../words/answers.js';

/** A patch and what stands beside it of its colour: a step, a chroma, words, or the paint that it is. */
interface Patch {
  readonly name: string;
  readonly hex: string;
  readonly said: string;
}

/** CIEDE2000 from which a usual eye takes two swatches for two colours at a look; invented. */
const USUAL = 5;

/** Pairs that a usual eye tells apart, and of these the ones that nothing but hue does. */
function looked(patches: readonly Patch[]): { pairs: number; lost: string[] } {
  let pairs = 0;
  const lost: string[] = [];
  for (const [at, one] of patches.entries())
    for (const other of patches.slice(at + 1)) {
      const [a, b] = [parse(one.hex), parse(other.hex)];
      if (a === undefined || b === undefined) throw new Error(`${one.hex} or ${other.hex} is no colour`);
      if (deltaE(a, b) < USUAL) continue;
      pairs += 1;
      const left = leastLeft(a, b);
      if (one.said === other.said && left < LEAST_SEEN)
        lost.push(`${one.name} and ${other.name}, both "${one.said}", ${left.toFixed(1)}`);
    }
  return { pairs, lost };
}

/** Fewest columns of a screen, of a patch of the question, of a result and of a why (beside.ts, places.ts, why/view.tsx). */
const NARROW = { screen: 58, given: 8, result: 11, why: 15 } as const;

const saidUnder = (
  { reflectance, unread }: Pick<ResultSwatch, 'reflectance' | 'unread'>,
  columns: number,
  isBrief: boolean,
): string => {
  const text = { columns, wordRows: 0, valueOnly: isBrief, unread };
  const { figures, words } = patchText(lookOf(reflectance), text, WRITTEN, '~');
  return [...figures, ...words].join(' ');
};

const under = (swatches: readonly ResultSwatch[], columns: number, isBrief = false): Patch[] =>
  swatches.map((swatch) => ({
    name: swatch.label,
    hex: lookOf(swatch.reflectance).hex,
    said: saidUnder(swatch, columns, isBrief),
  }));

/** A rung of a ladder with what stands under each of its patches. */
function rung(patches: Readonly<Record<string, Spectrum | undefined>>): Patch[] {
  return Object.entries(patches).flatMap(([name, film]) => {
    if (film === undefined) return [];
    const look = { columns: NARROW.result, rows: 6, level: 3, voice: WRITTEN, glyphs: UNICODE };
    const lines = ladderLines(
      [
        { name: 'x', yours: film },
        { name: 'y', yours: film },
      ],
      undefined,
      look,
    );
    const texts = lines.map((line) =>
      line
        .map(({ text }) => text)
        .join('')
        .trim(),
    );
    return [{ name, hex: lookOf(film).hex, said: texts.slice(1).filter(Boolean).join(' ') }];
  });
}

/** The lines of the goal in which the colours stand where there is least room. */
function inGoal(drill: Drill): Patch[] {
  const kind = kindOf(drill);
  const given = kind.given(drill);
  const world = { kindOf: () => kind } as unknown as World;
  const told = { drill, worked: false, message: undefined, hint: 'hidden' } as const;
  const { goal } = sceneTexts(told as never, world, NARROW.screen, WRITTEN, { given, flat: false });
  const heads = goal.map(([head]) => head?.text.trim() ?? '');
  return given.flatMap(({ label, reflectance }) => {
    const from = heads.indexOf(label);
    if (from < 0) return [];
    const end = heads.findIndex((head, at) => at > from && head !== '');
    const pieces = goal.slice(from, end < 0 ? goal.length : end).flatMap((line) => line.slice(1));
    const told = pieces.map(({ text }) => text.trim()).join(' ');
    // What a plan asks for is not what lies there.
    const said = drill.kind === 'diagnosis' ? (told.split('; it is ')[1] ?? '') : told;
    return [{ name: label, hex: lookOf(reflectance).hex, said }];
  });
}

/** Columns of patches on a slide of the room: the fewest beside the answers, and all of its smallest size. */
const ON_SLIDE = [24, 40, NARROW.screen];
const IN_COLOUR = { colourLevel: 3, settings: { screenReader: false } } as unknown as Stage;

/** Patches of the question on a slide: with two lines of words under each, or each in a line. */
const onSlide = (given: readonly ResultSwatch[], columns: number): Patch[] => {
  const isWide = Number.isFinite(leastGiven(IN_COLOUR, given, columns));
  const under = wordsUnder(given, columns, 2, WRITTEN);
  return given.map((swatch, at) => ({
    name: swatch.label,
    hex: lookOf(swatch.reflectance).hex,
    said: isWide ? (under[at] ?? []).join(' ') : besidePatch(swatch, columns, WRITTEN).words,
  }));
};

/** Every place where swatches of a drill lie side by side. */
function places(drill: Drill): Readonly<Record<string, Patch[]>> {
  const kind = kindOf(drill);
  const best = kind.best(drill);
  const answers: Answer[] = [best, ...(kind.tempting?.(drill) ?? []).slice(0, 1)];
  const grades = answers.map((answer) => kind.grade(drill, answer));
  return {
    ...Object.fromEntries(
      kind.fields(drill).map((field) => [
        `choices of ${field.id}`,
        field.options.flatMap((option) =>
          option.swatch === undefined
            ? []
            : [
                {
                  name: option.label,
                  hex: lookOf(option.swatch).hex,
                  // A paint's name says which it is; a letter says nothing.
                  said: option.pigment === undefined ? '' : optionName(option),
                },
              ],
        ),
      ]),
    ),
    question: under(kind.given(drill), NARROW.given, true),
    'lines of the goal': inGoal(drill),
    ...Object.fromEntries(
      ON_SLIDE.map((columns) => [`slide of ${columns} columns`, onSlide(kind.given(drill), columns)]),
    ),
    ...Object.fromEntries(
      grades.flatMap(({ swatches, steps = [] }, at) => [
        [`result ${at}`, under(swatches, NARROW.result)],
        ...steps.flatMap(({ name, before, yours, best: aim }) => [
          [`ladder ${at}, ${name}`, rung({ before, yours, best: aim })],
        ]),
        [`ladder ${at}, yours`, rung(Object.fromEntries(steps.map(({ name, yours }) => [name, yours])))],
      ]),
    ),
    why: under(kind.why?.(drill, best).patches ?? [], NARROW.why),
  };
}

function lostIn(drills: readonly Drill[]): { pairs: number; lost: string[] } {
  const all = drills.flatMap((drill) =>
    Object.entries(places(drill)).map(([place, patches]) => {
      const { pairs, lost } = looked(patches);
      return { pairs, lost: lost.map((words) => `${drill.id}, ${place}: ${words}`) };
    }),
  );
  return { pairs: all.reduce((sum, { pairs }) => sum + pairs, 0), lost: all.flatMap(({ lost }) => lost) };
}

/** An orange brown and an olive of CIEDE2000 27, of which protanopia leaves 0.2. */
const ALIKE = { brown: '#c77e41', olive: '#7f8942' } as const;

describe('what is looked for', () => {
  const patch = (name: keyof typeof ALIKE, said: string): Patch => ({ name, hex: ALIKE[name], said });

  it('is found: two colours that hue alone tells apart', () => {
    expect(looked([patch('brown', ''), patch('olive', '')]).lost).toHaveLength(1);
    expect(looked([patch('brown', 'step 5'), patch('olive', 'step 5')]).lost).toHaveLength(1);
    expect(looked([patch('brown', 'brown'), patch('olive', 'olive')])).toEqual({ pairs: 1, lost: [] });
    expect(looked([patch('brown', ''), patch('brown', '')])).toEqual({ pairs: 0, lost: [] });
  });
});

describe('swatches side by side', () => {
  it('are told apart in every written drill', () => {
    const { pairs, lost } = lostIn(some(SHIPPED, 4));
    expect(pairs).toBeGreaterThan(casesOf(1000, 250));
    expect(lost).toEqual([]);
  });

  it('are told apart in made drills of every family', () => {
    const drills = Array.from({ length: casesOf(60, 30) }, (_, seed) =>
      generateDrill(STUDIO, {
        seed,
        family: GENERATED_FAMILIES[seed % GENERATED_FAMILIES.length] as string,
        level: LEVELS[seed % LEVELS.length] as number,
        palette: boxOf(seed),
      }),
    );
    const { pairs, lost } = lostIn(drills);
    expect(pairs).toBeGreaterThan(casesOf(200, 100));
    expect(lost).toEqual([]);
  });

  it('are told apart on the bench: the paints by name, the ways of bringing them by figures', () => {
    expect(new Set(STUDIO.paints.map(({ name }) => name)).size).toBe(STUDIO.paints.length);
    const paints = STUDIO.palettes[0]?.pigments ?? [];
    const mixtures = paints.flatMap((first) =>
      paints
        .filter((second) => second !== first)
        .map((second) => ({ paints: { [first]: 1 }, strength: 0.3, add: { [second]: 0.5 } })),
    );
    const all = mixtures.map((mixture) => {
      const onBench = fromLaid(STUDIO, mixture);
      if (onBench === undefined) throw new Error('the bench does not take the mixture');
      const ways = WAYS.flatMap((way) => {
        const laid = benchLaid(broughtAs(STUDIO, onBench, way));
        return laid === undefined ? [] : [{ label: way, reflectance: seeLaid(STUDIO, laid).reflectance }];
      });
      return looked(under(ways, NARROW.result));
    });
    expect(all.reduce((sum, { pairs }) => sum + pairs, 0)).toBeGreaterThan(50);
    expect(all.flatMap(({ lost }) => lost)).toEqual([]);
  });
});
