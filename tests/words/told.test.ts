/** What mix, washes, choose and order say of an answer and ask of a learner, held to what the answer lays. */
import { describe, expect, test } from 'vitest';
import { hueName } from '../../src/colour/hue.js';
import { colourInWords } from '../../src/colour/words.js';
import { type Choice, choiceOf, laidBy } from '../../src/drills/kinds/mix/choice.js';
import type { MixDrill } from '../../src/drills/kinds/mix/schema.js';
import type { Answer } from '../../src/drills/types.js';
import { type Laid, seeLaid } from '../../src/washes/index.js';
import { IDEAS } from '../../src/words/ideas.js';
import { linesOf, RESULT_ROOM, sayAll, sayFinding } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';
import {
  BLACK_FIRST,
  broken,
  found,
  type Graded,
  HEARD,
  HEARD_BLACK_FIRST,
  shippedGrades,
} from './shipped.js';

const KINDS = ['mix', 'washes', 'choose', 'order'] as const;
const GRADED = shippedGrades(...KINDS);
const DRILLS = SHIPPED_DRILLS.filter(({ kind }) => (KINDS as readonly string[]).includes(kind));

/** Every answer that a drill leaves open. */
const everyAnswer = (drill: MixDrill): Answer[] =>
  kindOf(drill)
    .fields(drill)
    .reduce<Answer[]>(
      (answers, { id, options }) =>
        answers.flatMap((answer) => options.map((option) => ({ ...answer, [id]: option.id }))),
      [{}],
    );

const colourOf = (laid: Laid) => seeLaid(STUDIO, laid).colour;

describe('what is told', () => {
  test('takes six lines at most, and says every advice in one line', () => {
    expect(
      broken(
        GRADED,
        ({ grade }) =>
          linesOf(grade.told) <= RESULT_ROOM.lines && linesOf(grade.told, BLACK_FIRST) <= RESULT_ROOM.lines,
      ),
    ).toEqual([]);
    const advices = [...IDEAS.values()].map(({ instead }) => instead);
    expect(advices.filter((text) => text.length > RESULT_ROOM.columns)).toEqual([]);
  });

  test('counts values on the learner’s scale alone, and is heard without signs', () => {
    const wrong = [
      ...GRADED.map(({ where, grade }) => ({ where, told: grade.told })),
      ...DRILLS.map((drill) => ({ where: drill.id, told: kindOf(drill).goalLines(drill) })),
    ].flatMap(({ where, told }) => [
      ...sayAll(told, BLACK_FIRST).filter((text) => /\bsteps? \d/.test(text)),
      ...[HEARD, HEARD_BLACK_FIRST].flatMap((voice) =>
        sayAll(told, voice)
          .filter((text) => /[→±%~°>]|\bV \d/.test(text))
          .map((text) => `${where}: ${text}`),
      ),
    ]);
    expect(wrong).toEqual([]);
  });

  test('is whole sentences, each said once', () => {
    const isSound = (line: string): boolean =>
      /[.]$/.test(line) && !/NaN|undefined|Infinity|null|-0\b|\s{2}|\bsteps? steps?\b|\[object/.test(line);
    const wrong = GRADED.flatMap(({ where, grade }) => {
      const lines = sayAll(grade.told, WRITTEN);
      return new Set(lines).size === lines.length ? lines.filter((line) => !isSound(line)) : [where];
    });
    expect(wrong).toEqual([]);
  });
});

describe('of a mixture', () => {
  const laidOf = ({ drill, answer }: Graded): Laid =>
    laidBy(drill as MixDrill, choiceOf(STUDIO, drill as MixDrill, answer));

  test('its colour, and the better one with its figures', () => {
    const now = found(GRADED, 'mix-now');
    expect(now.length).toBeGreaterThan(1000);
    expect(
      broken(now, (one) => one.finding.figures.colour === colourInWords(colourOf(laidOf(one)).lab)),
    ).toEqual([]);
    const better = found(GRADED, 'mix-better');
    expect(
      broken(better, ({ finding, drill, grade }) => {
        const best = kindOf(drill).best(drill);
        const { step, chroma } = colourOf(
          laidBy(drill as MixDrill, choiceOf(STUDIO, drill as MixDrill, best)),
        );
        const { figures } = finding;
        return (
          figures.label === kindOf(drill).label(drill, best) &&
          Math.abs(figures.step - step) < 1e-9 &&
          Math.abs(figures.chroma - chroma) < 1e-9 &&
          sayFinding(finding, WRITTEN).includes(`step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}`) &&
          // Munsell V is 10.5 less the step.
          sayFinding(finding, BLACK_FIRST).includes(`V ${(10.5 - step).toFixed(1)}`) &&
          kindOf(drill).grade(drill, best).mark > grade.mark
        );
      }),
    ).toEqual([]);
  });

  test('a paint new to the painting costs what the same answer gains where it is not new', () => {
    const apart = found(GRADED, 'mix-apart');
    expect(apart.length).toBeGreaterThan(10);
    expect(
      broken(apart, ({ finding, drill, answer, grade }) => {
        const own = {
          ...(drill as MixDrill),
          painting: [
            ...((drill as MixDrill).painting ?? []),
            choiceOf(STUDIO, drill as MixDrill, answer).second,
          ],
        };
        const free = kindOf(own).mark?.(own, answer) ?? Number.NaN;
        // Another paint that costs nothing may raise what the tray can reach, and with it what is asked.
        const { cost } = finding.figures;
        return (
          cost >= 0 &&
          cost <= 8 &&
          (Math.abs(free - grade.mark - cost) <= 1 || free < grade.mark + cost) &&
          / marks\./.test(sayFinding(finding, WRITTEN)) === cost > 0
        );
      }),
    ).toEqual([]);
  });

  test('the change advised is open, and raises the mark; one said to be enough makes the answer good', () => {
    const advised = found(GRADED, 'change');
    expect(advised.length).toBeGreaterThan(500);
    const marks = new Map<string, { readonly choice: Choice; readonly mark: number }[]>();
    /** Every answer of the drill, marked by the kind itself. */
    const marked = (mix: MixDrill) => {
      const known = marks.get(mix.id);
      if (known !== undefined) return known;
      const all = everyAnswer(mix).map((answer) => ({
        choice: choiceOf(STUDIO, mix, answer),
        mark: kindOf(mix).mark?.(mix, answer) ?? 0,
      }));
      marks.set(mix.id, all);
      return all;
    };
    /** The words of the advice, read as a painter would: how much of it lies between these. */
    const BY: readonly [RegExp, number, number][] = [
      [/double it/i, 1.2, 3],
      [/four times as much/, 3.01, 5.9],
      [/far more of it/, 6, 1e9],
      [/halve it/i, 0.4, 0.9],
      [/take a quarter of it/i, 0.201, 0.39],
      [/far less of it/, 0, 0.2],
    ];
    expect(
      broken(advised, ({ finding, drill, answer, grade }) => {
        const mix = drill as MixDrill;
        const mine = choiceOf(STUDIO, mix, answer);
        const text = sayFinding(finding, WRITTEN);
        const water = /(more|less) water/.exec(text)?.[1];
        const by = BY.find(([words]) => words.test(text));
        const isOfIt = ({ choice: { second, how, thin } }: { readonly choice: Choice }): boolean => {
          if (/another paint|no other paint/i.test(text)) return second !== mine.second;
          if (second !== mine.second) return false;
          if (/change the way/i.test(text)) return how.way !== mine.how.way;
          const isWet =
            water === undefined ? thin === mine.thin : water === 'more' ? thin > mine.thin : thin < mine.thin;
          const ratio = how.amount / mine.how.amount;
          if (by !== undefined) return isWet && ratio >= by[1] && ratio <= by[2];
          if (/glaze it/i.test(text)) return /stronger/.test(text) ? ratio > 1 : ratio < 1;
          return /lay .*strokes/i.test(text) ? how.id !== mine.how.id : isWet && how.id === mine.how.id;
        };
        const best = Math.max(
          ...marked(mix)
            .filter(isOfIt)
            .map(({ mark }) => mark),
        );
        return best > grade.mark && (/^Nearer/.test(text) || best >= 77);
      }),
    ).toEqual([]);
  });

  test('across the wheel is said of no white, and the white and the black are named for what they are', () => {
    const of = (id: string): Graded[] =>
      GRADED.filter(
        ({ drill, answer, grade }) =>
          drill.kind === 'mix' && choiceOf(STUDIO, drill, answer).second === id && grade.idea !== undefined,
      );
    const said = (graded: Graded): string => sayAll(graded.grade.told, WRITTEN).join(' ');
    expect(broken(of('chinese-white'), (one) => !/straight across|blacks and greys/.test(said(one)))).toEqual(
      [],
    );
    expect(broken(of('ivory-black'), (one) => !/the white out|straight across/.test(said(one)))).toEqual([]);
  });

  test('no goal sends a hue to where it is', () => {
    const wrong = DRILLS.flatMap((drill) =>
      kindOf(drill)
        .goalLines(drill)
        .map((line) => ({ drill, text: sayFinding(line, WRITTEN) })),
    ).filter(({ drill, text }) => {
      const hue = /hue: towards ([a-z ]+),/.exec(text)?.[1];
      if (hue === undefined || drill.kind !== 'mix' || drill.goal.aim === 'lean') return false;
      return hueName(colourOf(drill.start).hue) === hue;
    });
    expect(wrong).toEqual([]);
  });
});
