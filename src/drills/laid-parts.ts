/** What was laid, paint by paint, as the record and the screens keep it. */
import { type Seen, washesOf } from '../washes/index.js';
import type { LaidPart } from './types.js';

/** Each paint of each wash with its parts of tube paint and its load. */
export function laidParts({ laid, loads }: Seen): LaidPart[] {
  return washesOf(laid).flatMap(({ paints, add = {} }, wash) => {
    const whole = Object.values(paints).reduce((sum, parts) => sum + parts, 0);
    return (loads[wash] ?? []).map(({ pigment, load }) => ({
      pigment: pigment.id,
      parts: (paints[pigment.id] ?? 0) + (add[pigment.id] ?? 0) * whole,
      load,
    }));
  });
}
