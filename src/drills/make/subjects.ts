/** Which subject of the lexicon a made-up scene may show: one that has the colours, and has not been shown just before. */
import { type Draw, pick } from '../../chance/draw.js';
import type { ColourReading } from '../../colour/reading.js';
import { type Aim, DEEP_STEP } from '../../judgement/index.js';
import { canBe, canBeIn, hasTrait, SUBJECTS, type Subject } from '../lexicon.js';

/** Step from which a thing without hue, lit, is a dark and no grey. */
const DARK_STEP = 5.5;

const isDark = ({ hue, lit }: Subject): boolean => hue === undefined && lit.step[0] >= DARK_STEP;
const isGrey = (subject: Subject): boolean => subject.hue === undefined && !isDark(subject);

/**
 * Whether a subject can be what is painted: lit, it has the colour of the first wash, and what becomes of it is a colour
 * that it has in the light which the aim means. A grey or a deep dark is mixed from a colour that it never had.
 */
export function suits(subject: Subject, aim: Aim, start: ColourReading, after: ColourReading): boolean {
  switch (aim) {
    case 'shade':
    case 'rich':
      // What lies level has no side that turns away.
      return (
        !(aim === 'shade' && hasTrait(subject, 'level')) &&
        canBeIn(subject, 'lit', start) &&
        canBeIn(subject, 'shaded', after)
      );
    case 'dull':
      return canBeIn(subject, 'lit', start) && canBe(subject, after, true);
    case 'distance':
      return hasTrait(subject, 'far') && canBeIn(subject, 'lit', start) && canBeIn(subject, 'far', after);
    case 'neutral':
    case 'lean':
      return (after.step >= DEEP_STEP ? isDark(subject) : isGrey(subject)) && canBe(subject, after, true);
  }
}

/** Whether any subject can have the colour of a first wash, for an aim that begins with the subject's own. */
export function canBegin(aim: Aim, start: ColourReading, avoid: readonly string[]): boolean {
  return (
    aim === 'neutral' ||
    aim === 'lean' ||
    SUBJECTS.some((subject) => !avoid.includes(subject.id) && canBeIn(subject, 'lit', start))
  );
}

/** The subjects that suit, without those to be avoided. */
export function subjectsFor(
  aim: Aim,
  start: ColourReading,
  after: ColourReading,
  avoid: readonly string[],
): Subject[] {
  return SUBJECTS.filter((subject) => !avoid.includes(subject.id) && suits(subject, aim, start, after));
}

function oneOf(
  isFit: (subject: Subject) => boolean,
  avoid: readonly string[],
  place: string | undefined,
  draw: Draw,
): Subject | undefined {
  const fit = SUBJECTS.filter(
    (subject) =>
      !avoid.includes(subject.id) && (place === undefined || subject.place === place) && isFit(subject),
  );
  return fit.length === 0 ? undefined : pick(fit, draw);
}

/** One that has this colour in the light, or undefined. @param place where it has to stand */
export function litSubject(
  colour: ColourReading,
  avoid: readonly string[],
  draw: Draw,
  place?: string,
): Subject | undefined {
  return oneOf((subject) => canBeIn(subject, 'lit', colour), avoid, place, draw);
}

/** One that has this colour, lit or shaded, or undefined. @param place where it has to stand */
export function someSubject(
  colour: ColourReading,
  avoid: readonly string[],
  draw: Draw,
  place?: string,
): Subject | undefined {
  return oneOf((subject) => canBe(subject, colour, false), avoid, place, draw);
}

/** Places that subjects stand in. */
export const SUBJECT_PLACES: readonly string[] = [...new Set(SUBJECTS.map(({ place }) => place))];
