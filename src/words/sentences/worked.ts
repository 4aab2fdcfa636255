/** What is said of a statement about a solved case: whether it is so, and the figures that decide. */
import { listWords } from '../../text/list-words.js';
import { percent, sentence, stepsWords } from '../laid.js';
import { stepText, stepWords, type Voice } from '../voice.js';

/** The figures that bear a statement out or refute it. */
export type Proof =
  | { readonly by: 'steps'; readonly of: readonly { readonly name: string; readonly step: number }[] }
  | { readonly by: 'chromas'; readonly of: readonly { readonly name: string; readonly chroma: number }[] }
  /** The least share of chroma left anywhere on the way from one wash to the other. */
  | { readonly by: 'way'; readonly kept: number }
  /** How far the hue goes from both on that way, degrees, and the least chroma on it. */
  | { readonly by: 'third'; readonly turnDeg: number; readonly least: number }
  | { readonly by: 'shade'; readonly name: string; readonly chroma: number; readonly line: number }
  | { readonly by: 'drying'; readonly of: readonly { readonly name: string; readonly lost: number }[] }
  /** Both in painter's steps, and the step that the share asked of the lighter one would be. */
  | {
      readonly by: 'share';
      readonly of: readonly [{ name: string; step: number }, { name: string; step: number }];
      readonly words: string;
      readonly would: number;
    }
  | { readonly by: 'rise'; readonly name: string; readonly rise: number };

const stepsText = (of: readonly { readonly name: string; readonly step: number }[], voice: Voice): string =>
  of
    .map(({ name, step }, at) => `${name} at ${at === 0 ? stepWords(step, voice) : stepText(step, voice)}`)
    .join(', ');

function proofText(proof: Proof, voice: Voice): string {
  switch (proof.by) {
    case 'steps':
      return stepsText(proof.of, voice);
    case 'chromas':
      return proof.of
        .map(({ name, chroma }, at) => `${name} ${at === 0 ? 'has chroma ' : ''}${chroma.toFixed(0)}`)
        .join(', ');
    case 'way':
      return proof.kept >= 0.995
        ? 'nowhere on the way from one to the other is chroma lost'
        : `at the greyest point between the two ${percent(proof.kept)} of the chroma is left`;
    case 'third':
      return `on the way from one to the other the hue turns ${proof.turnDeg.toFixed(0)}° from both and chroma falls to ${proof.least.toFixed(0)}`;
    case 'shade':
      return `${proof.name} has chroma ${proof.chroma.toFixed(0)}, a plain shade would have ${proof.line.toFixed(0)}`;
    case 'drying':
      return listWords(proof.of.map(({ name, lost }) => `${name} loses ${lost.toFixed(1)} of chroma`));
    case 'share':
      return `${stepsText(proof.of, voice)}; ${proof.words} of it would be ${stepText(proof.would, voice)}`;
    case 'rise':
      return Math.abs(proof.rise) < 0.05
        ? `${proof.name} stays where it was`
        : `${proof.name} dries ${stepsWords(proof.rise)} ${proof.rise > 0 ? 'lighter' : 'darker'}`;
  }
}

interface Weighed {
  readonly statement: string;
  readonly proof: Proof;
}

export const WORKED = {
  'worked-thing': ({
    name,
    laid,
    how,
  }: {
    readonly name: string;
    readonly laid: string;
    readonly how: string;
  }): string => `${name}: ${laid}, ${how}`,
  'worked-so': ({ statement, proof }: Weighed, voice: Voice): string =>
    `True: ${statement}. ${sentence(proofText(proof, voice))}.`,
  'worked-close': ({ statement, proof }: Weighed, voice: Voice): string =>
    `Too close to call, so it counts: ${statement}. ${sentence(proofText(proof, voice))}.`,
  'worked-not-so': ({ statement, proof }: Weighed, voice: Voice): string =>
    `False: ${statement}. ${sentence(proofText(proof, voice))}.`,
  /** @param figures `proof` is absent where the same figures have refuted the chosen statement */
  'worked-decides': (
    { statement, proof }: { readonly statement: string; readonly proof?: Proof },
    voice: Voice,
  ): string =>
    `What the case shows: ${statement}.${proof === undefined ? '' : ` ${sentence(proofText(proof, voice))}.`}`,
  'why-statement': ({ statement, proof, isSo }: Weighed & { readonly isSo: boolean }, voice: Voice): string =>
    `${isSo ? 'True' : 'False'}: ${statement}. ${sentence(proofText(proof, voice))}.`,
};
