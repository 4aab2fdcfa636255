/** What mix, washes, choose and order say of an answer and ask of a learner, held to what the answer lays. */
import { describe, expect, test } from 'vitest';
import { hueName } from '../../src/colour/hue.js';
import { colourInWords } from '../../src/colour/words.js';
import { choiceOf, laidBy } from '../../src/drills/kinds/mix/choice.js';
import type { MixDrill } from '../../src/drills/kinds/mix/schema.js';
import { readDrillFolder } from '../../src/files/exercises.js';
import { type Laid, seeLaid } from '../../src/washes/index.js';
import { IDEAS } from '../../src/words/ideas.js';
import { linesOf, RESULT_ROOM, sayAll, sayFinding } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
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
const DRILLS = readDrillFolder(STUDIO, 'exercises').filter(({ kind }) =>
  (KINDS as readonly string[]).includes(kind),
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
    const advices = [...IDEAS.values()].flatMap(({ instead, or }) => [instead, ...Object.values(or ?? {})]);
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

  test('advised less or more of the same paint, such an answer is good', () => {
    const advised = found(GRADED, 'advice').filter(({ finding }) =>
      /less|more/.test(finding.figures.remedy ?? ''),
    );
    expect(advised.length).toBeGreaterThan(20);
    expect(
      broken(advised, ({ finding, drill, answer }) => {
        const mix = drill as MixDrill;
        const mine = choiceOf(STUDIO, mix, answer);
        const amounts =
          kindOf(mix)
            .fields(mix)
            .find(({ id }) => id === 'amount')?.options ?? [];
        const thins =
          kindOf(mix)
            .fields(mix)
            .find(({ id }) => id === 'thin')?.options ?? [];
        return amounts.some((amount) =>
          [...thins.map(({ id }) => ({ thin: id })), {}].some((thin) => {
            const other = { ...answer, amount: amount.id, ...thin };
            const { how } = choiceOf(STUDIO, mix, other);
            const by = how.amount * (how.strength || 1) - mine.how.amount * (mine.how.strength || 1);
            const isThatWay =
              how.way === mine.how.way && (finding.figures.remedy === 'more' ? by > 0 : by < 0);
            return isThatWay && kindOf(mix).grade(mix, other).mark >= 77;
          }),
        );
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
