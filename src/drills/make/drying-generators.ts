/** Generator of the family of drying. */

import { pick, shuffled } from '../../chance/draw.js';
import { sentence } from '../../words/laid.js';
import { colourOf, colours, nameOf, tenth, wash, workedDraft } from './made.js';
import { bare, placed } from './sentences.js';
import { someSubject } from './subjects.js';
import type { Generator } from './types.js';

const wetAndDry: Generator = (studio, { level, palette, avoid }, draw) => {
  const fit = colours(studio, palette).filter((id) => !avoid.includes(id));
  if (fit.length === 0) return undefined;
  const paint = pick(fit, draw);
  const strength = pick([0.08, 0.15, 0.3, 0.5, 0.7, 0.9], draw);
  const laid = wash(paint, strength);
  const thing = someSubject(colourOf(studio, laid), avoid, draw);
  if (thing === undefined) return undefined;
  const { picture } = thing;
  const title = `${sentence(bare(thing))}, still wet`.slice(0, 60);
  const scene = `The wash for ${placed(thing)}, ${nameOf(studio, paint)}, is laid and still wet.`;
  const hint = 'Drying lays a little white over a wash: ask where that shows.';
  const deep = { id: 'deep', name: 'deep wash', laid: wash(paint, pick([0.7, 0.9], draw)) };
  const pale = { id: 'pale', name: 'pale wash', laid: wash(paint, pick([0.06, 0.1], draw)) };
  const middle = { id: 'middle', name: 'middling', laid: wash(paint, 0.35) };
  if (level === 1) {
    return workedDraft(
      studio,
      {
        title,
        scene: `A worked case. ${scene} Look at a deep wash of it and a pale one, wet and dry.`,
        ask: 'Which of these does the case show?',
        hint,
        picture,
      },
      [deep, pale],
      [
        { fact: 'loses-more-drying', of: ['deep', 'pale'] },
        { fact: 'loses-more-drying', of: ['pale', 'deep'] },
        { fact: 'dries-paler', of: ['deep'] },
        { fact: 'dries-paler', of: ['pale'] },
      ],
      draw,
    );
  }
  if (level === 2) {
    const options = shuffled([deep, pale], draw).map(({ id, name, laid: wet }) => ({
      id,
      label: `${name} of ${nameOf(studio, paint)}`.slice(0, 48),
      laid: wet,
    }));
    return {
      kind: 'choose',
      picture,
      title,
      scene: `${scene} Beside the deep wash there is a pale one.`,
      ask: 'Which loses more chroma as it dries?',
      hint,
      by: 'dries-most',
      options,
    };
  }
  if (level === 3 && draw(1) === 0) {
    return {
      kind: 'order',
      picture,
      title,
      scene: `${scene} Three strengths of it.`,
      ask: 'In what order, by the chroma that drying takes?',
      hint,
      by: 'dries-most',
      items: shuffled([deep, middle, pale], draw),
    };
  }
  const factor = pick([1, 1.6, 1 / 1.6], draw);
  const after = colourOf(studio, wash(paint, Math.min(1, strength * factor)));
  // More paint or more water has to be wanted by what can be seen.
  const moves = Math.abs(after.step - colourOf(studio, laid).step);
  if (level === 5 && factor !== 1 && moves < 0.5) return undefined;
  const asks =
    level === 3
      ? (['chroma'] as const)
      : level === 4
        ? (['value', 'chroma'] as const)
        : (['value', 'chroma', 'mend', 'wait'] as const);
  return {
    kind: 'drying',
    picture,
    title,
    scene,
    ...(level < 5 ? { hint: 'Ask how dark the film is: a light one has little to lose.' } : {}),
    wash: laid,
    ...(level === 5 ? { target: { step: tenth(after.step), chroma: Math.round(after.chroma) } } : {}),
    asks: [...asks],
  };
};

export const DRYING_GENERATORS: Readonly<Record<string, Generator>> = { 'wet-and-dry': wetAndDry };
