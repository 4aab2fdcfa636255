/** Longer texts of the program itself. */
import { scaleEnds, VALUE_SCALES } from '../../colour/index.js';
import { CAUTION_ADVICE } from '../../paints/index.js';
import { HINT_COST } from '../../practice/index.js';
import { printable } from '../../text/sanitize.js';
import { wrapText } from '../../text/wrap.js';
import { pageColumns } from '../kit/layout.js';
import { bodyRows } from '../kit/notes.js';
import type { Page } from '../kit/page.js';
import type { Stage } from '../kit/stage.js';
import type { PracticeWorld } from '../practice/state.js';

/** "How to read the screens". */
function helpText(state: Pick<Stage, 'settings'>, world: Pick<PracticeWorld, 'families'>): string[] {
  const scale = VALUE_SCALES[state.settings.valueScale];
  return [
    'Mudlark asks one question again and again: before the brush touches the paper, what will this mixture be? You choose, lay it down, and only then see it.',
    '',
    `VALUE is how light or dark a colour is. Your scale is ${scale.title}: ${scaleEnds(scale)}. The other direction is in the settings.`,
    '',
    'CHROMA is how strong a colour is, and its words go by what the hue can reach: neutral to 5, near neutral to 12, dull to 25, moderate to 47, strong to 66, vivid above. Yellows and oranges are vivid above 80; greens, blues and violets change at 18, 38 and 58, browns and olives at 18 and 40.',
    '',
    'THE STAIRCASE, where there is room, shows ten greys from paper to dark. One sign marks where the colour is now, the bar where it should go.',
    '',
    'THE PICTURE is a sketch of the scene: the start lies where the scene says, and the passage asked for is open until you have answered. v fills the screen with it, g turns it to greys for the value check, and b, after the answer, lays the best in it. s shows all that a drill says.',
    '',
    'AMOUNT is counted in touches: 1:8 is one part of the second paint to eight of the first. Strong paints need very little.',
    '',
    'WAY: a puddle is stirred together; a glaze is a film over a dry wash; strokes lie side by side and the eye joins them.',
    '',
    'ABOUT A PAINT: c says how surely its colour is known (measured on its own films, carried over from another medium, or estimated) and what to take care of. A result is no surer than its least sure paint.',
    '',
    'THE RESULT sets the start, yours and the best side by side, then the same in grey. In the plane, chroma grows to the right and value goes down to the dark; the dots are your mixture as the amount grows, the box is the goal.',
    '',
    'GOOD, FAIR, OFF: value and chroma are judged apart and never mixed up. What is too close for the prediction to call is not marked down.',
    '',
    'LEVELS go from 1, a worked case, over two and four options and amounts to set, to 5, cold. The placing round finds where you start; any skill and level can be picked under "Choose what to practise".',
    '',
    'LAST TIME: after an answer one line sets it beside your last one in that skill. At the end of a set m gives one drill for each mistake.',
    '',
    `A HINT costs ${HINT_COST} marks and says so first. You may try again as often as you like; the first answer is the one on record.`,
    '',
    'SCREEN COLOURS are a stand-in for paint and differ from screen to screen. The words and numbers come from the reflectance and do not.',
    '',
    ...CAUTION_ADVICE,
    ...(world.families.length === 0
      ? []
      : ['', `There are drills on: ${world.families.map(({ name }) => name.toLowerCase()).join('; ')}.`]),
  ];
}

/** A text broken to the width of the screen. */
const pageOf = (state: Stage, texts: readonly string[]): Page => ({
  lines: texts.flatMap((line) => (line === '' ? [''] : wrapText(line, pageColumns(state.size)))),
  rows: bodyRows(state) - 1,
});

export const helpPage = (state: Stage, world: PracticeWorld): Page => pageOf(state, helpText(state, world));

/** Progress comes broken to the width already. */
export const progressPage = (state: Stage, text: string): Page => ({
  lines: printable(text).split('\n'),
  rows: bodyRows(state) - 1,
});
