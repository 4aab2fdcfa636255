/** The open choices of a mix drill and what each option is called. */
import { loadsFromParts, predict, type Way } from '../../pigments/index.js';
import { chosen, requireComplete } from '../answers.js';
import type { Answer, Field, FieldOption } from '../types.js';
import { type Choice, pigmentOf } from './candidates.js';
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
  const own = id in drill.start.paints ? 'already in the wash' : undefined;
  const known = drill.painting?.includes(id) === true && own === undefined ? 'in the painting' : undefined;
  const swatch = predict(
    loadsFromParts([{ pigment, parts: 1 }], Math.max(drill.start.strength, 0.3)),
    'puddle',
  );
  return {
    id,
    label: pigment.name,
    note: [pigment.ci.join('+'), pigment.evidence, own ?? known].filter(Boolean).join(', '),
    swatch,
    pigment: id,
  };
}

/** Second paint and amount always; way and strength where the drill opens them. */
export function mixFields(drill: MixDrill): readonly Field[] {
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
      options: [...drill.amounts]
        .sort((a, b) => touchRatio(a) - touchRatio(b))
        .map((touch) => ({ id: touch, label: touch })),
    },
  ];
  if (drill.ways.length > 1) {
    fields.push({
      id: 'way',
      label: 'way',
      shape: 'list',
      options: drill.ways.map((way) => ({ id: way, ...WAY_LABELS[way] })),
    });
  }
  if (drill.strengths.length > 1) {
    const strengths = [...drill.strengths].sort((a, b) => a - b);
    fields.push({
      id: 'strength',
      label: 'strength of the wash',
      shape: 'scale',
      options: strengths.map((strength) => ({
        id: String(strength),
        label: `${Math.round(strength * 100)} %`,
      })),
    });
  }
  return fields;
}

/** The choice that an answer stands for. @throws RangeError when it does not fit the fields */
export function choiceOf(drill: MixDrill, answer: Answer): Choice {
  const fields = mixFields(drill);
  requireComplete(fields, answer);
  return {
    second: chosen(fields, answer, 'second').id,
    ratio: touchRatio(chosen(fields, answer, 'amount').id),
    way: drill.ways.length > 1 ? (chosen(fields, answer, 'way').id as Way) : (drill.ways[0] as Way),
    strength:
      drill.strengths.length > 1
        ? Number(chosen(fields, answer, 'strength').id)
        : (drill.strengths[0] as number),
  };
}

/** The answer that stands for a choice. */
export function answerOf(drill: MixDrill, choice: Choice): Answer {
  const amount = drill.amounts.find((touch) => touchRatio(touch) === choice.ratio);
  if (amount === undefined) throw new RangeError(`amount ${choice.ratio} is not on the drill's scale`);
  return {
    second: choice.second,
    amount,
    ...(drill.ways.length > 1 ? { way: choice.way } : {}),
    ...(drill.strengths.length > 1 ? { strength: String(choice.strength) } : {}),
  };
}
