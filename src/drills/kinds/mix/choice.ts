/** The open choices of a mix drill, and what an answer stands for. */
import { once, paintOf, type Studio } from '../../../paints/index.js';
import { type Laid, layMixture, type Mixture, type Open, seeAlone, type Way } from '../../../washes/index.js';
import { ratioWords, strengthWords, thinWords } from '../../../words/laid.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, FieldOption } from '../../types.js';
import { addedPaint, type MixDrill, touchRatio } from './schema.js';

/** How the second paint goes on: the way and its amount. */
export interface How {
  readonly id: string;
  readonly way: Way;
  /** Stirred in: parts to one of the wash's paint. Glazed: strength of the glaze. Strokes: share of the paper. */
  readonly amount: number;
  /** Strength of strokes; 0 in the other ways. */
  readonly strength: number;
}

/** A mixture decided on. */
export interface Choice {
  readonly second: string;
  readonly how: How;
  readonly thin: number;
}

/** Every way and amount that a drill opens, each way from least to most. */
export function howsOf({
  amounts,
  glazes,
  strokes,
}: Pick<MixDrill, 'amounts' | 'glazes' | 'strokes'>): How[] {
  const rising = <T>(list: readonly T[], of: (item: T) => number): T[] =>
    [...list].sort((a, b) => of(a) - of(b));
  return [
    ...rising(amounts, touchRatio).map(
      (touch): How => ({ id: touch, way: 'puddle', amount: touchRatio(touch), strength: 0 }),
    ),
    ...rising(glazes, (strength) => strength).map(
      (amount): How => ({ id: `glaze-${amount}`, way: 'glaze', amount, strength: 0 }),
    ),
    ...rising(strokes, ({ share, strength }) => strength + share / 1000).map(
      ({ share, strength }): How => ({
        id: `strokes-${share}-${strength}`,
        way: 'strokes',
        amount: share,
        strength,
      }),
    ),
  ];
}

/** What the drill opens, as the search takes it. */
export function openOf({ start, tray, amounts, glazes, strokes, thins }: MixDrill): Open {
  return { first: start, tray, most: 1, ratios: amounts.map(touchRatio), glazes, strokes, thins };
}

/** The choice as a mixture. */
function mixtureOfChoice({ second, how, thin }: Choice): Mixture {
  return { way: how.way, added: [{ id: second, amount: how.amount }], strength: how.strength, thin };
}

/** The choice that a mixture on the drill's own scales is. @throws RangeError when its amount is not on them */
export function choiceOfMixture(drill: MixDrill, { way, added, strength, thin }: Mixture): Choice {
  const [only] = added;
  const how = howsOf(drill).find(
    (each) => each.way === way && each.amount === only?.amount && each.strength === strength,
  );
  if (how === undefined || only === undefined)
    throw new RangeError(`${way} ${only?.amount} is not on the drill's scale`);
  return { second: only.id, how, thin };
}

/** What a choice lays on the paper. */
export function laidBy(drill: MixDrill, choice: Choice): Laid {
  return layMixture(drill.start, mixtureOfChoice(choice));
}

/** "1:4", "glazed at 15 %", "strokes at 30 % on 25 % of it". */
export function howWords({ way, amount, strength }: How): string {
  if (way === 'glaze') return `glazed at ${strengthWords(amount)}`;
  if (way === 'strokes')
    return `strokes at ${strengthWords(strength)} on ${strengthWords(amount)} of the paper`;
  return ratioWords(amount);
}

const NOTES: Readonly<Record<Way, string>> = {
  puddle: 'stirred in, no water added',
  glaze: 'a wash of its own over the dry first one',
  strokes: 'kept apart; the eye fuses them',
};

const FIRST_WAY: Readonly<Record<Way, string>> = {
  puddle: 'added paint to wash',
  glaze: 'strength of the glaze',
  strokes: 'strokes beside it',
};

function trayOption(studio: Studio, drill: MixDrill, id: string): FieldOption {
  const pigment = paintOf(studio, id);
  const own = id in drill.start.paints ? 'in the wash' : undefined;
  const swatchStrength = Math.max(drill.start.strength, 0.3);
  const known = drill.painting?.includes(id) === true && own === undefined ? 'in the painting' : undefined;
  return {
    id,
    label: pigment.name,
    note: [pigment.ci.join('+'), own ?? known].filter(Boolean).join(', '),
    swatch: seeAlone(studio, id, swatchStrength).reflectance,
    swatchStrength,
    pigment: id,
  };
}

function howField(drill: MixDrill): Field {
  const hows = howsOf(drill);
  const ways = [...new Set(hows.map(({ way }) => way))];
  const [only] = ways;
  if (ways.length === 1 && only !== undefined) {
    return {
      id: 'amount',
      label: FIRST_WAY[only],
      shape: 'scale',
      options: hows.map((how) => ({
        id: how.id,
        label: only === 'glaze' ? strengthWords(how.amount) : howWords(how),
      })),
    };
  }
  const options = hows.map((how) => ({
    id: how.id,
    label: how.way === 'puddle' ? `stirred in, ${howWords(how)}` : howWords(how),
    note: NOTES[how.way],
  }));
  return { id: 'amount', label: 'how it goes on', shape: 'list', options };
}

/** The open choices, made once: second paint, amount and way, water, where the drill leaves more than one. */
export const mixFields: (studio: Studio, drill: MixDrill) => readonly Field[] = once(
  (studio, drill: MixDrill) => {
    const thins = [...drill.thins].sort((a, b) => a - b);
    const fields: Field[] = [
      {
        id: 'second',
        label: addedPaint(drill),
        shape: 'list',
        options: drill.tray.map((id) => trayOption(studio, drill, id)),
      },
      howField(drill),
      {
        id: 'thin',
        label: 'water afterwards',
        shape: 'scale',
        options: thins.map((thin) => ({ id: String(thin), label: thinWords(thin) })),
      },
    ];
    return fields.filter(({ options }) => options.length > 1);
  },
);

/** The choice that an answer stands for. @throws InputError when it does not fit the fields */
export function choiceOf(studio: Studio, drill: MixDrill, answer: Answer): Choice {
  const fields = mixFields(studio, drill);
  requireComplete(fields, answer);
  const pick = (id: string, only: string): string =>
    fields.some((field) => field.id === id) ? chosen(fields, answer, id).id : only;
  const hows = howsOf(drill);
  const how = pick('amount', hows[0]?.id ?? '');
  return {
    second: pick('second', drill.tray[0] as string),
    how: hows.find(({ id }) => id === how) as How,
    thin: Number(pick('thin', String(drill.thins[0]))),
  };
}

/** The answer that stands for a choice. */
export function answerOf(studio: Studio, drill: MixDrill, { second, how, thin }: Choice): Answer {
  const all: Answer = { second, amount: how.id, thin: String(thin) };
  return Object.fromEntries(mixFields(studio, drill).map(({ id }) => [id, all[id] as string]));
}
