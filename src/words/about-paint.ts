/** What there is to know of a paint beside its colour: its pigments, how its curve is known, and what to take care of. */
import type { Evidence, Pigment } from '../paints/index.js';

const KNOWN: Readonly<Record<Evidence, string>> = {
  measured: 'Measured on films of this very paint: as sure as anything here.',
  transferred: 'Its curve was measured in another medium and fitted to the watercolour: less sure.',
  estimated: 'Estimated from its published colour: the least sure.',
};

/** "alizarin crimson, PR83. Its curve ... No special caution is on record; the usual hygiene holds." */
export function aboutPaint(pigment: Pigment): string {
  const { name, ci, evidence, hazard, timesLibrary } = pigment;
  const caution =
    hazard === undefined
      ? 'No special caution is on record; the usual hygiene holds.'
      : `${hazard.level === 'low' ? 'The usual hygiene holds' : 'Take care'}: ${hazard.note}`;
  const known =
    timesLibrary === undefined
      ? KNOWN[evidence]
      : `The library's curve, ${timesLibrary} times as strong as you say of your tube: no surer than that.`;
  return `${[name, ...ci].join(', ')}. ${known} ${caution}`;
}
