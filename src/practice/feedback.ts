/**
 * When the result of an answer is shown: fading feedback (guidance hypothesis, R. Schmidt; challenge point, M.
 * Guadagnoli and T. Lee 2004). Complete at levels 1-3, after every third answer at level 4, at the end at level 5.
 */
export type Feedback = 'complete' | 'every-third' | 'end-of-set';

export function feedbackFor(level: number): Feedback {
  return level <= 3 ? 'complete' : level === 4 ? 'every-third' : 'end-of-set';
}

/**
 * For each answer of a set, which answers (their places, from 0) are explained after it. Every place occurs once;
 * what is still held back at the end comes after the last answer.
 */
export function feedbackPlan(levels: readonly number[]): readonly (readonly number[])[] {
  const held: Record<'every-third' | 'end-of-set', number[]> = { 'every-third': [], 'end-of-set': [] };
  return levels.map((level, place) => {
    const due: number[] = [];
    const feedback = feedbackFor(level);
    if (feedback === 'complete') due.push(place);
    else held[feedback].push(place);
    if (held['every-third'].length === 3) due.push(...held['every-third'].splice(0));
    if (place === levels.length - 1)
      due.push(...held['every-third'].splice(0), ...held['end-of-set'].splice(0));
    return due.sort((a, b) => a - b);
  });
}
