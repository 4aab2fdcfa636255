/** How dark a shaded side and a cast shadow are: the trade's starting guesses. */
import { painterStep, valueFromStep } from '../../../colour/value.js';
import rules from './rules.json' with { type: 'json' };

/** What kind of shadow. */
export type Shadow = 'shade' | 'cast';

/** Share of the lit Munsell value that is left in direct sun. Source: see rules.json. */
export const LEFT_IN_SUN: Readonly<Record<Shadow, number>> = {
  shade: rules.shadedSideShare,
  cast: rules.castShadowShare,
};

/** How the scene is lit: direct sun with light thrown back into the shade, sun with nothing to throw it back, or grey sky. */
export type Light = 'sun' | 'hard-sun' | 'overcast';

/** Extra steps that a shade may be darker where nothing throws light back into it. Common practice, no source. */
const UNLIT_ROOM = 1;

/**
 * Under a grey sky the light comes from everywhere: the shaded side stays within a step of the lit one, never lighter.
 * Common practice, no source.
 */
const OVERCAST_DROP = 0.5;

/** Painter's step of a shadow in direct sun, from the lit painter's step. Worked numbers: lit value 8 gives 4.8, lit 9 casts 3.6. */
export function shadowStep(litStep: number, shadow: Shadow): number {
  return painterStep(LEFT_IN_SUN[shadow] * valueFromStep(litStep));
}

/** The steps that count as right, lightest first: half a step round the rule, more to the dark in hard light. */
export function shadowBand(litStep: number, shadow: Shadow, light: Light): readonly [number, number] {
  if (light === 'overcast' && shadow === 'shade') {
    return [litStep, litStep + 2 * OVERCAST_DROP + 0.1];
  }
  const step = shadowStep(litStep, shadow);
  return [step - 0.5, step + 0.5 + (light === 'hard-sun' ? UNLIT_ROOM : 0)];
}
