/** The open choices of a mix drill and what each option is called. */
import { loadsFromParts, predict, type Way } from '../../paints/index.js';
import { chosen, requireComplete } from '../answers.js';
import type { Answer, Field, FieldOption } from '../types.js';
import { type Choice, pigmentOf } from './candidates.js';
import { strengthWords } from './label.js';
import { type MixDrill, touchRatio } from './schema.js';

const WAY_LABELS: Readonly<Record<Way, { label: string; note: string }>> = {
  puddle: { label: 'stir into the puddle', note: 'the two paints become one wash' },
  glaze: {
    label: 'glaze over the dry wash',
    note: 'the first wash stays; the amount is the strength of the glaze',
  },
  strokes: { label: 'strokes side by side', note: 'the same paint, kept apart; the eye fuses it' },
};

function trayOption(drill: MixDrill, id: string): FieldOption {
  const pigment = pigmentOf(id);
  const own = id in drill.start.paints ? 'in the wash' : undefined;
  const known = drill.painting?.includes(id) === true && own === undefined ? 'in the painting' : undefined;
  const swatch = predict(
    loadsFromParts([{ pigment, parts: 1 }], Math.max(drill.start.strength, 0.3)),
    'puddle',
  );
  return {
    id,
    label: pigment.name,
    note: [pigment.ci.join('+'), own ?? known, pigment.evidence].filter(Boolean).join(', '),
    swatch,
    pigment: id,
  };
}

const FIELDS = new WeakMap<MixDrill, readonly Field[]>();

/** The open choices of a drill, made once; see {@link openFields}. */
export function mixFields(drill: MixDrill): readonly Field[] {
  let known = FIELDS.get(drill);
  if (known === undefined) {
    known = openFields(drill);
    FIELDS.set(drill, known);
  }
  return known;
}

/** The open choices: second paint, and amount, way and strength where the drill leaves more than one. */
function openFields(drill: MixDrill): readonly Field[] {
  const amounts = [...drill.amounts].sort((a, b) => touchRatio(a) - touchRatio(b));
  const strengths = [...drill.strengths].sort((a, b) => a - b);
  const fields: Field[] = [
    {
      id: 'second',
      label: 'second paint',
      shape: 'list',
      options: drill.tray.map((id) => trayOption(drill, id)),
    },
    {
      id: 'amount',
      label: 'amount, second to first',
      shape: 'scale',
      options: amounts.map((touch) => ({ id: touch, label: touch })),
    },
    {
      id: 'way',
      label: 'way',
      shape: 'list',
      options: drill.ways.map((way) => ({ id: way, ...WAY_LABELS[way] })),
    },
    {
      id: 'strength',
      label: 'strength of the wash',
      shape: 'scale',
      options: strengths.map((strength) => ({ id: String(strength), label: strengthWords(strength) })),
    },
  ];
  return fields.filter(({ options }) => options.length > 1);
}

/** The choice that an answer stands for. @throws RangeError when it does not fit the fields */
export function choiceOf(drill: MixDrill, answer: Answer): Choice {
  const fields = mixFields(drill);
  requireComplete(fields, answer);
  const pick = (id: string, only: string): string =>
    fields.some((field) => field.id === id) ? chosen(fields, answer, id).id : only;
  return {
    second: pick('second', drill.tray[0] as string),
    ratio: touchRatio(pick('amount', drill.amounts[0] as string)),
    way: pick('way', drill.ways[0] as string) as Way,
    strength: Number(pick('strength', String(drill.strengths[0]))),
  };
}

/** The answer that stands for a choice. @throws RangeError when the amount is not one of the touches */
export function answerOf(drill: MixDrill, choice: Choice): Answer {
  const amount = drill.amounts.find((touch) => touchRatio(touch) === choice.ratio);
  if (amount === undefined) throw new RangeError(`amount ${choice.ratio} is not on the drill's scale`);
  const all: Answer = {
    second: choice.second,
    amount,
    way: choice.way,
    strength: String(choice.strength),
  };
  return Object.fromEntries(mixFields(drill).map(({ id }) => [id, all[id] as string]));
}
